using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Thin skins under a bag over wide cells.</summary>
public sealed class CellPrint : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3203",
        Name = "cell-print",
        Severity = Severity.Advice,
        Title = "Cells print through the skin",
        Reason = "The bag sucks a thin skin into each cell, and every cell shows in the face.",
        Remedy = "Lay thicker skins, take smaller cells, or draw less vacuum.",
        Source = "common practice (skins of 0.3 mm over cells of 5 mm)",
        Exceptions = """
            Speaks of honeycomb whose `cell` is given, under a bag, where no caul spreads the pressure.
            """,
        BadExample = """
            core shop-honeycomb {
              family honeycomb
              density 48 kg/m3
              thickness 5 mm
              sheet 1200 mm x 800 mm
              heat-limit 150 degC
              compressive-strength 2 MPa
              cell 10 mm
              resin-uptake 150 g/m2
              source "data sheet"
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-honeycomb thickness 5 mm
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
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
            core shop-honeycomb {
              family honeycomb
              density 48 kg/m3
              thickness 5 mm
              sheet 1200 mm x 800 mm
              heat-limit 150 degC
              compressive-strength 2 MPa
              cell 3 mm
              resin-uptake 150 g/m2
              source "data sheet"
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-honeycomb thickness 5 mm
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
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

    private static readonly Length Wide = Length.FromMillimeters(5);
    private static readonly Length Thin = Length.FromMillimeters(0.3);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Bag is not { } bag || bag.Layers.Any(l => l.Class == LayerClass.Caul)
            || part.Cores().FirstOrDefault(c => c.Material.IsHoneycomb()) is not { } core)
        {
            return;
        }

        if (core.Material.Cell is not { } cell)
        {
            context.NotChecked($"no width of its cells is given for {core.Material.Name}", core.MaterialWhere);
            return;
        }

        if (cell.Value <= Wide)
        {
            return;
        }

        var stack = context.Plan.Stack;
        var at = stack.ToList().FindIndex(s => ReferenceEquals(s.Item, core));
        var skins = new[] { stack.Take(Math.Max(at, 0)), stack.Skip(at + 1) }
            .Select(skin => skin.Where(s => s.Item is PlyItem && s.Item.CoversAll()).ToList())
            .Where(skin => at >= 0 && skin.Count > 0 && skin.TrueForAll(s => s.Thickness is not null))
            .Select(skin => skin.Sum(s => s.Thickness!.Value.Value.Meters))
            .ToList();
        if (skins.Count == 0)
        {
            context.NotChecked("the thickness of the skins is not known", core.Where);
            return;
        }

        if (skins.Min() >= Thin.Meters)
        {
            return;
        }

        context.Report(
            core.MaterialWhere,
            $"cells {Say.Of(cell)} wide under a skin of about {Say.About(Length.FromMeters(skins.Min()))}; up to {Say.Of(Wide, cell.Written)} it would not show",
            Grounds.Sure.And("cell", cell),
            [new FindingLabel(part.Here(cell, core.Where), "cells")],
            [Edits.Fix("Take cells of 5 mm", FixSafety.NeedsALook, part.Rewrite(cell, "5 mm"))]);
    }
}
