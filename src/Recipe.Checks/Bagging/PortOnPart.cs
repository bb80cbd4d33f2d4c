using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A vacuum port sits on the part.</summary>
public sealed class PortOnPart : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5113",
        Name = "port-on-part",
        Severity = Severity.Warning,
        Title = "Port on the part",
        Reason = "The port prints its ring into the face, and the resin around it is drawn out more than anywhere else.",
        Remedy = "Put it on the flange, on a strip of breather that runs to the part.",
        Source = "FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-8: probes on the breather, never on the patch; US Army TM 1-1500-204-23-11 (page file 0175)",
        Exceptions = """
            Speaks only where `sits part` is written. Silent where the line says that a thick pad lies under it.
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
                port sits part at "left end"
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
        var seated = context.Part.Bag?.Ports.FirstOrDefault(p => p.Sits == PortSeat.Part && !TradeWords.Says(p.At, "pad", "thick", "stack"));
        if (seated is null)
        {
            return;
        }

        var words = context.Part.Process.Value == Process.Infused ? "flange" : "breather";
        context.Report(
            seated.Where,
            $"{seated.Material.Name} sits on the part, inside the trim line, and prints into it",
            fixes: [PortSeats.Move(seated.Where, "part", words)]);
    }
}
