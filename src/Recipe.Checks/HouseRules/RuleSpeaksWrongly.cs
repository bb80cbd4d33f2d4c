using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A rule finds something in its good example.</summary>
public sealed class RuleSpeaksWrongly : RuleFileCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9203",
        Name = "rule-speaks-wrongly",
        Severity = Severity.Error,
        Title = "Rule that blames its good example",
        Reason = "It will blame recipes that its author holds to be right.",
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
                    outer carbon-twill-200 0/90
                  }
                }
              }
              good {
                part tray {
                  plies {
                    outer carbon-twill-200 0/90
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
        foreach (var example in rule.Examples.Where(example => !example.Example.MustFire && example.Fires != false))
        {
            context.Report(
                example.Example.Where,
                example.Fires is null
                    ? $"{rule.Rule.Name} cannot tell of this example; it lacks {example.Said}"
                    : $"{rule.Rule.Name} says of this example, which must not earn it: {example.Said}",
                labels: [new FindingLabel(rule.Rule.Where, "the rule")]);
        }
    }
}
