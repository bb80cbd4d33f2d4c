using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A part that carries load is mostly veil.</summary>
public sealed class VeilForStrength : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3121",
        Name = "veil-for-strength",
        Severity = Severity.Warning,
        Title = "Veil counted as strength",
        Reason = "A veil is a few grams of short fibre in much resin: it hides a weave and carries nothing.",
        Remedy = "Lay cloth for the load, and count the veil for its mass only.",
        Source = "common practice",
        Exceptions = """
            Speaks of parts for which `use structural` or `use flying` is said and more than a third of whose dry weight is veil.
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
              use structural
              plies {
                outer carbon-veil-8 random x6
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
              use structural
              plies {
                outer carbon-veil-8 random
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

    private const double Third = 1.0 / 3;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Use?.Value is not (PartUse.Structural or PartUse.Flying))
        {
            return;
        }

        var all = part.FullPlies().Sum(p => p.Material.Grams() * p.Count);
        var veils = part.FullPlies().Where(p => p.Material.Form == ReinforcementForm.Veil).ToList();
        var light = veils.Sum(p => p.Material.Grams() * p.Count);
        if (veils is not [var veil, ..] || all <= 0 || light <= Third * all || part.FullPlies().Any(p => p.Material.ArealWeight is null))
        {
            return;
        }

        // The ply that could not be read may be the cloth that carries the load.
        if (context.MissesAPly())
        {
            return;
        }

        context.Report(
            veil.MaterialWhere,
            $"{PlyFacts.Weight(light, veil.Material.ArealWeight?.Written)} of the {PlyFacts.Weight(all, veil.Material.ArealWeight?.Written)} of fibre is veil, and {part.Name} is {Say.Of(part.Use.Value)}",
            Grounds.Sure.And("use", part.Use),
            part.Use.Where is { } use ? [new FindingLabel(use, "carries load")] : []);
    }
}
