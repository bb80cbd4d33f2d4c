using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Nylon bag film over a phenolic resin.</summary>
public sealed class NylonWithPhenolic : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5108",
        Name = "nylon-with-phenolic",
        Severity = Severity.Warning,
        Title = "Nylon film with phenolic resin",
        Reason = "What a phenolic resin gives off as it cures attacks nylon, and the bag opens in the hot part of the cure.",
        Remedy = "Take a bag film of polyester or fluoropolymer.",
        Source = "common practice (from memory of the trade): no nylon with phenolic resin",
        BadExample = """
            resin our-phenolic like slow-laminating-epoxy { chemistry phenolic; source "data sheet" }
            bag-film our-polyester-film { width 150 cm; stuff polyester; heat-limit 200 degC; source "data sheet" }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin our-phenolic
              plies {
                outer glass-twill-163 0/90
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
            resin our-phenolic like slow-laminating-epoxy { chemistry phenolic; source "data sheet" }
            bag-film our-polyester-film { width 150 cm; stuff polyester; heat-limit 200 degC; source "data sheet" }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin our-phenolic
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                our-polyester-film
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Resin is not { Chemistry: Chemistry.Phenolic } resin
            || context.Part.Bag?.Layers.FirstOrDefault(l => l.Class == LayerClass.BagFilm && BagStuff.IsNylon(l.Material)) is not { } film)
        {
            return;
        }

        context.Report(
            film.Where,
            $"{film.Material.Name} is nylon and {resin.Name} is phenolic, which attacks it",
            labels: context.Part.ResinWhere is { } mixed ? [new FindingLabel(mixed, "resin here")] : [],
            fixes: [Other(context, film)]);
    }

    private static Fix? Other(CheckContext context, BagLayer film)
    {
        var peak = context.Plan.Cure?.Peak.Value;
        var other = context.Model.Materials.Values.OfType<Consumable>()
            .Where(m => m is { Class: LayerClass.BagFilm, Stuff: not null } && !BagStuff.IsNylon(m) && !BagStuff.IsSoftPlastic(m) && (peak is null || m.HeatLimit?.Value >= peak))
            .OrderBy(m => m.FromBook)
            .ThenByDescending(m => m.HeatLimit?.Value)
            .ThenBy(m => m.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return other is null ? null : Edits.Fix($"Take {other.Name}", FixSafety.NeedsALook, LayerLines.Take(film.Where, film.Material.Name, other.Name));
    }
}
