using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A file of rules in C# stands in a folder that the user did not agree to.</summary>
public sealed class RulesNotTrusted : CodedRuleFileCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9205",
        Name = "rules-not-trusted",
        Severity = Severity.Warning,
        Title = "Rules in C# that nobody agreed to run",
        Reason = "A rule in C# is a program, and a folder that came from elsewhere may hold any.",
        Remedy = "Read the file; then `recipe trust FOLDER`, once for a folder and all below.",
        Source = "common practice",
        BadExample = """
            use "rules/untrusted.rule.cs"

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
    public override CodedRuleTrouble Trouble => CodedRuleTrouble.NotTrusted;
}
