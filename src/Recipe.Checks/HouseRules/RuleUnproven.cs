using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A rule has no example.</summary>
public sealed class RuleUnproven : RuleFileCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9204",
        Name = "rule-unproven",
        Severity = Severity.Advice,
        Title = "Rule without examples",
        Reason = "Nobody knows whether it says what was meant until it is too late.",
        Remedy = "Give it a recipe that must earn it, `bad { ... }`, and one that must not, `good { ... }`.",
        Source = "common practice",
        Exceptions = """
            Silent where one of the two is there. A part in the shortest recipe that tells the two apart is enough.
            """,
        BadExample = """
            rule light-cloth {
              title "Heavy cloth"
              reason "Heavy cloth does not follow our shapes"
              must every ply { areal-weight at-most 180 g/m2 }
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
        if (rule.Rule.Examples.IsEmpty && rule.Rule.IsWhole)
        {
            context.Report(rule.Rule.Where, $"{rule.Rule.Name} has no example that must earn it and none that must not");
        }
    }
}
