using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A rule has the name of a finding of the program.</summary>
public sealed class RuleNameTaken : RuleFileCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9201",
        Name = "rule-name-taken",
        Severity = Severity.Error,
        Title = "Rule with the name of a finding",
        Reason = "A waiver or a setting of that name would mean both.",
        Remedy = "Give the rule another name.",
        Source = "common practice",
        BadExample = """
            rule cold-night {
              title "Heavy cloth"
              reason "Heavy cloth does not follow our shapes"
              must every ply { areal-weight at-most 180 g/m2 }
              bad {
                part tray {
                  plies {
                    outer carbon-twill-200 0/90
                  }
                }
              }
              good {
                part tray {
                  plies {
                    outer glass-twill-163 0/90
                  }
                }
              }
            }
            """,
        GoodExample = """
            rule light-cloth {
              title "Heavy cloth"
              reason "Heavy cloth does not follow our shapes"
              must every ply { areal-weight at-most 180 g/m2 }
              bad {
                part tray {
                  plies {
                    outer carbon-twill-200 0/90
                  }
                }
              }
              good {
                part tray {
                  plies {
                    outer glass-twill-163 0/90
                  }
                }
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, JudgedRule rule)
    {
        if (FindingCatalogue.Find(rule.Rule.Name) is { } taken)
        {
            context.Report(rule.Rule.Where, $"{rule.Rule.Name} is the name of {taken.Code}, a finding of the program");
        }
    }
}
