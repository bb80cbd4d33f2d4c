using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A rule in C# was stopped, or could not be run.</summary>
public sealed class RuleNotRun : CodedRuleFileCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9207",
        Name = "rule-not-run",
        Severity = Severity.Warning,
        Title = "Rule in C# that was not run to its end",
        Reason = "What it would have found is not known.",
        Remedy = "Mend the rule; one that is asked again with the same facts does the same.",
        Source = "common practice",
        BadExample = """
            use "rules/endless.rule.cs"

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

    /// <inheritdoc/>
    public override CodedRuleTrouble Trouble => CodedRuleTrouble.NotRun;
}
