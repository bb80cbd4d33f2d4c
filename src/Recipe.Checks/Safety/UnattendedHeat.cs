using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Heat runs for hours with nothing that cuts it off.</summary>
public sealed class UnattendedHeat : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8410",
        Name = "unattended-heat",
        Severity = Severity.Warning,
        Title = "Long heat without a cut-out",
        Reason = "A thermostat that sticks heats bag film and resin until they burn.",
        Remedy = "Fit a second thermostat that cuts the heat off by itself, and a smoke alarm.",
        Source = "common practice",
        Exceptions = """
            Silent below 40 degC, up to two hours, and where the oven line says nothing of a cut-out.
            """,
        BadExample = """
            shop ours {
              oven limit 80 degC cut-out no
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
                ramp 10 degC/h to 50 degC under vacuum
                hold 50 degC for 16 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              oven limit 80 degC cut-out yes
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
                ramp 10 degC/h to 50 degC under vacuum
                hold 50 degC for 16 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool IsSafety => true;

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(40);
    private static readonly Duration Short = Duration.FromHours(2);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop is not { OvenWhere: { } oven } shop || context.Plan.Cure is not { } cure || shop.OvenCutOut is { Value: true })
        {
            return;
        }

        var hot = cure.Steps.Where(s => s.To > Warm || s.From > Warm).ToList();
        var time = Duration.FromSeconds(hot.Sum(s => (s.End.Value - s.Start.Value).Seconds));
        if (time <= Short)
        {
            return;
        }

        if (shop.OvenCutOut is not { } cutOut)
        {
            context.NotChecked("nothing says whether the oven has a cut-out of its own", oven);
            return;
        }

        context.Report(
            cutOut.Where ?? oven,
            $"heat above {Say.Of(Warm, hot[0].Step.Temperature?.Written)} runs for {Say.Of(time)}, and nothing cuts it off when the thermostat sticks",
            Grounds.Sure.And("cut-out", cutOut),
            [new FindingLabel(hot[0].Step.Where, "heated from here")],
            [Edits.Fix("Fit a cut-out", FixSafety.NeedsALook, FigureEdits.Rewrite(cutOut, "yes"))]);
    }
}
