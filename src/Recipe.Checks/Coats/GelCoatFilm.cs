using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The gel coat is thinner or thicker than it should lie.</summary>
public sealed class GelCoatFilm : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4301",
        Name = "gel-coat-film",
        Severity = Severity.Warning,
        Title = "Gel coat too thin or too thick",
        Reason = "A thin film does not cure and wrinkles under the laminate; a thick one cracks.",
        Remedy = "Lay 0.4 to 0.6 mm, which is 500 to 700 g/m2.",
        Source = "common practice (0.4 to 0.8 mm)",
        Exceptions = """
            Speaks only of styrenated coats. Silent where neither weight nor density is known.
            """,
        BadExample = """
            gel-coat own-gel-coat {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g
            }

            resin own-polyester {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
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
              process hand
              resin own-polyester
              coat own-gel-coat 250 g/m2 wait 90 min
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            gel-coat own-gel-coat {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g
            }

            resin own-polyester {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
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
              process hand
              resin own-polyester
              coat own-gel-coat 600 g/m2 wait 90 min
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Length Thin = Length.FromMillimeters(0.4);
    private static readonly Length Thick = Length.FromMillimeters(0.8);

    // A roller does not lay it more evenly than that.
    private const double Slack = 0.05;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var coat in context.Part.Coats.Where(c => c.Material.IsStyrenated()))
        {
            var density = coat.Material.ResinDensity ?? coat.Material.Density ?? coat.Material.CuredDensity;
            if (coat.ArealWeight is not { } weight || density is not { Value.KilogramsPerCubicMeter: > 0 })
            {
                context.NotChecked($"no {(coat.ArealWeight is null ? "weight" : "density")} is known for {coat.Material.Name}", coat.Where);
                continue;
            }

            var film = Length.FromMeters(weight.Value.KilogramsPerSquareMeter / density.Value.KilogramsPerCubicMeter);
            if (film >= Thin * (1 - Slack) && film <= Thick * (1 + Slack))
            {
                continue;
            }

            var limit = film < Thin ? Thin : Thick;
            context.Report(
                weight.Where ?? coat.Where,
                $"{Say.Of(weight)} of {coat.Material.Name} lie {Say.Of(Length.FromMillimeters(Math.Round(film.Millimeters, 2)))} thick; {Say.Of(limit)} is the {(film < Thin ? "least" : "most")}",
                Grounds.Sure.And($"weight of {coat.Material.Name}", weight).And($"density of {coat.Material.Name}", density),
                fixes: [Edits.Fix("Lay 600 g/m2", FixSafety.NeedsALook, FigureEdits.Rewrite(weight, "600 g/m2"))]);
            return;
        }
    }
}
