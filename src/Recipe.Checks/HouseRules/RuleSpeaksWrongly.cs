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
                    outer carbon-twill-200 0/90
                    inner carbon-twill-200 0/90
                  }
                  cure {
                    hold 20 degC for 48 h
                    demould
                  }
                }
              }
              good {
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
                    outer carbon-twill-200 0/90
                    inner carbon-twill-200 0/90
                  }
                  cure {
                    hold 20 degC for 48 h
                    demould
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
                    outer carbon-twill-200 0/90
                    inner carbon-twill-200 0/90
                  }
                  cure {
                    hold 20 degC for 48 h
                    demould
                  }
                }
              }
              good {
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
