using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A layer is listed outside the bag film.</summary>
public sealed class LayerOutsideBag : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5008",
        Name = "layer-outside-bag",
        Severity = Severity.Error,
        Title = "Layer outside the bag film",
        Reason = "What lies outside the film does nothing: under it the air has no way to the port, or the part no release.",
        Remedy = "List the bag film last: the list runs from the part outwards.",
        Source = "FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-7 and 3-8: the bag film lies over all other layers of the bag",
        Exceptions = """
            Silent for the layers between the two films of a double bag, for a caul, which may press from outside, and for a list that is
            upside down, which is a finding of its own.
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
              bag {
                peel-ply
                release-film perforated
                bag-film
                breather
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

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { } bag || BagOrder.IsUpsideDown(context.Part))
        {
            return;
        }

        var at = bag.Layers.LastIndexOf(l => l.Class == LayerClass.BagFilm);
        var outside = bag.Layers.Skip(at + 1).Where(l => l.Class != LayerClass.Caul).ToList();
        if (at < 0 || outside is not [var first, ..])
        {
            return;
        }

        var film = bag.Layers[at];
        context.Report(
            first.Where,
            $"{Say.Of(first.Class)} {first.Material.Name} is listed outside the bag film{Say.More(outside.Count - 1)}",
            labels: [new FindingLabel(film.Where, "bag film here")],
            fixes: [FilmLast(bag, at)]);
    }

    private static Fix FilmLast(Bag bag, int film)
    {
        var lines = bag.Layers.Skip(film).Select(l => Edits.WholeLine(l.Where)).ToList();
        return new Fix(
            "List the bag film last",
            FixSafety.NeedsALook,
            [.. lines.Select((line, i) => Edits.Replace(line, lines[(i + 1) % lines.Count].Text))]);
    }
}
