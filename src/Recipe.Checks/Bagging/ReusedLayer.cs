using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A layer of the bag that is made for one use is used again.</summary>
public sealed class ReusedLayer : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5117",
        Name = "reused-layer",
        Severity = Severity.Advice,
        Title = "Single-use layer used again",
        Reason = "Used film has pinholes and creases, used peel ply and bleeder are stiff with resin: the bag leaks or prints.",
        Remedy = "Take a new one; what is saved is less than one part.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0045): materials of the bag are used once; common practice",
        Exceptions = """
            Silent for cauls, silicone bags and dry breather, which are used many times.
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
                bag-film reused
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
                breather reused
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
    public override void Examine(CheckContext context)
    {
        var used = context.Part.Bag?.Layers
            .Where(l => l.Reused
                && l.Class is not (LayerClass.Caul or LayerClass.Breather)
                && !TradeWords.Says($"{l.Material.Name} {l.Material.Stuff}".Replace('-', ' '), "silicone", "rubber", "latex", "reusable"))
            .ToList();
        if (used is not [var first, ..])
        {
            return;
        }

        context.Report(
            first.Where,
            $"{first.Material.Name} is used again, and a {Say.Of(first.Class)} is made for one bag{Say.More(used.Count - 1)}",
            fixes: [New(used)]);
    }

    private static Fix? New(List<BagLayer> used)
    {
        // With the blank before the word.
        var edits = used
            .Select(l => LayerLines.Word(l.Where, "reused"))
            .OfType<SourceSpan>()
            .Select(word => Edits.Replace(new SourceSpan(word.Source, TextSpan.FromBounds(word.Span.Start - 1, word.Span.End)), ""))
            .ToList();
        return edits.Count == 0 ? null : new Fix("Take new ones", FixSafety.NeedsALook, [.. edits]);
    }
}
