using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Nothing in the bag lets the air move.</summary>
public sealed class NoBreather : Check
{
    private const string Breather = "breather";

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5006",
        Name = "no-breather",
        Severity = Severity.Warning,
        Title = "No breather",
        Reason = "The bag seals itself against the part round the port, and the far end stays under air.",
        Remedy = "Lay a breather under the bag film, as far as the port.",
        Source = "FAA AC 43.13-1B (1998) p. 3-7 and 3-8: breather under the bag, probes on the breather",
        Exceptions = """
            A bleeder or a flow medium moves air as well. Silent for an infusion, whose flow medium does it, and where nothing at all lies
            under the bag film, which is a finding of its own.
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
        if (part.Bag is not { Layers: [{ Class: not LayerClass.BagFilm }, ..] } bag
            || part.Process.Value is not (Process.Bagged or Process.Prepreg)
            || BagOrder.IsUpsideDown(part)
            || bag.Layers.Any(l => l.Class is LayerClass.Breather or LayerClass.Bleeder or LayerClass.FlowMedium))
        {
            return;
        }

        var film = bag.Layers.FirstOrDefault(l => l.Class == LayerClass.BagFilm);
        var last = bag.Layers[^1];
        context.Report(
            bag.Where,
            FormattableString.Invariant($"none of the {bag.Layers.Length} layers in the bag carries air to the port"),
            labels: [new FindingLabel((film ?? last).Where, film is null ? "outermost layer here" : "bag film here")],
            fixes:
            [
                Edits.Fix(
                    "Lay a breather under the bag film",
                    FixSafety.NeedsALook,
                    film is null ? Edits.After(last.Where, Breather) : Edits.Before(film.Where, Breather)),
            ]);
    }
}
