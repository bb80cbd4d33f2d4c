using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A polyethylene or polypropylene layer without a heat limit in a warm cure.</summary>
public sealed class PolyethyleneInOven : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5106",
        Name = "polyethylene-in-oven",
        Severity = Severity.Error,
        Title = "Polyethylene in the oven",
        Reason = "Polyethylene and polypropylene shrink and let go long before they melt, and the bag opens while the resin is thin.",
        Remedy = "Take nylon or fluoropolymer there, or write the heat limit from its data sheet.",
        Source = "common practice: polyethylene to about 80 degC (from memory of the trade)",
        Exceptions = """
            A warning between 60 and 80 degC. Silent where the material has a `heat-limit`: that is what decides then.
            """,
        BadExample = """
            bag-film our-builders-film { width 200 cm; stuff polyethylene; source "measured" }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                breather
                our-builders-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                hold 85 degC for 6 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                hold 85 degC for 6 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly Temperature Soft = Temperature.FromDegreesCelsius(60);
    private static readonly Temperature Gone = Temperature.FromDegreesCelsius(80);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { } bag || context.Plan.Cure is not { } cure)
        {
            return;
        }

        var soft = bag.Layers.Where(l => BagStuff.IsSoftPlastic(l.Material) && l.Material.HeatLimit is null).ToList();
        var hot = cure.Steps.Where(s => s.Bagged).MaxBy(s => s.To);
        if (soft.Count == 0 || hot is null || hot.To <= Soft)
        {
            return;
        }

        var outermost = soft[^1];
        context.Report(
            outermost.Where,
            $"{outermost.Material.Name} is {outermost.Material.Stuff} and has no heat limit; it is in the bag at {Say.Of(hot.To, hot.Step.Temperature?.Written)}, and such films give way from {Say.Of(Soft)} on{Say.More(soft.Count - 1)}",
            labels: [new FindingLabel(hot.Step.Where, "hottest here")],
            fixes: [Edits.Fix("Take the usual one of its kind", FixSafety.NeedsALook, soft.Count > 1 ? null : LayerLines.Take(outermost.Where, outermost.Material.Name, Say.Of(outermost.Class)))],
            severity: hot.To > Gone ? Severity.Error : Severity.Warning);
    }
}
