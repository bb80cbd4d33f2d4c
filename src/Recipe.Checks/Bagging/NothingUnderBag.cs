using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The bag film lies on the laminate.</summary>
public sealed class NothingUnderBag : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5005",
        Name = "nothing-under-bag",
        Severity = Severity.Warning,
        Title = "Nothing between laminate and bag film",
        Reason = "The film shuts the air off as soon as it touches, and every pleat prints into the part.",
        Remedy = "Put a peel ply and a breather under the bag film.",
        Source = "common practice",
        Exceptions = """
            Silent for prepreg under a debulking film, and when a caul lies under the bag.
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
        var part = context.Part;
        if (part.Bag is not { } bag || part.Process.Value == Process.Prepreg || BagOrder.IsUpsideDown(part) || !part.HasPlies())
        {
            return;
        }

        if (bag.Layers is [{ Class: not LayerClass.BagFilm }, ..] || (bag.Layers.Length == 0 && BlockText.HoldsWords(bag.Where)))
        {
            return;
        }

        context.Report(
            bag.Layers is [var caret, ..] ? caret.Where : bag.Where,
            "nothing lies between the laminate and the bag film",
            fixes: [Layers(part, bag)]);
    }

    private static Fix? Layers(Part part, Bag bag)
    {
        // A mesh ends before it reaches the vacuum.
        var (over, line) = part.Process.Value == Process.Infused ? ("flow-medium", "flow-medium smaller 40 mm") : ("breather", "breather");
        var edit = bag.Layers is [var film, ..]
            ? Edits.Before(film.Where, "peel-ply", line)
            : Edits.Last(bag.Where, "peel-ply", line, "bag-film");
        return Edits.Fix($"Put a peel-ply and a {over} under it", FixSafety.NeedsALook, edit);
    }
}
