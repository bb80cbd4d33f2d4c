using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Resin or mould is too cold for an infusion.</summary>
public sealed class InfusedCold : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6202",
        Name = "infused-cold",
        Severity = Severity.Warning,
        Title = "Infused in the cold",
        Reason = "Cold resin is thick, and a cold mould chills it on the way: the front stops before the part is full.",
        Remedy = "Warm resin, mould and room to 20 to 25 degrees before mixing.",
        Source = "common practice (60 degF, 16 degC)",
        Exceptions = """
            Speaks of temperatures that are stated.
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                mould-temperature 13 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                mould-temperature 21 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private static readonly Temperature Least = Temperature.FromDegreesCelsius(15.5);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { } infusion })
        {
            return;
        }

        var cold = Cold(part, context.Plan.Shop);
        if (cold is not [var (what, temperature), ..])
        {
            return;
        }

        context.Report(
            part.Here(temperature, infusion.Where),
            $"{what} is at {Say.Of(temperature)} for the infusion; {Say.Of(Temperature.FromDegreesCelsius(16), temperature.Written)} or more is wanted{Say.More(cold.Count - 1)}",
            Grounds.Sure.And("temperature", temperature),
            [new FindingLabel(infusion.Where, "infused here")],
            [Warmer(part, cold.Select(c => c.Is).Distinct().ToList())]);
    }

    /// <summary>What is too cold for an infusion, coldest first, each temperature once; empty for another process.</summary>
    internal static List<(string What, Figure<Temperature> Is)> Cold(Part part, Shop? shop)
    {
        if (part is not { Process.Value: Process.Infused, Infusion: { } infusion })
        {
            return [];
        }

        var room = part.WetOut?.RoomHigh ?? part.WetOut?.Room ?? shop?.RoomHigh ?? shop?.Room;
        return
        [
            .. new[] { (What: "the mould", Is: infusion.MouldTemperature ?? room), (What: "the resin", Is: infusion.ResinTemperature ?? part.WetOut?.ResinTemperature ?? room) }
                .Where(c => c.Is is { } given && given.Value < Least)
                .Select(c => (c.What, Is: c.Is!))
                .DistinctBy(c => c.Is)
                .OrderBy(c => c.Is.Value.Kelvins),
        ];
    }

    private static Fix? Warmer(Part part, List<Figure<Temperature>> cold)
    {
        var edits = cold.Select(c => part.Rewrite(c, "22 degC")).OfType<TextEdit>().ToArray();
        return edits.Length == cold.Count ? new Fix("Warm it to 22 degC", FixSafety.NeedsALook, [.. edits]) : null;
    }
}
