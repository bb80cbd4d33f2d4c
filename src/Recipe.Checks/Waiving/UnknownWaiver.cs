using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A waiver names no finding there is.</summary>
public sealed class UnknownWaiver : WaiverCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9001",
        Name = "unknown-waiver",
        Severity = Severity.Warning,
        Title = "Waiver of a finding that does not exist",
        Reason = "It silences nothing, and whoever wrote it believes that something is settled.",
        Remedy = "Write the code or the name of the finding as it was reported.",
        Source = "common practice",
        BadExample = """
            shop ours {
              night 16 degC
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 20 degC
              }
              accept RC7999 because "the mould stands in a heated box at night"
              cure {
                hold room for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              night 10 degC
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 20 degC
              }
              accept cold-night because "the mould stands in a heated box at night"
              cure {
                hold room for 48 h
                demould
              }
            }
            """,
    };

    private protected override void Examine(CheckContext context, WaiverUse use)
    {
        if (use.Fate != WaiverFate.NamesNothing)
        {
            return;
        }

        var near = Spelling.Nearest(use.Waiver.Code, use.Candidates);
        context.Report(
            use.Waiver.Where,
            $"no finding is called {use.Waiver.Code}{(near is null ? "" : $"; did you mean {near}?")}",
            fixes: [near is null ? Remove(use) : Rename(use, near)]);
    }

    private static Fix? Rename(WaiverUse use, string near)
    {
        var where = use.Waiver.Where;
        var at = where.Text.IndexOf(use.Waiver.Code, StringComparison.Ordinal);
        return at < 0
            ? null
            : new Fix(
                $"Accept {near}",
                FixSafety.NeedsALook,
                Edits.Replace(new SourceSpan(where.Source, new TextSpan(where.Span.Start + at, use.Waiver.Code.Length)), near));
    }

    private static Fix Remove(WaiverUse use) => new("Take the waiver away", FixSafety.NeedsALook, Edits.Remove(use.Waiver.Where));
}
