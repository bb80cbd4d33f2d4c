using System.Collections.Immutable;

namespace Recipe.Documents.Layout;

/// <summary>How a run of text stands out.</summary>
internal enum RunStyle
{
    Plain,
    Strong,

    /// <summary>Something to write in a recipe, letter by letter.</summary>
    Code,
}

/// <summary>Text of one style.</summary>
internal readonly record struct Run(string Text, RunStyle Style);

/// <summary>
/// A line of text in runs. A no-break space (U+00A0) between a number and its unit keeps the two on one line; writers of plain
/// formats turn it into an ordinary space.
/// </summary>
internal readonly record struct Phrase(ImmutableArray<Run> Runs)
{
    /// <summary>Nothing.</summary>
    public static Phrase Empty => new([]);

    /// <summary>Whether there is nothing to read.</summary>
    public bool IsEmpty => Runs.IsDefaultOrEmpty || Runs.All(run => run.Text.Length == 0);

    /// <summary>The text without its styles.</summary>
    public string Plain => Runs.IsDefaultOrEmpty ? "" : string.Concat(Runs.Select(run => run.Text));

    public static implicit operator Phrase(string text) => new([new Run(text, RunStyle.Plain)]);

    public static Phrase operator +(Phrase left, Phrase right) =>
        new([.. left.Runs.IsDefault ? [] : left.Runs, .. right.Runs.IsDefault ? [] : right.Runs]);

    /// <summary>Text that stands out.</summary>
    public static Phrase Strong(string text) => new([new Run(text, RunStyle.Strong)]);

    /// <summary>Text in which back quotes enclose what is to be written; a lone back quote is itself.</summary>
    public static Phrase WithCode(string text)
    {
        var pieces = text.Split('`');
        if (pieces.Length % 2 == 0)
        {
            return text;
        }

        return new([.. pieces.Select((piece, i) => new Run(piece, i % 2 == 1 ? RunStyle.Code : RunStyle.Plain)).Where(run => run.Text.Length > 0)]);
    }
}
