using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A vacuum port sits on the bare flange, away from the breather.</summary>
public sealed class PortOffBreather : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5114",
        Name = "port-off-breather",
        Severity = Severity.Error,
        Title = "Port away from the breather",
        Reason = "The film closes on the flange round the port, and the far end of the bag is cut off from the pump.",
        Remedy = "Run a strip of breather, 50 mm wide, from the part to the port.",
        Source = "FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-8: probes on the breather; common practice",
        Exceptions = """
            Speaks only where `sits flange` is written, of a bag with a breather. Silent for infusion, whose port sits on a line of its own,
            and where the line speaks of a tail or strip.
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
                breather
                bag-film
                port sits flange at "left end"
                catch-pot
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
                port sits breather at "left end"
                catch-pot
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
        if (context.Part is not { Process.Value: Process.Bagged or Process.Prepreg, Bag: { Ports.IsEmpty: false } bag }
            || bag.Layers.FirstOrDefault(l => l.Class is LayerClass.Breather or LayerClass.Bleeder) is not { } felt
            || bag.Ports.Any(p => p.Sits != PortSeat.Flange || TradeWords.Says(p.At, "breather", "tail", "strip", "felt", "wick", "tow", "spiral", "string", "pad")))
        {
            return;
        }

        var port = bag.Ports[0];
        context.Report(
            port.Where,
            $"{port.Material.Name} sits on the bare flange, and no breather runs to it",
            labels: [new FindingLabel(felt.Where, $"{Say.Of(felt.Class)} here")],
            fixes: [PortSeats.Move(port.Where, "flange", "breather")]);
    }
}
