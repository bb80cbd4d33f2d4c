using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A face fresh from the release is sanded, filled or painted before it is washed.</summary>
public sealed class ReleaseLeftOnFace : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8202",
        Name = "release-left-on-face",
        Severity = Severity.Warning,
        Title = "Release left on the face",
        Reason = "Wax and film come off the mould with the part; sanding drives them into the face, and nothing sticks to it after that.",
        Remedy = "Wash with warm water first, wipe with solvent where wax was used, then sand, then wipe again.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0306): wash, then abrade",
        Exceptions = """
            Speaks of wax and of films; a semi-permanent release leaves hardly a trace. Silent with a peel ply in the bag, since that face may
            be meant; for a mandrel, whose face is the inner one; and where any line before washes or wipes.
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
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                trim
                abrade 240 grit
                prime
                paint colour white
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
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash "with warm water"
                trim
                abrade 240 grit
                prime
                paint colour white
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (ReleaseTraces.FirstOn(context.Part) is not { } works)
        {
            return;
        }

        var later = context.Part.Finish.FirstOrDefault(FinishWords.Washes);
        context.Report(
            works.Where,
            $"{Say.Quoted(works.Words())} comes {(later is null ? $"on a face that still has {ReleaseTraces.Of(context.Part)} on it: no line washes it" : $"before {ReleaseTraces.Of(context.Part)} is washed off the face")}",
            labels: later is null ? [] : [new FindingLabel(later.Where, "washed only here")],
            fixes: [new Fix("Wash it first", FixSafety.Safe, Edits.Before(works.Where, "wash \"with warm water\""))]);
    }
}
