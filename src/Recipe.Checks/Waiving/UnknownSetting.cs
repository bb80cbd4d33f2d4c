using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A setting names no finding there is.</summary>
public sealed class UnknownSetting : SettingCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9005",
        Name = "unknown-setting",
        Severity = Severity.Warning,
        Title = "Setting for a finding that does not exist",
        Reason = "It changes nothing, and whoever wrote it believes that it does.",
        Remedy = "Write the code or the name of the finding as it was reported.",
        Source = "common practice",
        Exceptions = """
            Findings about the text and its meaning cannot be set, so they are not known here.
            """,
        BadExample = """
            findings {
              cold-nights advice
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
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            findings {
              cold-night advice
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
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, SeveritySetting setting, Check? about)
    {
        if (about is not (null or WaiverCheck or SettingCheck))
        {
            return;
        }

        var near = Spelling.Nearest(setting.Code, CheckCatalogue.All.Where(c => c is not (WaiverCheck or SettingCheck)).SelectMany(c => new[] { c.Descriptor.Code, c.Descriptor.Name }));
        var head = new SourceSpan(setting.Where.Source, new TextSpan(setting.Where.Span.Start, setting.Code.Length));
        context.Report(
            head,
            $"no finding that can be set is called {setting.Code}{(near is null ? "" : $"; did you mean {near}?")}",
            fixes: [near is null
                ? Edits.Fix("Take the line away", FixSafety.NeedsALook, Edits.Remove(setting.Where))
                : Edits.Fix($"Write {near}", FixSafety.NeedsALook, Edits.Replace(head, near))]);
    }
}
