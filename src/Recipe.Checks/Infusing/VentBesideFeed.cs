using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The vent of an infusion is where the resin comes in.</summary>
public sealed class VentBesideFeed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6214",
        Name = "vent-beside-feed",
        Severity = Severity.Warning,
        Title = "Vent beside the feed",
        Reason = "The resin takes the short way from feed to vent, and the far end stays dry with its air shut in.",
        Remedy = "Vent it where the resin comes last, across the part from the feed.",
        Source = "common practice",
        Exceptions = """
            Judged by the words of `vent`: beside, by, near, at, next to or along the feed.
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
                vent "beside the feed line"
                resin-temperature 22 degC
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
                vent "across from the feed line"
                resin-temperature 22 degC
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

    private static readonly string[] Near = ["beside", "next to", "near", "close to", "by", "at", "along", "over", "on"];

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part is not { Process.Value: Process.Infused, Infusion: { Vent: { } vent } infusion } || !IsAtTheFeed(vent))
        {
            return;
        }

        context.Report(
            infusion.VentWhere ?? infusion.Where,
            $"the vent is \"{vent}\": where the resin comes in",
            fixes: [infusion.VentWhere is { } line ? new Fix("Vent it across from the feed", FixSafety.NeedsALook, Edits.Replace(line, "vent \"across from the feed, where the resin comes last\"")) : null]);
    }

    // "beside the feed" and "at feed side"; not "at the end across from the feed", nor "far from the feed".
    private static bool IsAtTheFeed(string vent)
    {
        var words = vent.Split([' ', ',', ';', '-'], StringSplitOptions.RemoveEmptyEntries);
        var feed = Array.FindIndex(words, word => word.StartsWith("feed", StringComparison.OrdinalIgnoreCase) || word.StartsWith("inlet", StringComparison.OrdinalIgnoreCase));
        if (feed < 0)
        {
            return false;
        }

        var before = string.Join(' ', words[..feed].Where(word => !word.Equals("the", StringComparison.OrdinalIgnoreCase)));
        return Near.Any(near => before.Equals(near, StringComparison.OrdinalIgnoreCase) || before.EndsWith(" " + near, StringComparison.OrdinalIgnoreCase));
    }
}
