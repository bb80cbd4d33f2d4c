using Recipe.Semantics.Schema;
using Recipe.Text.Units;

namespace Recipe.Semantics.Tests.Editors;

/// <summary>The words that highlighting tells apart, by the names of their lists. They come from the schema, so that none is forgotten.</summary>
internal static class EditorWords
{
    // What the kinds of value read by themselves: shares, vacuum levels, mix ratios, and the clause that any line may end with.
    private static readonly string[] OfKinds = ["by", "weight", "volume", "of", "below", "ambient", "absolute", "source", "assumed", "like"];

    private static readonly WordSchema[] Inner =
        [.. RecipeSchema.Blocks.Where(b => b != RecipeSchema.File).SelectMany(b => b.Words)];

    private static readonly LinePattern[] Patterns =
    [
        .. RecipeSchema.Blocks.SelectMany(b => b.NameLine is { } name ? b.Words.Add(name) : b.Words)
            .SelectMany(w => w.Forms.Select(f => f.Line).Prepend(w.Line)),
    ];

    /// <summary>Top-level words that a name follows, with a block.</summary>
    public static IReadOnlyList<string> Declarations { get; } = Sorted(RecipeSchema.File.Words.Where(Names).Select(w => w.Word));

    /// <summary>The other top-level words.</summary>
    public static IReadOnlyList<string> Directives { get; } = Sorted(RecipeSchema.File.Words.Where(w => !Names(w)).Select(w => w.Word));

    /// <summary>Words inside blocks that open a block of their own.</summary>
    public static IReadOnlyList<string> Blocks { get; } = Sorted(Inner.Where(w => w.Block is not null).Select(w => w.Word));

    /// <summary>All other words that begin a line inside a block.</summary>
    public static IReadOnlyList<string> Lines { get; } = Sorted(Inner.Select(w => w.Word).Except(Blocks));

    /// <summary>Words inside a line that say what the next value is.</summary>
    public static IReadOnlyList<string> Clauses { get; } =
        Sorted(Patterns.SelectMany(p => p.Clauses.SelectMany(c => c.Words).Concat(p.Flags.SelectMany(f => f.Words))).Concat(OfKinds));

    /// <summary>Words to choose from.</summary>
    public static IReadOnlyList<string> Values { get; } = Sorted(
        Patterns.SelectMany(p => p.Arguments.Select(a => a.Kind).Concat(p.Clauses.Select(c => c.Kind))).SelectMany(Choices)
            .Concat(RecipeSchema.Blocks.SelectMany(b => b.Words).SelectMany(w => w.Forms.Select(f => f.Word)))
            .Append("random")
            .Except(Clauses)
            .Except(["yes", "no"]));

    /// <summary>Every spelling of a simple unit.</summary>
    public static IReadOnlyList<string> Units { get; } = Sorted(UnitTable.Spellings);

    /// <summary>The lists by the names that stand at their places in the files.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Lists { get; } = new Dictionary<string, IReadOnlyList<string>>
    {
        ["declarations"] = Declarations,
        ["directives"] = Directives,
        ["blocks"] = Blocks,
        ["lines"] = Lines,
        ["clauses"] = Clauses,
        ["values"] = Values,
        ["units"] = Units,
    };

    private static bool Names(WordSchema word) =>
        word.Block is not null && word.Line.Arguments is [{ Kind: NewNameKind or NameRefKind }, ..];

    private static IEnumerable<string> Choices(ValueKind kind) => kind switch
    {
        ChoiceKind choice => choice.Choices.Select(c => c.Word),
        QuantityKind { OrWord: { } word } => [word],
        _ => [],
    };

    // The longest first: an alternation of a regular expression takes the first that fits.
    private static string[] Sorted(IEnumerable<string> words) =>
        [.. words.Distinct(StringComparer.Ordinal).OrderByDescending(w => w.Length).ThenBy(w => w, StringComparer.Ordinal)];
}
