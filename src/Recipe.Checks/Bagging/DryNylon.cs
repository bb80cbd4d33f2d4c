using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Nylon bag film in very dry air.</summary>
public sealed class DryNylon : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5107",
        Name = "dry-nylon",
        Severity = Severity.Advice,
        Title = "Nylon film dries out",
        Reason = "Nylon holds water, and without it the film turns brittle, cracks at its folds and leaks.",
        Remedy = "Keep the roll wrapped until it is cut, and damp the air or the film before it is folded.",
        Source = "common practice; 35 % from memory of the trade",
        Exceptions = """
            Silent where no humidity is given.
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
              wet-out {
                room 20 degC
                humidity 25 %
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
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 20 degC
                humidity 45 %
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

    private const double Dry = 0.35;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var humidity = context.Part.WetOut?.Humidity ?? context.Plan.Shop?.Humidity;
        if (humidity is null || humidity.Value >= Dry
            || context.Part.Bag?.Layers.FirstOrDefault(l => l.Class == LayerClass.BagFilm) is not { } film
            || !BagStuff.IsNylon(film.Material))
        {
            return;
        }

        context.Report(
            film.Where,
            $"{film.Material.Name} is nylon and the air has {Say.Of(humidity)} humidity; below {Say.Percent(Dry)} it turns brittle",
            Grounds.Sure.And("humidity", humidity),
            humidity.Where is { } said ? [new FindingLabel(said, "humidity here")] : []);
    }
}
