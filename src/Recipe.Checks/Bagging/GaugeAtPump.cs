using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The gauge reads at the pump and not at the bag.</summary>
public sealed class GaugeAtPump : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5101",
        Name = "gauge-at-pump",
        Severity = Severity.Warning,
        Title = "Gauge at the pump",
        Reason = "There it reads the hose and not the far corner of the bag, which may hang slack while the gauge looks well.",
        Remedy = "Put a second fitting into the bag, on the far side from the port, and read there.",
        Source = "FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-8: the gauge on the side opposite the port",
        Exceptions = """
            Silent where no `gauge` line is written, and for a bag of less than a tenth of a square metre.
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
                gauge at pump
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
                gauge at "on the flange, opposite the port"
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

    private const double SmallBag = 0.1;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { GaugeAt: { } at } bag
            || !TradeWords.Says(at, "pump", "hose", "trap", "catch-pot", "catch pot", "resin pot", "manifold", "vacuum line", "regulator")
            || TradeWords.Says(at, "far", "opposite", "bag", "flange", "part", "corner", "end", "away", "second", "both", "rim", "other", "mould", "mold")
            || TradeWords.Forbids(at))
        {
            return;
        }

        if (context.Plan.Bag?.Layers.FirstOrDefault(l => l.Layer.Class == LayerClass.BagFilm) is { Sheets: > 0 } film
            && film.Area.Value.SquareMeters / film.Sheets < SmallBag)
        {
            return;
        }

        context.Report(
            bag.GaugeWhere ?? bag.Where,
            $"the gauge reads at \"{at}\"; what the far side of the bag holds stays unknown",
            labels: bag.Ports.Select(p => new FindingLabel(p.Where, "port here")),
            fixes: [bag.GaugeWhere is { } written
                ? Edits.Fix("Read it on the far side", FixSafety.NeedsALook, Edits.Replace(written, "gauge at \"on the flange, opposite the port\""))
                : null]);
    }
}
