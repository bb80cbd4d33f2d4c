using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A warm cure in which nothing measures the part.</summary>
public sealed class NoPartTemperature : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7107",
        Name = "no-part-temperature",
        Severity = Severity.Warning,
        Title = "Nobody measures the part",
        Reason = "Air, mould and part differ by 10 to 20 degC for an hour and more, and the dwell is counted from the wrong one.",
        Remedy = "Put two thermocouples on part or mould, one of them at the thick or cold end.",
        Source = "common practice; FAA-H-8083-31 chapter 7: at least two thermocouples on the part",
        Exceptions = """
            Speaks only where `thermocouples 0` is written and the cure is warmer than 40 degC.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                thermocouples 0
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                thermocouples 2
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(40);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Cure is not { Thermocouples: { Value: 0 } count } stated || context.Plan.Cure is not { } cure || cure.Peak.Value <= Warm)
        {
            return;
        }

        var written = context.Part.CureWritten();
        context.Report(
            count.Where ?? stated.Where,
            $"the cure reaches {Say.Of(cure.Peak.Value, written)} and no thermocouple sits on the part; above {Say.Of(Warm, written)} two are wanted",
            Grounds.Sure.And("number of thermocouples", count),
            fixes: [Edits.Fix("Put 2 on it", FixSafety.NeedsALook, FigureEdits.Rewrite(count, "2"))]);
    }
}
