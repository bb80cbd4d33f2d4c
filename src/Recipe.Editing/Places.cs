using System.Collections.Immutable;
using Recipe.Semantics.Schema;
using Recipe.Syntax;

namespace Recipe.Editing;

/// <summary>An entry of the text with what the language knows of it.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Block">The block it stands in.</param>
/// <param name="Word">Its word, or the pattern of a line that begins with a name; null when the block knows neither.</param>
/// <param name="Parent">The entry whose block it stands in, or null at the top.</param>
internal sealed record EntryPlace(EntrySyntax Entry, BlockSchema Block, WordSchema? Word, EntryPlace? Parent)
{
    /// <summary>Whether the line begins with a name instead of a word.</summary>
    public bool IsNameLine => Word is not null && ReferenceEquals(Word, Block.NameLine);

    /// <summary>The entry and those it stands in, innermost first.</summary>
    public IEnumerable<EntryPlace> Chain()
    {
        for (var place = this; place is not null; place = place.Parent)
        {
            yield return place;
        }
    }
}

/// <summary>Walks a tree along the words of the language.</summary>
internal static class Places
{
    /// <summary>Every entry, in the order of the text.</summary>
    public static IEnumerable<EntryPlace> All(SyntaxTree tree) => In(tree.Root.Statements, RecipeSchema.File, null);

    /// <summary>The innermost entry that an offset lies in, or null outside all of them.</summary>
    public static EntryPlace? EntryAt(SyntaxTree tree, int offset)
    {
        EntryPlace? found = null;
        foreach (var place in All(tree))
        {
            if (place.Entry.Span.Touches(offset))
            {
                found = place;
            }
        }

        return found;
    }

    /// <summary>The block whose lines an offset is among, with the entry that carries it; the file and null at the top.</summary>
    public static (BlockSchema? Block, EntryPlace? Owner, ImmutableArray<StatementSyntax> Lines) BlockAt(SyntaxTree tree, int offset)
    {
        (BlockSchema? Block, EntryPlace? Owner, ImmutableArray<StatementSyntax> Lines) found = (RecipeSchema.File, null, tree.Root.Statements);
        foreach (var place in All(tree))
        {
            if (place.Entry.Block is { } block && offset >= block.OpenBrace.End && (block.CloseBrace is not { } close || offset <= close.Start) && offset <= EndOf(block, tree))
            {
                found = (place.Word?.Block, place, block.Statements);
            }
        }

        return found;
    }

    private static int EndOf(BlockSyntax block, SyntaxTree tree) => block.CloseBrace?.Start ?? tree.Source.Length;

    private static IEnumerable<EntryPlace> In(ImmutableArray<StatementSyntax> statements, BlockSchema? schema, EntryPlace? parent)
    {
        foreach (var statement in statements)
        {
            var entry = statement switch
            {
                EntrySyntax whole => whole,
                ErrorSyntax { Entry: { } half } => half,
                _ => null,
            };
            if (entry is null)
            {
                continue;
            }

            var block = statement is ErrorSyntax { Block: { } kept } ? kept : entry.Block;
            if (block is not null && entry.Block is null)
            {
                entry = entry with { Block = block, Span = statement.Span };
            }

            var place = new EntryPlace(entry, schema ?? Unknown, WordOf(entry, schema), parent);
            yield return place;
            if (block is not null)
            {
                foreach (var inner in In(block.Statements, place.Word?.Block, place))
                {
                    yield return inner;
                }
            }
        }
    }

    private static BlockSchema Unknown { get; } = new("unknown", "A block that the language does not know.");

    private static WordSchema? WordOf(EntrySyntax entry, BlockSchema? schema) =>
        schema is null ? null : schema.Find(entry.Head.Text) ?? schema.FindRegional(entry.Head.Text) ?? schema.NameLine;
}
