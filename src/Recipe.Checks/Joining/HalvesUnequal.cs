using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Two halves of one size come out at different masses.</summary>
public sealed class HalvesUnequal : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8106",
        Name = "halves-unequal",
        Severity = Severity.Advice,
        Title = "Halves of unequal mass",
        Reason = "Two halves of one size should weigh the same: one that is heavier is wetter, or a ply is missing in the other.",
        Remedy = "Compare the two ply lists, and weigh the halves before they are closed.",
        Source = "common practice: halves within 8 %",
        Exceptions = """
            Speaks only where the two parts have the same area within 2 %; parts of different sizes are no halves. Accept it with a reason
            where they differ on purpose.
            """,
        BadExample = """
            mould left-mould {
              surface half-ellipsoid 220 mm x 140 mm x 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part left-shell {
              mould left-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            mould right-mould {
              surface half-ellipsoid 220 mm x 140 mm x 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part right-shell {
              mould right-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            part shell {
              join {
                parts left-shell right-shell
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 572 mm
                tape glass-tape-200 width 50 mm x1
                vent 3 mm
              }
            }
            """,
        GoodExample = """
            mould left-mould {
              surface half-ellipsoid 220 mm x 140 mm x 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part left-shell {
              mould left-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            mould right-mould {
              surface half-ellipsoid 220 mm x 140 mm x 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part right-shell {
              mould right-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            part shell {
              join {
                parts left-shell right-shell
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 572 mm
                tape glass-tape-200 width 50 mm x1
                vent 3 mm
              }
            }
            """,
    };

    private const double SameSize = 0.02;
    private const double Most = 0.08;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Join is not { Parts: [var first, var second] } join
            || first == second
            || PlanOf(context, first) is not { Geometry: { } one, Laminate.TrimmedMass: var light } left
            || PlanOf(context, second) is not { Geometry: { } other, Laminate.TrimmedMass: var heavy } right
            || one.Area.SquareMeters <= 0
            || Math.Abs((other.Area / one.Area) - 1) > SameSize)
        {
            return;
        }

        if (light.Value.Value > heavy.Value.Value)
        {
            (left, right, light, heavy) = (right, left, heavy, light);
        }

        if (light.Value.Value.Kilograms <= 0 || heavy.Value.Value / light.Value.Value <= 1 + Most)
        {
            return;
        }

        context.Report(
            join.Where,
            $"{right.Part.Name} comes out at {Say.About(heavy.Value.Value)} and {left.Part.Name} at {Say.About(light.Value.Value)}; halves of one size lie within {Say.Percent(Most)}",
            labels: [new FindingLabel(right.Part.Where, "heavier half"), new FindingLabel(left.Part.Where, "lighter half")]);
    }

    private static Plan? PlanOf(CheckContext context, string name)
    {
        var part = context.Model.PartNamed(name);
        return part is null || !part.HasPlies() ? null : Planner.Plan(part, context.Model);
    }
}
