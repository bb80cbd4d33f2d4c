using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Resin has to run through light, tight cloth without a flow medium.</summary>
public sealed class TightWeaveInfused : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6210",
        Name = "tight-weave-infused",
        Severity = Severity.Advice,
        Title = "Tight weave without flow medium",
        Reason = "Light plain weave leaves little room between its tows, and the front stalls in it.",
        Remedy = "Lay a flow medium over it, or feed it a shorter way.",
        Source = "common practice (plain weave under 160 g/m2, more than 300 mm)",
        Exceptions = """
            Silent with a flow medium in the bag, and where any ply is a mat, a stitched or a heavier cloth.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 500 mm x 350 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin infusion-epoxy
              plies {
                outer glass-plain-25 0/90 x2
                inner glass-plain-25 0/90 x2
              }
              bag {
                peel-ply
                release-film perforated
                bag-film
              }
              infuse {
                path 320 mm
                feed-line length 300 mm diameter 8 mm
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
              surface flat 500 mm x 350 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin infusion-epoxy
              plies {
                outer glass-plain-25 0/90 x2
                inner glass-plain-25 0/90 x2
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 320 mm
                feed-line length 300 mm diameter 8 mm
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

    private const double Open = 160;
    private static readonly Length Short = Length.FromMillimeters(300);

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion.Path: { } path, Bag: { } bag } || path.Value <= Short
            || bag.Layers.Any(l => l.Class == LayerClass.FlowMedium) || part.Stack.OfType<CoreItem>().Any()
            || part.FullPlies().ToList() is not [var first, ..] plies
            || !plies.TrueForAll(p => p.Material.IsWoven() && p.Material.Weave == "plain" && p.Material.Grams() is > 0 and < Open)
            || context.MissesAPly())
        {
            return;
        }

        context.Report(
            first.MaterialWhere,
            $"resin runs {Say.Of(path)} through plain weave under {PlyFacts.Weight(Open, first.Material.ArealWeight?.Written)} with no flow medium; {Say.Of(Short, path.Written)} is about the most",
            Grounds.Sure.And("path", path),
            [new FindingLabel(bag.Where, "bag here")],
            [bag.Layers.FirstOrDefault(l => l.Class == LayerClass.PeelPly) is { } peel
                ? Edits.Fix("Lay a flow medium over the peel ply", FixSafety.NeedsALook, Edits.After(peel.Where, "flow-medium smaller 40 mm"))
                : null]);
    }
}
