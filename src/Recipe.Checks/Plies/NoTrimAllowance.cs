using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The plies end at the line to which the part is trimmed, or hardly beyond it.</summary>
public sealed class NoTrimAllowance : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3109",
        Name = "no-trim-allowance",
        Severity = Severity.Warning,
        Title = "Nothing to trim off",
        Reason = "The rim of a ply is ragged, thin and half dry; with nothing beyond the line it becomes the rim of the part.",
        Remedy = "Let the plies run 15 to 25 mm past the trim line.",
        Source = "common practice (10 to 15 mm at the least)",
        Exceptions = """
            Speaks only where the finish has a `trim` line. Silent where no allowance is stated, and for what stays on its mould.
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
              trim 3 mm
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                trim "to the line"
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
              trim 15 mm
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                trim "to the line"
              }
            }
            """,
    };

    private static readonly Length Least = Length.FromMillimeters(9.5);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Finish.FirstOrDefault(s => s.Verb == "trim") is not { } step || part.Mould is { StaysInPart: true })
        {
            return;
        }

        var least = part.FullPlies().Where(p => p is { Step: null, Trim: not null }).MinBy(p => p.Trim!.Value.Meters);
        if (least?.Trim is not { } trim || trim.Value >= Least)
        {
            return;
        }

        var ends = trim.Value.Meters > 0 ? $"{least.Name} runs {Say.Of(trim)} past the trim line" : $"{least.Name} ends at the trim line";
        context.Report(
            trim.Where ?? least.Where,
            $"{ends}, and the part is trimmed to it; {Say.Of(Length.FromMillimeters(10), trim.Written)} is the least that is usual",
            Grounds.Sure.And("trim allowance", trim),
            [new FindingLabel(step.Where, "trimmed here")],
            [Edits.Fix("Let the plies run 15 mm past it", FixSafety.NeedsALook, part.Rewrite(trim, "15 mm"))]);
    }
}
