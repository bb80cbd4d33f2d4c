using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Accelerator is added to a resin that holds it already.</summary>
public sealed class AcceleratedTwice : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4102",
        Name = "accelerated-twice",
        Severity = Severity.Error,
        Title = "Accelerator added to a resin that holds it already",
        Reason = "The pot gels in minutes and gets hot enough to burn, and the accelerator may meet the peroxide undiluted.",
        Remedy = "Leave it out: only the peroxide goes into a pre-accelerated resin.",
        Source = "common practice; the data sheet comes first",
        Exceptions = """
            Speaks only of a resin that says `pre-accelerated yes`.
            """,
        BadExample = """
            resin own-polyester {
              chemistry polyester
              pre-accelerated yes
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
            }

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
              resin own-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add accelerator parts 0.3
                stir 2 min
                add hardener
                stir 2 min
                scrape
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            resin own-polyester {
              chemistry polyester
              pre-accelerated yes
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
            }

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
              resin own-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add hardener
                stir 2 min
                scrape
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
        if (context.Part.Resin is not { PreAccelerated: true } resin
            || context.Part.Mixing?.Steps.FirstOrDefault(s => s.Action == MixAction.AddAccelerator) is not { } line)
        {
            return;
        }

        context.Report(
            line.Where,
            $"{resin.Name} is pre-accelerated, and accelerator is added to it again",
            labels: context.Part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            fixes: [Edits.Fix("Leave the accelerator out", FixSafety.NeedsALook, Edits.Remove(line.Where))]);
    }
}
