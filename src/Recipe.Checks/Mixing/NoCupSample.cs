using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>No sample of the pot is kept for a part that carries load.</summary>
public sealed class NoCupSample : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4109",
        Name = "no-cup-sample",
        Severity = Severity.Advice,
        Title = "No sample of the pot kept",
        Reason = "When a part turns out soft, the cup tells whether it was the mix or the cure.",
        Remedy = "Keep a blob of each pot in a cup with its number and time.",
        Source = "AC 43.13-1B p. 3-1 (coupons of the same batch); common practice",
        Exceptions = """
            Speaks only of `structural` and `flying` parts whose mixing is written down.
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
              use structural
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add hardener
                stir 3 min
                scrape
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
              use structural
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add hardener
                stir 3 min
                scrape
                sample
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part is not { Mixing: { KeepsSample: false } mixing, Use: { Value: PartUse.Structural or PartUse.Flying } use })
        {
            return;
        }

        context.Report(
            mixing.Where,
            $"the part is {Say.Of(use.Value)}, and no sample of its pots is kept",
            labels: use.Where is { } said ? [new FindingLabel(said, "said here")] : [],
            fixes: [Edits.Fix("Keep a sample of each pot", FixSafety.Safe, Edits.Last(mixing.Where, "sample"))]);
    }
}
