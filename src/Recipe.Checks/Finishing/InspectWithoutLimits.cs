using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The part is inspected against nothing.</summary>
public sealed class InspectWithoutLimits : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8207",
        Name = "inspect-without-limits",
        Severity = Severity.Advice,
        Title = "Inspection without limits",
        Reason = "Without a number two people pass and fail the same part, and nobody can say what got worse.",
        Remedy = "Say how much is still good: pinholes in a square decimetre, dry spots in millimetres, mass in its band.",
        Source = "common practice",
        Exceptions = """
            A warning for a part that carries load. Silent where the line holds a number, a word such as "no", "none" or "within", or names a
            drawing, gauge or sample to compare with.
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
                wash
                trim
                inspect "looks good"
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
                wash
                trim
                inspect "no dry spot over 3 mm; at most 2 pinholes per dm2"
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var looks = context.Part.Finish.Where(f => f.Verb == "inspect").ToList();
        if (looks.Count == 0 || looks.Exists(f => HasLimit(f.Text)))
        {
            return;
        }

        context.Report(
            looks[0].Where,
            $"{Say.Quoted(looks[0].Words())} gives no limit to pass or fail by",
            fixes: [new Fix("Give limits to look for", FixSafety.NeedsALook, looks[0].Text.Length == 0
                ? Edits.Append(looks[0].Where, "\"no dry spot over 3 mm; at most 2 pinholes per dm2\"")
                : FinishWords.AddWords(looks[0].Where, "no dry spot over 3 mm"))],
            severity: context.Part.CarriesLoad() ? Severity.Warning : Severity.Advice);
    }

    private static bool HasLimit(string text) =>
        text.AsSpan().IndexOfAnyInRange('0', '9') >= 0
        || TradeWords.Says(
            text, "no", "none", "nothing", "without", "free", "zero", "one", "two", "three", "within", "most", "least", "band", "limit", "tolerance", "max", "maximum", "every",
            "all", "drawing", "sheet", "template", "gauge", "gage", "sample", "standard", "master", "compar", "list", "record", "even", "hard", "coin");
}
