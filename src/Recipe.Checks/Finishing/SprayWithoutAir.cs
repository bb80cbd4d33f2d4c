using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A paint that holds isocyanate is sprayed without air from outside.</summary>
public sealed class SprayWithoutAir : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8212",
        Name = "spray-without-air",
        Severity = Severity.Error,
        Title = "Isocyanate sprayed without an air-fed mask",
        Reason = "Sprayed isocyanate brings on asthma for life, and a filter mask does not hold it back for sure or give a warning when it is spent.",
        Remedy = "Wear an air-fed mask in an extracted booth, or brush it, or take a paint without isocyanate; the maker's safety sheet and local rules decide.",
        Source = "NIOSH: isocyanates, supplied-air respirator for spraying; common practice",
        Exceptions = """
            Speaks of lines that say spray and isocyanate, two-pack or 2K; epoxy primers and water-based paints are none. Silent where a line
            of the finish speaks of an air-fed mask or supplied air, or the `respirator` of the shop does. It cannot be accepted.
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim
                abrade 240 grit
                paint "two-pack clear, sprayed"
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim
                abrade 240 grit
                paint "two-pack clear, sprayed with an air-fed mask in the booth"
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool CanBeAccepted => false;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var finish = context.Part.Finish;
        var sprays = finish.FirstOrDefault(f => TradeWords.Says(f.Words(), "spray", "airbrush") && IsIsocyanate(f.Words()));
        if (sprays is null || finish.Select(FinishWords.Words).Append(context.Plan.Shop?.Safety?.Respirator).Any(said => TradeWords.Says(
            said, "air-fed", "air fed", "airfed", "supplied air", "supplied-air", "fresh air", "fresh-air", "breathing air", "airline", "air-line", "outside shop", "by the paint shop")))
        {
            return;
        }

        context.Report(
            sprays.Where,
            $"{Say.Quoted(sprays.Words())} sprays isocyanate, and no line says air-fed mask",
            fixes: [new Fix("Wear an air-fed mask", FixSafety.NeedsALook, FinishWords.AddWords(sprays.Where, "air-fed mask"))]);
    }

    private static bool IsIsocyanate(string words)
    {
        if (TradeWords.Says(words, "non-isocyanate", "isocyanate-free", "isocyanate free", "no isocyanate", "without isocyanate", "water-based", "water based", "epoxy", "polyester", "single pack", "single-pack", "1k"))
        {
            return false;
        }

        return TradeWords.Says(words, "isocyanate", "polyisocyanate", "2k", "two-pack", "two pack", "2-pack", "2 pack", "twopack", "two-part", "two part", "two-component", "two component")
            || (TradeWords.Says(words, "polyurethane", "urethane") && TradeWords.Says(words, "hardener", "harden", "catalyst", "mix"));
    }
}
