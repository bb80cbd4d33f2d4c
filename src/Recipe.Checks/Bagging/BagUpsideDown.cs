using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The bag is listed from the bag film inwards.</summary>
public sealed class BagUpsideDown : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5001",
        Name = "bag-upside-down",
        Severity = Severity.Error,
        Title = "Bag listed upside down",
        Reason = "Laid as listed, felt or film goes on the wet laminate and cures into it.",
        Remedy = "List the layers from the part outwards: what touches the laminate stands first.",
        Source =
            "FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-6 to 3-8, and US Army TM 1-1500-204-23-11 (page files 0170 to 0175): "
            + "the order of a bag",
        Exceptions = """
            Speaks only when the list is wrong as written and right the other way round; the other findings about the order are then kept
            back, since they have the same cause.
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
                breather
                release-film perforated
                peel-ply
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
        if (!BagOrder.IsUpsideDown(context.Part) || context.Part.Bag is not { } bag)
        {
            return;
        }

        var first = bag.Layers[0];
        var last = bag.Layers[^1];
        context.Report(
            bag.Where,
            $"{Say.Of(first.Class)} is listed next to the laminate and {Say.Of(last.Class)} outermost; "
            + $"the {bag.Layers.Length} lines are right the other way round",
            labels: [new FindingLabel(first.Where, "laid on the laminate"), new FindingLabel(last.Where, "laid last")],
            fixes: [Reverse(bag)]);
    }

    private static Fix Reverse(Bag bag)
    {
        var lines = bag.Layers.Select(l => Edits.WholeLine(l.Where)).ToList();
        return new Fix(
            "List the bag the other way round",
            FixSafety.NeedsALook,
            [.. lines.Select((line, i) => Edits.Replace(line, lines[^(i + 1)].Text))]);
    }
}
