using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Resin is mixed so cold that it is thick.</summary>
public sealed class ColdResin : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4206",
        Name = "cold-resin",
        Severity = Severity.Warning,
        Title = "Cold resin",
        Reason = "Cold resin is thick: it wets slowly, holds its bubbles, and more of it stays in the cloth than was planned.",
        Remedy = "Warm the tins to 20 to 25 degrees before mixing.",
        Source = "common practice (18 degC or more; 15 degC for styrenated resins, which are thinner)",
        Exceptions = """
            Speaks of a temperature that is stated. Silent for a system that cures below 8 degC, which is made for the cold, for infusion,
            which has a check of its own, and for prepreg.
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
                resin-temperature 14 degC
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
                resin-temperature 20 degC
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Temperature Least = Temperature.FromDegreesCelsius(18);
    private static readonly Temperature ForStyrene = Temperature.FromDegreesCelsius(15);
    private static readonly Temperature ForTheCold = Temperature.FromDegreesCelsius(8);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value is not (Process.Hand or Process.Bagged) || part.Resin is not { } resin || !part.IsWetted()
            || resin.MinimumTemperature is { } minimum && minimum.Value < ForTheCold)
        {
            return;
        }

        // Tins stand in the room unless the recipe says otherwise; of a range, the warm end is when one works.
        var shop = context.Plan.Shop;
        if ((part.WetOut?.ResinTemperature ?? part.WetOut?.RoomHigh ?? part.WetOut?.Room ?? shop?.RoomHigh ?? shop?.Room) is not { } resinIs
            || resinIs.Value.Kelvins >= Limit(resin).Kelvins - 0.05)
        {
            return;
        }

        context.Report(
            part.Here(resinIs, part.WetOut?.Where ?? part.ResinWhere ?? part.Where),
            $"{resin.Name} is mixed at {Say.Of(resinIs)}; {Say.Of(Limit(resin), resinIs.Written)} or more is wanted",
            Grounds.Sure.And("resin temperature", resinIs),
            part.ResinNamed(),
            [Edits.Fix("Warm the resin to 22 degC", FixSafety.NeedsALook, WetOutWords.Set(part, "resin-temperature", part.WetOut?.ResinTemperature, "22 degC"))]);
    }

    // Styrene keeps a resin thin.
    private static Temperature Limit(ResinSystem resin) => resin.IsStyrenated() ? ForStyrene : Least;
}
