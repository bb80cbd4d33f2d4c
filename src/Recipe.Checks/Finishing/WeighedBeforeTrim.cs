using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The part is weighed with its trim still on.</summary>
public sealed class WeighedBeforeTrim : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8209",
        Name = "weighed-before-trim",
        Severity = Severity.Warning,
        Title = "Weighed before the trim",
        Reason = "The target is that of the trimmed part; with its trim on every part reads heavy, and no two alike.",
        Remedy = "Weigh after the last trim.",
        Source = "common practice",
        Exceptions = """
            Silent without a target mass, where it is weighed again after the trim, and where the line says that the untrimmed part is meant.
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
              target mass 82 g +/- 20 g
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                weigh
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
              target mass 82 g +/- 20 g
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim "to the line"
                weigh
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.TargetMass is not { } target
            || part.Finish.LastOrDefault(f => f.Verb == "weigh") is not { } weigh
            || part.Finish.SkipWhile(f => f != weigh).FirstOrDefault(f => f.Verb == "trim") is not { } trim
            || part.Finish.TakeWhile(f => f != weigh).Any(f => f.Verb == "trim")
            || TradeWords.Says(weigh.Text, "untrimmed", "before", "raw", "blank", "offcut"))
        {
            return;
        }

        context.Report(
            weigh.Where,
            $"the part is weighed before it is trimmed; its target of {Say.Of(target)} is that of the trimmed part",
            labels: [new FindingLabel(trim.Where, "trimmed here"), .. target.Where is { } said ? [new FindingLabel(said, "target here")] : Array.Empty<FindingLabel>()],
            fixes: [After(weigh, part.Finish.Last(f => f.Verb == "trim"))]);
    }

    private static Fix After(FinishStep weigh, FinishStep trim)
    {
        var line = weigh.Where.Text;
        return new Fix("Weigh it after the trim", FixSafety.NeedsALook, Edits.Remove(weigh.Where), Edits.After(trim.Where, line));
    }
}
