using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A flat part whose stack differs from side to side bows when it cools.</summary>
public sealed class UnsymmetricFlat : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3101",
        Name = "unsymmetric-flat",
        Severity = Severity.Warning,
        Title = "Flat part that bows by itself",
        Reason = "The two faces shrink by different amounts on cooling, nothing holds a flat part straight, and it comes off the mould bent or twisted.",
        Remedy = "Make the list read the same from both sides, with as many plies again or one ply less.",
        Source = "common practice; lamination theory, e.g. Jones, Mechanics of Composite Materials; a stack that is the same from both sides stays flat",
        Exceptions = """
            Silent for shapes that are not flat, for a single ply, for a sandwich, which is stiff enough to stay straight, and where the bow
            is less than 2 mm or less than 1 part in 200 of the side. A cure at the temperature of the room leaves little to bow.
            """,
        BadExample = """
            fibre shop-carbon {
              density 1.78 g/cm3
              modulus 230 GPa
              transverse-modulus 15 GPa
              shear-modulus 20 GPa
              poisson 0.2
              expansion -0.5 ppm/K
              transverse-expansion 10 ppm/K
              source "data sheet"
            }

            ud shop-carbon-ud {
              fibre shop-carbon
              areal-weight 200 g/m2
              width 60 cm
              resin-content hand 45 % by weight
              pace 5 min/m2
              source "data sheet"
            }

            resin shop-epoxy like slow-laminating-epoxy {
              density cured 1.15 g/cm3
              modulus 3 GPa
              poisson 0.35
              expansion 60 ppm/K
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin shop-epoxy
              axis "0 degrees runs along the long side"
              plies {
                outer shop-carbon-ud 0
                inner shop-carbon-ud 90
              }
              cure {
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            fibre shop-carbon {
              density 1.78 g/cm3
              modulus 230 GPa
              transverse-modulus 15 GPa
              shear-modulus 20 GPa
              poisson 0.2
              expansion -0.5 ppm/K
              transverse-expansion 10 ppm/K
              source "data sheet"
            }

            ud shop-carbon-ud {
              fibre shop-carbon
              areal-weight 200 g/m2
              width 60 cm
              resin-content hand 45 % by weight
              pace 5 min/m2
              source "data sheet"
            }

            resin shop-epoxy like slow-laminating-epoxy {
              density cured 1.15 g/cm3
              modulus 3 GPa
              poisson 0.35
              expansion 60 ppm/K
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin shop-epoxy
              axis "0 degrees runs along the long side"
              plies {
                outer shop-carbon-ud 0
                heart shop-carbon-ud 90
                inner shop-carbon-ud 0
              }
              cure {
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly Length Least = Length.FromMillimeters(2);
    private const double LeastShare = 1.0 / 200;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (plan.Geometry is not { Flat: true } || part.Cure is null || part.Stack.OfType<CoreItem>().Any() || LooksTheSame(part))
        {
            return;
        }

        if (plan.Stiffness?.Curl is not { } curl)
        {
            context.NotChecked(plan.Missing("curl", plan.Missing("stiffness", "the bow on cooling cannot be worked out")), part.StackWhere);
            return;
        }

        var (rise, side, how) = new[]
        {
            (curl.RiseAlong, curl.Length, "along"),
            (curl.RiseAcross, curl.Width, "across"),
            (curl.CornerRise, Length.FromMeters(Math.Min(curl.Length.Meters, curl.Width.Meters)), "at a corner"),
        }.MaxBy(r => Math.Abs(r.Item1.Value.Meters));
        var bow = Length.FromMeters(Math.Abs(rise.Value.Meters));
        if (curl.IsSymmetric || bow < Least || bow < side * LeastShare)
        {
            return;
        }

        context.Report(
            part.StackWhere ?? part.Where,
            $"{part.Name} is flat and not symmetric; cooling bows it by about {Say.About(bow)} {how}",
            Grounds.Sure.And<Length>(rise),
            part.MouldWhere is { } mould ? [new FindingLabel(mould, "flat mould")] : [],
            [Mirrored(part)]);
    }

    // The same words from both ends; weights that the words do not tell are for the plan.
    private static bool LooksTheSame(Part part) => part.Stack.Where(s => s.CoversAll()).Select(Words).ToList() is var words
        && words.SequenceEqual(Enumerable.Reverse(words));

    private static string Words(StackItem item) => item switch
    {
        PlyItem ply => $"{ply.Material.Name} {ply.Orientation?.Value.ToString()} {ply.Count}",
        CoreItem core => $"{core.Material.Name} {core.Thickness?.Value.Meters}",
        _ => "",
    };

    // One more ply like the first, where that makes the list the same from both ends.
    private static Fix? Mirrored(Part part)
    {
        var full = part.Stack.Where(s => s.CoversAll()).ToList();
        if (full is not [PlyItem first, .., { } last] || !ReferenceEquals(first.Where.Source, last.Where.Source)
            || part.VariantOf is not null
            || !full.Skip(1).Select(Words).SequenceEqual(Enumerable.Reverse(full.Skip(1)).Select(Words)))
        {
            return null;
        }

        var lies = first.Orientation is { } orientation ? " " + orientation.Written : "";
        var repeats = first.Count > 1 ? FormattableString.Invariant($" x{first.Count}") : "";
        return Edits.Fix(
            $"Lay one more {first.Material.Name} last, as the first lies",
            FixSafety.NeedsALook,
            Edits.After(last.Where, $"{part.FreeName(first.Name + "-back")} {first.Material.Name}{lies}{repeats}"));
    }
}
