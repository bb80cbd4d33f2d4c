using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The seam tape is cut wider than its roll.</summary>
public sealed class TapeWiderThanRoll : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8110",
        Name = "tape-wider-than-roll",
        Severity = Severity.Warning,
        Title = "Seam tape wider than its roll",
        Reason = "The rest of the width then has to come from a second strip that nobody planned, and the seam lies open beside the first.",
        Remedy = "Take a wider tape, cut strips from cloth, or lay two strips that overlap and say so.",
        Source = "common practice: a strip of cloth is no wider than its roll",
        Exceptions = """
            Silent where the width of the roll is not known.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              halves left right
              flange 40 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              join {
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 1400 mm
                vent 3 mm
                tape glass-tape-200 width 150 mm x1
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
              halves left right
              flange 40 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              join {
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 1400 mm
                vent 3 mm
                tape glass-tape-200 width 50 mm x1
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Length Rounding = Length.FromMillimeters(0.5);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Join is not { Tape: { Width: { } roll } tape, TapeWidth: { } wanted } join || wanted.Value <= roll.Value + Rounding)
        {
            return;
        }

        var whole = Say.Of(roll.Value, wanted.Written);
        context.Report(
            wanted.Where ?? join.Where,
            $"the seam is taped {Say.Of(wanted)} wide; the roll of {tape.Name} is {Say.Of(roll)} wide",
            Grounds.Sure.And("width of the tape", wanted).And($"width of {tape.Name}", roll),
            fixes: [Edits.Fix($"Take the whole roll, {whole}", FixSafety.NeedsALook, FigureEdits.Rewrite(wanted, whole))]);
    }
}
