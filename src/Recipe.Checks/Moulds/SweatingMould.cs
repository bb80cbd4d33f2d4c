using Recipe.Engineering;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The mould is so cold that water settles on it.</summary>
public sealed class SweatingMould : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2120",
        Name = "sweating-mould",
        Severity = Severity.Warning,
        Title = "Mould near the dew point",
        Reason = "A film of water nobody sees lifts release, clouds gel coat and blushes epoxy.",
        Remedy = "Warm the mould, or dry the air, before anything goes on it.",
        Source = "common practice (3 degC above the dew point); dew point after the Magnus formula with the constants of Alduchov and Eskridge (1996)",
        Exceptions = """
            Silent where no temperature of the mould or no humidity is given.
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
              wet-out {
                room 22 degC
                humidity 70 %
                mould-temperature 17 degC
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
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 22 degC
                humidity 55 %
                mould-temperature 21 degC
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly TemperatureDelta Distance = TemperatureDelta.FromKelvins(3);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var mould = part.WetOut?.MouldTemperature ?? part.Infusion?.MouldTemperature;
        var humidity = part.WetOut?.Humidity ?? context.Plan.Shop?.Humidity;
        if (mould is null || humidity is not { Value: > 0 and <= 1 } || !part.IsWetted())
        {
            return;
        }

        var room = context.Plan.Conditions.Room;
        if (room.Value.DegreesCelsius is < -40 or > 60)
        {
            return;
        }

        var dew = DewPoint.Of(room.Value, humidity.Value);
        if (mould.Value >= dew + Distance)
        {
            return;
        }

        var warm = FormattableString.Invariant($"{Math.Ceiling((dew + Distance).DegreesCelsius) + 1} degC");
        context.Report(
            mould.Where ?? part.Where,
            $"mould at {Say.Of(mould)}; air of {Say.Of(room.Value)} at {Say.Percent(humidity.Value)} wets what is below {Say.Of(Temperature.FromDegreesCelsius(Math.Round(dew.DegreesCelsius, 1)))}, and {Say.Apart(Distance.Kelvins, mould.Written)} between are wanted",
            Grounds.Sure.And<Temperature>(room).And("mould temperature", mould).And("humidity", humidity),
            humidity.Where is { } said ? [new FindingLabel(said, "humidity here")] : [],
            [Edits.Fix($"Warm the mould to {warm}", FixSafety.NeedsALook, FigureEdits.Rewrite(mould, warm))]);
    }
}
