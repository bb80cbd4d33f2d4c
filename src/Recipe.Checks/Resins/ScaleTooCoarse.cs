using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The scale reads too coarsely for the hardener.</summary>
public sealed class ScaleTooCoarse : Check
{
    private const double Ounce = 0.45359237 / 16;
    private const double Share = 0.01;

    // The dose of a peroxide has a window, 1 to 3 % of the resin: a quarter of it more or less still lies inside.
    private const double ShareOfPeroxide = 0.25;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4007",
        Name = "scale-too-coarse",
        Severity = Severity.Warning,
        Title = "Scale too coarse for the pot",
        Reason = "One percent off the hardener is all a mix stands; a scale that reads in larger steps cannot show it.",
        Remedy = "Weigh on a finer scale, or mix a larger pot.",
        Source = "a light-aircraft maintenance manual: error of 0.5 % at most; 1 % is common practice",
        Exceptions = """
            Speaks only when the shop states its `scale`.
            """,
        BadExample = """
            shop ours {
              scale 1 g
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pot 120 g
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              scale 0.1 g
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pot 120 g
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
        if (context.Plan.Shop?.ScaleResolution is not { } scale || context.Plan.Pots.IsEmpty || context.Part.Resin is not { } resin)
        {
            return;
        }

        if (context.Plan.Pots.Where(p => p.Hardener is not null && p.Resin is not null).MinBy(Smaller) is not { } pot)
        {
            context.NotChecked($"no mix ratio is given for {resin.Name}", context.Part.ResinWhere);
            return;
        }

        var component = Mass.FromKilograms(Smaller(pot));
        var finest = component * (resin.IsPeroxideCured() ? ShareOfPeroxide : Share);
        if (scale.Value <= finest)
        {
            return;
        }

        var what = pot.Hardener!.Value.Value <= pot.Resin!.Value.Value ? "hardener" : "resin";
        context.Report(
            scale.Where ?? context.Part.Where,
            $"the scale reads in steps of {Say.Of(scale)}; the {Say.About(component, scale.Written)} of {what} in pot {pot.Number} want {Say.About(finest, scale.Written)} or finer",
            Grounds.Sure.And("step of the scale", scale).And<Mass>(pot.Mass),
            [new FindingLabel(WetOutWords.PotWhere(context.Part, pot.Number), "pot here")],
            [Finer(scale, finest)]);
    }

    private static double Smaller(PotPlan pot) => Math.Min(pot.Hardener!.Value.Value.Kilograms, pot.Resin!.Value.Value.Kilograms);

    private static Fix? Finer(Figure<Mass> scale, Mass finest)
    {
        // Steps that scales are sold with (common practice): tenths and hundredths of a gram, and in ounces thousandths and halves of them.
        (double Si, string Written)[] steps = Say.UnitLike(scale.Written, "g").Symbol is "oz" or "lb"
            ? [(Ounce * 0.01, "0.01 oz"), (Ounce * 0.005, "0.005 oz"), (Ounce * 0.001, "0.001 oz"), (Ounce * 0.0005, "0.0005 oz")]
            : [(1e-4, "0.1 g"), (1e-5, "0.01 g")];
        var step = steps.FirstOrDefault(s => s.Si <= finest.Kilograms).Written;
        return step is null ? null : Edits.Fix($"Weigh on a scale that reads {step}", FixSafety.NeedsALook, FigureEdits.Rewrite(scale, step));
    }
}
