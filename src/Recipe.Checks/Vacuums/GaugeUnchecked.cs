using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Nobody compared the vacuum gauge with another for more than a year.</summary>
public sealed class GaugeUnchecked : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6105",
        Name = "gauge-unchecked",
        Severity = Severity.Advice,
        Title = "Gauge not checked for long",
        Reason = "A gauge that was knocked reads high for years, and every leak check with it.",
        Remedy = "Compare it with a second gauge once a year and write the day down.",
        Source = "common practice",
        Exceptions = """
            Silent where no day is given.
            """,
        BadExample = """
            shop ours {
              gauge-checked 2020-01-01
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
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              gauge-checked 2099-01-01
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
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop is not { GaugeChecked: { } day } shop || context.Part.Vacuum is null || context.Today is not { } today || IsFresh(day, today))
        {
            return;
        }

        context.Report(
            shop.GaugeCheckedWhere ?? shop.Where,
            $"the gauge was last compared with another on {Say.Of(day)}; today is {Say.Of(today)}",
            labels: [new FindingLabel(context.Part.Vacuum.Where, "read here")]);
    }

    // There is no year after 9999 to add to.
    private static bool IsFresh(DateOnly day, DateOnly today) => day.Year >= today.Year || day.AddYears(1) >= today;
}
