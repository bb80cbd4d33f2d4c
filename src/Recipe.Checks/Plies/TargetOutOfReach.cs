using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The target mass lies outside what the plies weigh.</summary>
public sealed class TargetOutOfReach : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3006",
        Name = "target-out-of-reach",
        Severity = Severity.Advice,
        Title = "Target mass out of reach",
        Reason = "A target that the cloth cannot meet makes every good part look bad.",
        Remedy = "Change the plies, or write the target that they weigh.",
        Source = "common practice (band of 7 % for experienced hands, 9 % for a practice panel)",
        Exceptions = """
            Silent when the band of the target and the band of the plies touch.
            """,
        BadExample = """
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
              resin slow-laminating-epoxy
              target mass 500 g +/- 20 g
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
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
              resin slow-laminating-epoxy
              target mass 90 g +/- 20 g
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.TargetMass is not { } target)
        {
            return;
        }

        if (context.Plan.TrimmedMass is not { Value: var band } mass)
        {
            context.NotChecked(context.Plan.Missing("mass", "the mass of the laminate is not known"), target.Where);
            return;
        }

        var slack = context.Part.TargetTolerance?.Value ?? Mass.Zero;
        if (target.Value + slack >= band.Low && target.Value - slack <= band.High)
        {
            return;
        }

        var reachable = Whole(band.Value, target.Written);
        context.Report(
            target.Where ?? context.Part.Where,
            $"the target is {Say.Of(target)} and the {(context.Part.IsAssembly ? "joined parts" : "plies")} come to {In(band.Value)} ({In(band.Low)} to {In(band.High)})",
            Grounds.Sure.And<Banded<Mass>>(mass),
            context.Part.StackWhere is { } plies ? [new FindingLabel(plies, "plies here")] : [],
            [Edits.Fix($"Aim for {reachable}", FixSafety.NeedsALook, FigureEdits.Rewrite(target, reachable))]);

        string In(Mass mass) => Say.About(mass, target.Written);
    }

    private static string Whole(Mass mass, string like)
    {
        var unit = Say.UnitLike(like, "g");
        var number = unit.FromSi(mass.Kilograms);
        return number >= 10 ? $"{Say.Number(Math.Round(number))} {unit.Symbol}" : Say.About(mass, like);
    }
}
