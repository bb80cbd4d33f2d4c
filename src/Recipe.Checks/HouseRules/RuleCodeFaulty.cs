using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A file of rules in C# does not compile, or does what a rule may not do.</summary>
public sealed class RuleCodeFaulty : CodedRuleFileCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9206",
        Name = "rule-code-faulty",
        Severity = Severity.Error,
        Title = "Rules in C# that cannot be used",
        Reason = "No rule of the file is applied, and every recipe passes.",
        Remedy = "Correct the file; a rule may reckon with the facts it is given and do nothing else.",
        Source = "common practice",
        BadExample = """
            use "rules/faulty.rule.cs"

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
    public override CodedRuleTrouble Trouble => CodedRuleTrouble.Faulty;
}
