using System.Collections.Immutable;

namespace Recipe.Semantics.Schema;

/// <summary>Short ways to write the tables of words.</summary>
internal static class Define
{
    /// <summary>Key of the one value of a line that has one.</summary>
    public const string Value = "value";

    public static WordSchema Word(string word, string doc, string example, params ReadOnlySpan<LinePart> parts) =>
        new(word, doc, new LinePattern(parts), example);

    /// <summary>A line with one value.</summary>
    public static WordSchema Word(string word, string doc, string example, ValueKind kind) =>
        new(word, doc, new LinePattern(Arg(kind)), example);

    public static WordSchema Repeatable(this WordSchema word) => word with { IsRepeatable = true };

    public static WordSchema Also(this WordSchema word, params ImmutableArray<string> regional) => word with { Regional = regional };

    public static WordSchema Otherwise(this WordSchema word, string text) => word with { Default = text };

    public static WordSchema WithBlock(this WordSchema word, BlockSchema block) => word with { Block = block, NeedsBlock = true };

    public static ArgumentPattern Arg(ValueKind kind) => new(Value, kind);

    public static ArgumentPattern Arg(string name, ValueKind kind) => new(name, kind);

    public static ArgumentPattern Optional(string name, ValueKind kind) => new(name, kind) { IsOptional = true };

    public static ClausePattern Clause(string phrase, ValueKind kind, string doc) => new(phrase, kind, doc);

    public static ClausePattern Needs(string phrase, ValueKind kind, string doc) => new(phrase, kind, doc) { IsRequired = true };

    public static FlagPattern Flag(string phrase, string doc) => new(phrase, doc);

    public static CountPattern Times(string doc) => new(doc);
}
