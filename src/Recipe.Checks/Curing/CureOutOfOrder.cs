using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The cure does something that an earlier line has made impossible: vacuum after the vent, the vent after the bag is off.</summary>
public sealed class CureOutOfOrder : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7112",
        Name = "cure-out-of-order",
        Severity = Severity.Error,
        Title = "Cure in an order that cannot be done",
        Reason = "The cure is done down the page. Vented or with the bag off there is no vacuum to hold, and the chart lets it go at the first such line.",
        Remedy = "Write the lines in the order they are done: hold under vacuum, vent, debag, demould. What is laid on another day is a part of its own.",
        Source = "common practice",
        Exceptions = """
            A part is laid, bagged and cured once. Laid on what cured before, it is a part whose mould is that laminate: `stays-in-part yes`.
            """,
        BadExample = """
            mould rudder-mould {
              surface flat 700 mm x 220 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part rudder-skin {
              mould rudder-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                vent
                hold 20 degC for 24 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            mould rudder-mould {
              surface flat 700 mm x 220 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part rudder-skin {
              mould rudder-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                hold 20 degC for 24 h under vacuum
                vent
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Cure is not { } cure)
        {
            return;
        }

        for (var i = 1; i < cure.Steps.Length; i++)
        {
            var step = cure.Steps[i].Step;
            if (cure.Steps.Take(i).FirstOrDefault(earlier => RulesOut(earlier.Step.Action, step)) is { } earlier)
            {
                var again = BaggedAgain(cure.Steps.Skip(i), earlier.Step.Action);
                context.Report(
                    step.Where,
                    $"{Does(step)}, but {Done(earlier.Step.Action)} before{(again ? "; what is bagged again on another day is a part of its own" : "")}",
                    labels: [new FindingLabel(earlier.Step.Where, Done(earlier.Step.Action))],
                    fixes: again ? [] : [Later(earlier.Step, step)]);
                return;
            }
        }
    }

    // Under vacuum once more and let go once more: no line slipped, another day was meant. No order of these lines says that.
    private static bool BaggedAgain(IEnumerable<CureStepPlan> later, CureAction earlier) =>
        earlier is CureAction.Vent or CureAction.Debag
        && later.SkipWhile(s => !s.Step.UnderVacuum).Any(s => s.Step.Action is CureAction.Vent or CureAction.Debag);

    private static bool RulesOut(CureAction earlier, CureStep step) => step.Action switch
    {
        CureAction.Vent => earlier is CureAction.Vent or CureAction.Debag or CureAction.Demould,
        CureAction.Debag => earlier is CureAction.Debag or CureAction.Demould,
        CureAction.Demould => earlier is CureAction.Demould,
        _ => step.UnderVacuum && earlier is CureAction.Vent or CureAction.Debag or CureAction.Demould,
    };

    private static string Does(CureStep step) => step.Action switch
    {
        CureAction.Vent => "the vacuum is let go here",
        CureAction.Debag => "the bag comes off here",
        CureAction.Demould => "the part leaves the mould here",
        _ => "this is to be under vacuum",
    };

    private static string Done(CureAction action) => action switch
    {
        CureAction.Vent => "the vacuum was let go",
        CureAction.Debag => "the bag came off",
        _ => "the part left the mould",
    };

    // The earlier line goes behind this one; of one thing done twice, this one goes. Only a line of its own can be moved: `cool ... then vent` is two steps.
    private static Fix? Later(CureStep earlier, CureStep step)
    {
        if (earlier.Action == step.Action)
        {
            return IsAlone(step) ? new Fix("Take this line out", FixSafety.NeedsALook, Edits.Remove(step.Where)) : null;
        }

        var word = earlier.Where.Text;
        return IsAlone(earlier) ? new Fix($"Write {word} after it", FixSafety.NeedsALook, Edits.Remove(earlier.Where), Edits.After(step.Where, word)) : null;
    }

    private static bool IsAlone(CureStep step) => !step.Where.Text.Contains(' ', StringComparison.Ordinal);
}
