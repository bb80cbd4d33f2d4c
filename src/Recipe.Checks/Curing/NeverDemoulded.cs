using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The part is sealed, weighed or painted, and no line takes it off its mould.</summary>
public sealed class NeverDemoulded : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7114",
        Name = "never-demoulded",
        Severity = Severity.Warning,
        Title = "Nobody takes the part off its mould",
        Reason = "Without the line no paper says when the part may leave the mould, and the whole cure counts as done in it.",
        Remedy = "Write `demould` in the cure, where the part leaves the mould.",
        Source = "common practice",
        Exceptions = """
            Speaks where the finish seals, drills, weighs, paints or ships the part, which is done off the mould. Silent for a part that stays on its mould or is joined in it.
            """,
        BadExample = """
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
              }
              finish {
                weigh
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
              finish {
                weigh
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Cure: { Steps.IsEmpty: false } cure, Mould: { StaysInPart: false }, Join: null, IsDemoulded: false, OffTheMould: { } done })
        {
            return;
        }

        context.Report(
            cure.Where,
            $"{part.Name} is to be finished off its mould, and no line takes it off",
            labels: [new FindingLabel(done.Where, "done off the mould")],
            fixes: [Edits.Fix("Take it off at the end of the cure", FixSafety.NeedsALook, Edits.Last(cure.Where, "demould"))]);
    }
}
