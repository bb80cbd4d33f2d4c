using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What a file holds, as a tree of names.</summary>
public static class Outline
{
    private static readonly string[] Shops = ["shop", "stock", "prices", "build", "findings"];
    private static readonly string[] Steps = ["bag", "cure", "finish", "mix", "release"];

    /// <summary>The outline of a file, in the order of the text.</summary>
    public static ImmutableArray<Symbol> Of(CompiledFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var places = Places.All(file.Tree).ToLookup(place => place.Parent?.Entry, ReferenceEqualityComparer.Instance as IEqualityComparer<EntrySyntax?>);
        var lets = file.Tree.Root.Statements.OfType<LetSyntax>()
            .Select(let => new Symbol(let.Name.Text, file.Source.Slice(let.Value.Span), SymbolKind.Value, let.Span, let.Name.Span, []));
        return [.. At(null).Concat(lets).OrderBy(symbol => symbol.Span.Start)];

        IEnumerable<Symbol> At(EntrySyntax? owner) => places[owner].Select(place => Make(place)).OfType<Symbol>();

        Symbol? Make(EntryPlace place)
        {
            var entry = place.Entry;
            var children = At(entry).ToImmutableArray();
            if (place.Parent is null)
            {
                var name = entry.Values is [WordSyntax first, ..] ? first : null;
                return entry.Block is null
                    ? null
                    : new Symbol(name?.Text ?? entry.Head.Text, entry.Head.Text, KindOf(entry.Head.Text), entry.Span, (name ?? entry.Head).Span, children);
            }

            if (place.Block.Name is "plies" or "plies of a variant")
            {
                return new Symbol(entry.Head.Text, Rest(file.Source, entry), SymbolKind.Ply, entry.Span, entry.Head.Span, []);
            }

            if (Steps.Contains(place.Block.Name))
            {
                return new Symbol(entry.Head.Text, Rest(file.Source, entry), SymbolKind.Step, entry.Span, entry.Head.Span, []);
            }

            return entry.Block is null ? null : new Symbol(entry.Head.Text, "", SymbolKind.Block, entry.Span, entry.Head.Span, children);
        }
    }

    private static string Rest(SourceText source, EntrySyntax entry) =>
        entry.Values.Length == 0 ? "" : source.Slice(TextSpan.FromBounds(entry.Values[0].Span.Start, entry.Values[^1].Span.End));

    private static SymbolKind KindOf(string head) => head switch
    {
        "part" => SymbolKind.Part,
        "variant" or "explore" => SymbolKind.Variant,
        "mould" or "pattern" => SymbolKind.Mould,
        _ when Shops.Contains(head) => SymbolKind.Shop,
        _ => SymbolKind.Material,
    };
}
