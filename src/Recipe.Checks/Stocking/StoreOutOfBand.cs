using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Materials are kept colder, warmer or damper than they stand.</summary>
public sealed class StoreOutOfBand : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8308",
        Name = "store-out-of-band",
        Severity = Severity.Warning,
        Title = "Store too cold, too warm or too damp",
        Reason = "The life on a label holds for the store that the label names: resin crystallises in the cold, cures in the warm, and core draws water from damp air.",
        Remedy = "Move it, or shorten the life you count on and test before use.",
        Source = "FAA-H-8083-31 (from memory): wet lay-up resins kept at 40 to 80 degF; core below 65 % humidity is common practice",
        Exceptions = """
            Speaks of `store` and `store-humidity` of the shop, for parts that mix resin or take a core. A core of wood, cork or paper whose
            moisture is not given is another finding.
            """,
        BadExample = """
            shop ours { store 28 to 34 degC }

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
            }
            """,
        GoodExample = """
            shop ours { store 15 to 25 degC; store-humidity 50 % }

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
            }
            """,
    };

    private static readonly Temperature Coldest = Temperature.FromDegreesFahrenheit(40);
    private static readonly Temperature Warmest = Temperature.FromDegreesFahrenheit(80);
    private static readonly TemperatureDelta Rounding = TemperatureDelta.FromKelvins(0.5);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop is not { } shop)
        {
            return;
        }

        var mixes = context.Part.Process.Value != Process.Prepreg && Shelf.Resins(context.Part).Any();
        var low = shop.StoreTemperature;
        var high = shop.StoreTemperatureHigh ?? low;
        if (mixes && low is not null && low.Value < Coldest - Rounding)
        {
            Report(context, low, $"resin is kept at {Say.Of(low.Value, low.Written)}; below {(IsFahrenheit(low) ? "40 degF" : "4 degC")} it thickens and crystallises");
        }
        else if (mixes && high is not null && high.Value > Warmest + Rounding)
        {
            Report(context, high, $"resin is kept at up to {Say.Of(high.Value, high.Written)}; above {(IsFahrenheit(high) ? "80 degF" : "27 degC")} it ages faster than its label says");
        }
        else if (shop.StoreHumidity is { } humidity && humidity.Value > CoreFacts.DampestStore + 1e-6
            && context.Part.Cores().FirstOrDefault(c => !c.Material.IsThirsty() || c.Material.Moisture is not null) is { } core)
        {
            Report(context, humidity, $"{core.Material.Name} is kept in air of {Say.Of(humidity)} humidity; core wants less than {Say.Percent(CoreFacts.DampestStore)}");
        }
    }

    private static bool IsFahrenheit(Figure<Temperature> figure) => figure.Written.Contains("degF", StringComparison.Ordinal);

    private static void Report<T>(CheckContext context, Figure<T> figure, string message) =>
        context.Report(figure.Where ?? context.Part.Where, message, Grounds.Sure.And("the store", figure));
}
