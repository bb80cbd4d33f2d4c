using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A rule does not find what its bad example must earn.</summary>
public sealed class RuleStaysSilent : RuleFileCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9202",
        Name = "rule-stays-silent",
        Severity = Severity.Error,
        Title = "Rule that misses its bad example",
        Reason = "It does not say what its author believes, and every recipe passes.",
        Remedy = "Correct the rule, or its example.",
        Source = "common practice",
        BadExample = """
            rule light-cloth {
              title "Heavy cloth"
              reason "Heavy cloth does not follow our shapes"
              must every ply { areal-weight at-most 180 g/m2 }
              bad {
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
        foreach (var example in rule.Examples.Where(example => example.Example.MustFire && example.Fires != true))
        {
            context.Report(
                example.Example.Where,
                example.Fires is null
                    ? $"{rule.Rule.Name} cannot tell of this example; it lacks {example.Said}"
                    : $"{rule.Rule.Name} finds nothing wrong with this example, which must earn it",
                labels: [new FindingLabel(rule.Rule.Where, "the rule")]);
        }
    }
}
