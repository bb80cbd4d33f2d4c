using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A fastener goes through a soft core.</summary>
public sealed class DrilledCore : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3208",
        Name = "drilled-core",
        Severity = Severity.Error,
        Title = "Fastener through the core without a hard point",
        Reason = "Tightening it crushes the core, the bolt works loose, and water runs into the sandwich.",
        Remedy = "Let a hard point into the core at each hole, or take the core away there.",
        Source = "common practice",
        Exceptions = """
            Speaks of a `drill` line that names bolt, rivet, screw, hinge, cleat or fastener, in a part whose core covers it all and that has
            no insert. A warning where the core ends inside the part. Silent where the line says hard point, insert, bush, potted, plug, rim,
            flange or solid.
            """,
        BadExample = """
            core shop-foam like pvc-foam-75 {
              cut perforated
              source "data sheet"
            }

            insert shop-block {
              mass 20 g
              stuff glass
              source "weighed"
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
                heart core shop-foam thickness 5 mm
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
              finish {
                drill "6 mm for the cleat bolts"
              }
            }
            """,
        GoodExample = """
            core shop-foam like pvc-foam-75 {
              cut perforated
              source "data sheet"
            }

            insert shop-block {
              mass 20 g
              stuff glass
              source "weighed"
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
                heart core shop-foam thickness 5 mm
                block insert shop-block at "under the cleat, let into the core"
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
              finish {
                drill "6 mm for the cleat bolts"
              }
            }
            """,
    };

    private static readonly string[] Sound = ["hard", "hardpoint", "hardwood", "insert", "bush", "bushing", "potted", "rim", "flange", "solid", "plug", "plugged"];

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Cores().OrderBy(c => !c.CoversAll()).FirstOrDefault() is not { } core || part.Stack.OfType<InsertItem>().Any()
            || part.Finish.FirstOrDefault(s => Fasteners.Named(s) && !TradeWords.Says(s.Text, Sound)) is not { } hole)
        {
            return;
        }

        context.Report(
            hole.Where,
            $"{part.Name} is drilled for a fastener, and {core.Name} of {core.Material.Name} has no hard point",
            labels: [new FindingLabel(core.Where, "core here")],
            fixes: [HardPoint(context, core)],
            severity: core.CoversAll() ? Severity.Error : Severity.Warning);
    }

    private static Fix? HardPoint(CheckContext context, CoreItem core)
    {
        var block = context.Model.Materials.Values.OfType<Insert>()
            .Where(i => i.Stuff == "glass")
            .OrderBy(i => i.FromBook)
            .ThenBy(i => i.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return block is null || context.Part.VariantOf is not null
            ? null
            : Edits.Fix(
                $"Let {block.Name} into the core",
                FixSafety.NeedsALook,
                Edits.After(core.Where, $"{context.Part.FreeName("hard-point")} insert {block.Name} at \"at each hole, let into the core\""));
    }
}
