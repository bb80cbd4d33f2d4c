using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A leak is accepted that spoils the part.</summary>
public sealed class LeakLimitTooLoose : Check
{
    /// <summary>34 mbar is what people write for 1 inHg (33.86 mbar).</summary>
    private const double Rounding = 1.01;

    private static readonly Pressure OneInch = Pressure.FromInchesOfMercury(1);

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6007",
        Name = "leak-limit-too-loose",
        Severity = Severity.Warning,
        Title = "Leak limit too loose",
        Reason = "The air that leaks in is drawn through the wet laminate as bubbles.",
        Remedy =
            "Accept no more than 1 inHg (34 mbar) in a minute for a wet lay-up, 1 inHg in five minutes for an infusion, a "
            + "tenth of the level in five minutes for prepreg.",
        Source =
            "US Army TM 1-1500-204-23-11 (page files 0171, 0184): not more than 1 inHg in 1 min; infusion and prepreg common "
            + "practice",
        Exceptions = """
            A loose limit of an infusion is an error from 2 inHg in five minutes up. A longer test may rise in proportion.
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
                leak-check 5 min rise at-most 250 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
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
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var infused = part.Process.Value == Process.Infused;
        var check = infused ? part.Infusion?.DropTest ?? part.Vacuum?.LeakCheck : part.Vacuum?.LeakCheck;
        if (check is null || part.Process.Value == Process.Hand)
        {
            return;
        }

        if (check is not { Duration: { Value.Seconds: > 0 } time, RiseAtMost: { } rise })
        {
            var missing = check.RiseAtMost is null ? "no accepted rise" : "no time";
            context.NotChecked($"{missing} is given for the leak check", check.Where);
            return;
        }

        var level = context.Plan.Vacuum?.BelowAmbient;
        if (part.Process.Value == Process.Prepreg && level is null)
        {
            context.NotChecked("no vacuum level is known to take a tenth of", check.Where);
            return;
        }

        var perMinute = part.Process.Value switch
        {
            Process.Infused => OneInch / 5,
            Process.Prepreg => level!.Value.Value * 0.1 / 5,
            _ => OneInch,
        };
        var accepted = rise.Value / time.Value.Minutes;
        if (accepted <= perMinute * Rounding)
        {
            return;
        }

        var limit = perMinute * time.Value.Minutes;
        context.Report(
            rise.Where ?? check.Where,
            $"a rise of {Say.Of(rise)} in {Say.Of(time)} is accepted; {Say.APart(part.Process.Value)} "
            + $"stands {Say.Of(limit, rise.Written)}",
            Grounds.Sure.And("accepted rise", rise).And<Pressure>(part.Process.Value == Process.Prepreg ? level : null),
            fixes: [Tighter(rise, limit)],
            severity: infused && accepted > perMinute * 2 * Rounding ? Severity.Error : Severity.Warning);
    }

    private static Fix? Tighter(Figure<Pressure> rise, Pressure limit)
    {
        var text = VacuumWords.UpTo(limit, rise.Written);
        return Edits.Fix($"Accept {text}", FixSafety.NeedsALook, FigureEdits.Rewrite(rise, text));
    }
}
