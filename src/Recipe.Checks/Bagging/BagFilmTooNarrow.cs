using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The bag is wider than its roll of film.</summary>
public sealed class BagFilmTooNarrow : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5104",
        Name = "bag-film-too-narrow",
        Severity = Severity.Advice,
        Title = "Bag wider than its film",
        Reason = "Two widths of film then have to be joined with sealant tape, and a join that nobody planned is made in a hurry and leaks.",
        Remedy = "Take a wider roll or tubular film, or plan the join and another run of tape for it.",
        Source = "common practice: film as wide as the surface is over its hollows, and an edge for the tape all round",
        Exceptions = """
            Silent where the bag is an envelope, where two sheets are listed, and where the width of the roll is not known.
            """,
        BadExample = """
            bag-film our-narrow-film { default no; width 50 cm; heat-limit 120 degC; stuff nylon; source "data sheet" }

            mould tray-mould {
              surface flat 800 mm x 600 mm
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
                our-narrow-film
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
            bag-film our-wide-film { default no; width 200 cm; heat-limit 120 degC; stuff nylon; source "data sheet" }

            mould tray-mould {
              surface flat 800 mm x 600 mm
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
                our-wide-film
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
        if (context.Part.Bag is not { IsEnvelope: false }
            || context.Plan.Bag?.Layers.FirstOrDefault(l => l.Layer.Class == LayerClass.BagFilm) is not { Layer: { Count: 1, Material.Width: { } roll } film } sheet)
        {
            return;
        }

        // The roll may run either way.
        var across = sheet.Length.Value < sheet.Width.Value ? sheet.Length : sheet.Width;
        if (roll.Value <= Length.Zero || across.Value <= roll.Value)
        {
            return;
        }

        context.Report(
            film.Where,
            $"the bag wants a sheet of film {Say.About(across.Value)} wide; the roll of {film.Material.Name} is {Say.Of(roll)} wide",
            Grounds.Sure.And<Length>(across).And($"width of {film.Material.Name}", roll),
            fixes: [Wider(context, film, across.Value)]);
    }

    private static Fix? Wider(CheckContext context, BagLayer film, Length wanted)
    {
        var heat = film.Material.HeatLimit?.Value ?? Temperature.Zero;
        var wide = context.Model.Materials.Values.OfType<Consumable>()
            .Where(m => m.Class == LayerClass.BagFilm && m.Width?.Value >= wanted && m.HeatLimit?.Value >= heat)
            .OrderBy(m => m.Stuff != film.Material.Stuff)
            .ThenBy(m => m.FromBook)
            .ThenBy(m => m.HeatLimit!.Value)
            .ThenBy(m => m.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return wide is null ? null : Edits.Fix($"Take {wide.Name}", FixSafety.NeedsALook, LayerLines.Take(film.Where, film.Material.Name, wide.Name));
    }
}
