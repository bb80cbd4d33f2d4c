using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Peroxide and accelerator come together without resin between them.</summary>
public sealed class PeroxideMeetsAccelerator : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4101",
        Name = "peroxide-meets-accelerator",
        Severity = Severity.Error,
        Title = "Peroxide meets accelerator",
        Reason = "The two together decompose at once: the pot spits, burns or bursts.",
        Remedy = "Stir the accelerator into the resin first, all of it, and the peroxide last; keep the two on different shelves.",
        Source = "common practice; the data sheets of both and local codes come first",
        Exceptions = """
            Speaks only of resins that cure by peroxide. No reason accepts it.
            """,
        BadExample = """
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
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add accelerator parts 0.3
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
    };

    /// <inheritdoc/>
    public override bool CanBeAccepted => false;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Mixing is not { } mixing || !part.Resin.IsPeroxideCured())
        {
            return;
        }

        // Of two goes of accelerator the last is the one that may meet the first of the peroxide.
        var steps = mixing.Steps;
        var accelerator = steps.LastOrDefault(s => s.Action == MixAction.AddAccelerator);
        var peroxide = steps.FirstOrDefault(s => s.Action == MixAction.AddHardener);
        if (accelerator is null || peroxide is null)
        {
            return;
        }

        var (a, p) = (steps.IndexOf(accelerator), steps.IndexOf(peroxide));
        var resin = steps.IndexOf(s => s.Action == MixAction.AddResin);
        var stirred = a < p && steps.Skip(a).Take(p - a).Any(s => s.Action == MixAction.Stir);
        if (stirred && resin >= 0 && resin < a)
        {
            return;
        }

        var how = a > p ? "the peroxide goes in before the accelerator"
            : resin < 0 || resin > a ? "the accelerator goes in before the resin"
            : "nothing is stirred between accelerator and peroxide";
        context.Report(
            peroxide.Where,
            $"{how}; the accelerator is stirred into the resin first, and the peroxide comes last",
            labels: [new FindingLabel(accelerator.Where, "accelerator here")],
            fixes: [a < p && !stirred && resin >= 0 && resin < a ? Edits.Fix("Stir the accelerator in first", FixSafety.NeedsALook, Edits.Before(peroxide.Where, "stir 2 min")) : null]);
    }
}
