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
            Speaks of inserts of aluminium, magnesium, zinc and plain steel whose nearest ply on either side is carbon, with no core between. Stainless
            steel, titanium and bronze are let pass.
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

    private static readonly string[] Eaten = ["aluminium", "aluminum", "magnesium", "zinc", "galvanised", "galvanized", "steel", "iron"];
    private static readonly string[] Noble = ["stainless", "bronze"];

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var stack = context.Part.Stack;
        var touching = Enumerable.Range(0, stack.Length)
            .Where(i => stack[i] is InsertItem { Material.Stuff: { } stuff } && IsEaten(stuff))
            .Select(i => new Contact((InsertItem)stack[i], Ply(stack.Take(i).Reverse()), Ply(stack.Skip(i + 1)), Run(stack, i)))
            .Where(contact => contact.Carbon is not null)
            .ToList();
        if (touching.Count == 0)
        {
            return;
        }

        var first = touching[0];
        context.Report(
            first.Insert.MaterialWhere,
            $"{first.Insert.Name}, {first.Insert.Material.Name} of {first.Insert.Material.Stuff}, lies against {first.Carbon!.Name} of {first.Carbon.Material.Name}",
            labels: [new FindingLabel(first.Carbon.Where, "carbon here"), .. touching.Skip(1).Select(other => new FindingLabel(other.Insert.MaterialWhere, "and this one"))],
            fixes: [Apart(context, touching)]);
    }

    /// <summary>The ply that touches: what lies beyond a core touches nothing, and metal beside metal is looked past.</summary>
    private static PlyItem? Ply(IEnumerable<StackItem> outwards) => outwards.FirstOrDefault(item => item is not InsertItem) as PlyItem;

    /// <summary>The inserts that follow one on another in the list: what is laid under the first and over the last parts them all from the plies.</summary>
    private static (InsertItem First, InsertItem Last) Run(IReadOnlyList<StackItem> stack, int at)
    {
        var (first, last) = (at, at);
        while (first > 0 && stack[first - 1] is InsertItem)
        {
            first--;
        }

        while (last < stack.Count - 1 && stack[last + 1] is InsertItem)
        {
            last++;
        }

        return ((InsertItem)stack[first], (InsertItem)stack[last]);
    }

    // One word or several, as in galvanised-steel.
    private static bool IsEaten(string stuff) => stuff.Split('-') is var words
        && words.Any(word => Eaten.Contains(word, StringComparer.OrdinalIgnoreCase)) && !words.Any(word => Noble.Contains(word, StringComparer.OrdinalIgnoreCase));

    private static bool IsCarbon(PlyItem? ply) => ply is { Material: { Form: not ReinforcementForm.Veil } cloth } && cloth.IsOf("carbon");

    private static Fix? Apart(CheckContext context, List<Contact> touching)
    {
        // Where a line says what it lies on, the place of a new line in the text is not its place in the stack.
        var stack = context.Part.Stack;
        if (context.Model.LightGlass() is not { } glass || context.Part.VariantOf is not null
            || stack.Any(item => item.After is { } below && (item is InsertItem || stack.Any(other => other is InsertItem && other.Name == below))))
        {
            return null;
        }

        var edits = new List<TextEdit>();
        foreach (var run in touching.DistinctBy(contact => contact.Run))
        {
            if (IsCarbon(run.Below))
            {
                edits.Add(Edits.Before(run.Run.First.Where, $"{context.Part.FreeName("under-" + run.Run.First.Name)} {glass.Name} 0/90"));
            }

            if (IsCarbon(run.Above))
            {
                edits.Add(Edits.After(run.Run.Last.Where, $"{context.Part.FreeName("over-" + run.Run.Last.Name)} {glass.Name} 0/90"));
            }
        }

        return new Fix($"Lay {glass.Name} between them", FixSafety.NeedsALook, [.. edits]);
    }

    /// <summary>An insert, the plies nearest to it on either side, and the inserts beside it in the list.</summary>
    private sealed record Contact(InsertItem Insert, PlyItem? Below, PlyItem? Above, (InsertItem First, InsertItem Last) Run)
    {
        public PlyItem? Carbon => IsCarbon(Below) ? Below : IsCarbon(Above) ? Above : null;
    }
}
