using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A shop as hot as no shop is: degrees of the other scale.</summary>
public sealed class OddRoom : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4209",
        Name = "odd-room",
        Severity = Severity.Error,
        Title = "A room that nobody works in",
        Reason = "Pot life, film life, wet-out and cure all rest on it: with a slip here each of them is wrong, and none looks wrong.",
        Remedy = "Read the thermometer once more, and write the scale that it shows.",
        Source = "common practice: resin is worked between 15 and 30 degC (60 and 85 degF)",
        Exceptions = """
            Speaks above 45 degC and below -10 degC.
            """,
        BadExample = """
            shop ours {
              room 68 degC
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
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              room 68 degF
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
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Temperature Hottest = Temperature.FromDegreesCelsius(45);
    private static readonly Temperature Coldest = Temperature.FromDegreesCelsius(-10);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, shop) = (context.Part, context.Plan.Shop);
        foreach (var room in (ReadOnlySpan<Figure<Temperature>?>)[part.WetOut?.Room ?? shop?.Room, part.WetOut?.RoomHigh ?? shop?.RoomHigh, shop?.Night])
        {
            if (room is null || (room.Value <= Hottest && room.Value >= Coldest))
            {
                continue;
            }

            var (other, read) = room.Written.EndsWith("degF", StringComparison.Ordinal)
                ? ("degC", Temperature.FromDegreesCelsius(room.Value.DegreesFahrenheit))
                : ("degF", Temperature.FromDegreesFahrenheit(room.Value.DegreesCelsius));
            var fits = read >= Coldest && read <= Hottest;
            var number = Say.Number(other == "degC" ? read.DegreesCelsius : read.DegreesFahrenheit);
            context.Report(
                part.Here(room, part.WetOut?.Where ?? part.Where),
                fits ? $"it is {Say.Of(room)} here; {number} {other} would be {Say.Of(read, room.Written)}" : $"it is {Say.Of(room)} here, and resin is worked between 15 and 30 degC",
                fixes: [fits ? Edits.Fix($"Read it in {other}", FixSafety.NeedsALook, FigureEdits.Rewrite(room, $"{number} {other}")) : null]);
            return;
        }
    }
}
