using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Carbon touches a metal that it eats when damp.</summary>
public sealed class CarbonOnMetal : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3111",
        Name = "carbon-on-metal",
        Severity = Severity.Warning,
        Title = "Carbon against light metal or plain steel",
        Reason = "Carbon and such a metal are a battery as soon as they are damp: the metal turns to white powder or rust and lifts the laminate.",
        Remedy = "Lay glass between them, or take stainless steel or titanium.",
        Source = "common practice (galvanic corrosion of a less noble metal against carbon)",
        Exceptions = """
            Speaks of inserts of aluminium, magnesium, zinc and plain steel whose nearest ply on either side is carbon. Stainless steel,
            titanium and bronze are let pass.
            """,
        BadExample = """
            insert alloy-plate {
              mass 12 g
              stuff aluminium
              source "weighed"
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
              resin slow-laminating-epoxy
              plies {
                outer carbon-twill-200 0/90
                plate insert alloy-plate at "under the hinge"
                inner carbon-twill-200 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            insert alloy-plate {
              mass 12 g
              stuff aluminium
              source "weighed"
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
              resin slow-laminating-epoxy
              plies {
                outer carbon-twill-200 0/90
                under glass-twill-163 0/90
                plate insert alloy-plate at "under the hinge"
                over glass-twill-163 0/90
                inner carbon-twill-200 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly string[] Eaten = ["aluminium", "aluminum", "magnesium", "zinc", "galvanised", "galvanized", "steel", "mild-steel", "iron"];

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var stack = context.Part.Stack;
        for (var i = 0; i < stack.Length; i++)
        {
            if (stack[i] is not InsertItem { Material: { Stuff: { } stuff } metal } insert || !Eaten.Contains(stuff, StringComparer.OrdinalIgnoreCase))
            {
                continue;
            }

            var below = stack.Take(i).OfType<PlyItem>().LastOrDefault();
            var above = stack.Skip(i + 1).OfType<PlyItem>().FirstOrDefault();
            if ((IsCarbon(below) ? below : IsCarbon(above) ? above : null) is not { } carbon)
            {
                continue;
            }

            context.Report(
                insert.MaterialWhere,
                $"{insert.Name}, {metal.Name} of {stuff}, lies against {carbon.Name} of {carbon.Material.Name}",
                labels: [new FindingLabel(carbon.Where, "carbon here")],
                fixes: [Apart(context, insert, IsCarbon(below), IsCarbon(above))]);
            return;
        }
    }

    private static bool IsCarbon(PlyItem? ply) => ply is { Material: { Form: not ReinforcementForm.Veil } cloth } && cloth.IsOf("carbon");

    private static Fix? Apart(CheckContext context, InsertItem insert, bool isBelow, bool isAbove)
    {
        if (context.Model.LightGlass() is not { } glass || context.Part.VariantOf is not null)
        {
            return null;
        }

        var edits = new List<TextEdit>();
        if (isBelow)
        {
            edits.Add(Edits.Before(insert.Where, $"{context.Part.FreeName("under-" + insert.Name)} {glass.Name} 0/90"));
        }

        if (isAbove)
        {
            edits.Add(Edits.After(insert.Where, $"{context.Part.FreeName("over-" + insert.Name)} {glass.Name} 0/90"));
        }

        return new Fix($"Lay {glass.Name} between them", FixSafety.NeedsALook, [.. edits]);
    }
}
