using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A hose without braid or wire is warmed under vacuum.</summary>
public sealed class HoseCollapses : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5116",
        Name = "hose-collapses",
        Severity = Severity.Warning,
        Title = "Hose collapses when it is warm",
        Reason = "A plain hose goes soft in the warm, is sucked flat, and the bag is then cut off from pump and gauge.",
        Remedy = "Take a hose with braid or wire, or keep it out of the heat.",
        Source = "common practice; softening above 40 degC from memory of the trade",
        Exceptions = """
            Speaks of hoses that say `reinforced no`, warmer than 40 degC while the bag is on. Silent for hoses of silicone, fluoropolymer and
            metal.
            """,
        BadExample = """
            hose our-clear-hose { inner-diameter 8 mm; heat-limit 70 degC; reinforced no; source "measured" }

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
                release-film perforated
                breather
                bag-film
                our-clear-hose
                catch-pot
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                ramp 10 degC/h to 50 degC under vacuum
                hold 50 degC for 16 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            hose our-clear-hose { inner-diameter 8 mm; heat-limit 70 degC; reinforced yes; source "measured" }

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
                release-film perforated
                breather
                bag-film
                our-clear-hose
                catch-pot
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                ramp 10 degC/h to 50 degC under vacuum
                hold 50 degC for 16 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(40);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { Hose: { Material.Reinforced: false } hose }
            || TradeWords.Says($"{hose.Material.Name} {hose.Material.Title}".Replace('-', ' '), "silicone", "ptfe", "fluoropolymer", "steel", "metal", "copper", "nylon")
            || context.Plan.Cure?.Steps.Where(s => s.Bagged).MaxBy(s => s.To) is not { } hot
            || hot.To <= Warm
            || hot.To > hose.Material.HeatLimit?.Value)
        {
            return;
        }

        context.Report(
            hose.Where,
            $"{hose.Material.Name} has neither braid nor wire and gets {Say.Of(hot.To, hot.Step.Temperature?.Written)} under vacuum; a plain hose goes soft above {Say.Of(Warm)}",
            labels: [new FindingLabel(hot.Step.Where, "warmest here")],
            fixes: [Reinforced(context, hose, hot.To)]);
    }

    private static Fix? Reinforced(CheckContext context, Placed<Fitting> hose, Temperature hot)
    {
        var other = context.Model.Materials.Values.OfType<Fitting>()
            .Where(f => f.Kind == FittingKind.Hose && f.Reinforced != false && f.HeatLimit?.Value >= hot)
            .OrderBy(f => f.Reinforced != true)
            .ThenBy(f => f.FromBook)
            .ThenByDescending(f => f.HeatLimit!.Value)
            .ThenBy(f => f.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return other is null ? null : Edits.Fix($"Take {other.Name}", FixSafety.NeedsALook, LayerLines.Take(hose.Where, hose.Material.Name, other.Name));
    }
}
