using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The laminate comes on the gel coat too soon or too late.</summary>
public sealed class GelCoatTimed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4302",
        Name = "gel-coat-timed",
        Severity = Severity.Warning,
        Title = "Laminate too soon or too late on the gel coat",
        Reason = "Too soon, styrene wrinkles the skin; too late, nothing bonds to it.",
        Remedy = "Go on when it is tacky and leaves no trace on a finger, after 1 to 2 hours at room temperature, or scuff it first.",
        Source = "common practice (1 to 2 h; 24 h at the most without scuffing)",
        Exceptions = """
            Speaks only of styrenated coats with a `wait`.
            """,
        BadExample = """
            gel-coat own-gel-coat {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g
            }

            resin own-polyester {
              chemistry polyester
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
              coat own-gel-coat 600 g/m2 wait 15 min
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
            gel-coat own-gel-coat {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g
            }

            resin own-polyester {
              chemistry polyester
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
              coat own-gel-coat 600 g/m2 wait 90 min
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

    private static readonly Duration Soon = Duration.FromMinutes(45);
    private static readonly Duration Late = Duration.FromHours(24);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var coat in context.Part.Coats)
        {
            if (!coat.Material.IsStyrenated() || coat.Wait is not { } wait || (wait.Value >= Soon && wait.Value <= Late))
            {
                continue;
            }

            var early = wait.Value < Soon;
            context.Report(
                wait.Where ?? coat.Where,
                $"{coat.Material.Name} waits {Say.Of(wait.Value)}; {(early ? $"it wants {Say.Of(Soon)} or more to skin over" : $"after {Say.Of(Late)} nothing bonds without scuffing")}",
                Grounds.Sure.And("wait", wait),
                fixes: [Edits.Fix("Wait 90 min", FixSafety.NeedsALook, FigureEdits.Rewrite(wait, "90 min"))]);
            return;
        }
    }
}
