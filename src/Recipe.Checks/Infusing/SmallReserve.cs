using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The feed pot holds hardly more than the part drinks.</summary>
public sealed class SmallReserve : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6206",
        Name = "small-reserve",
        Severity = Severity.Warning,
        Title = "Feed pot without reserve",
        Reason = "When the pot runs dry the line draws air, and the air goes through the whole part.",
        Remedy = "Keep 20 % of the resin in reserve in the pot.",
        Source = "common practice (20 % over part, medium and lines)",
        Exceptions = """
            Speaks of a `reserve` that is stated, below 15 %.
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
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
                reserve 5 %
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
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
                reserve 20 %
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

    private const double Least = 0.15;
    private const double Usual = 0.2;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { Reserve: { } reserve } infusion } || reserve.Value >= Least - 1e-6)
        {
            return;
        }

        context.Report(
            reserve.Where ?? infusion.Where,
            $"{(reserve.Value > 0 ? Say.Percent(reserve.Value) : "nothing")} is kept in reserve in the feed pot; {Say.Percent(Usual)} is usual",
            Grounds.Sure.And("reserve", reserve),
            fixes: [Edits.Fix("Keep 20 % in reserve", FixSafety.NeedsALook, part.Rewrite(reserve, "20 %"))]);
    }
}
