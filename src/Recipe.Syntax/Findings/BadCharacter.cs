using System.Text.RegularExpressions;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A character that means nothing here.</summary>
internal static partial class BadCharacter
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1003",
        Name = "bad-character",
        Severity = Severity.Error,
        Title = "A character that means nothing here",
        Reason = "A stray character may hide what the line was meant to say.",
        Remedy = "Take it out, or put the words in quotes.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm !
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"{Quoted.Text(where.Text)} means nothing here") with
        {
            Fixes =
            [
                .. Meant(where).Select(meant => new Fix($"Write {meant.Said}", FixSafety.NeedsALook, new TextEdit(where, meant.Text))),
                new Fix("Take it out", FixSafety.NeedsALook, new TextEdit(where, "")),
            ],
        };

    /// <summary>What programs that set type make of quotes, hyphens and fractions, turned back: what stands there then, and how that is said.</summary>
    private static (string Text, string Said)[] Meant(SourceSpan where) => where.Text switch
    {
        "\u201c" or "\u201d" or "\u201e" or "\u00ab" or "\u00bb" => [("\"", "\"")],
        "\u2012" or "\u2013" or "\u2014" when JoinsNumbers(where) => [(" to ", "to"), ("-", "-")],
        "\u2010" or "\u2011" or "\u2012" or "\u2013" or "\u2014" or "\u2212" => [("-", "-")],
        "\u00f7" or "\u2044" or "\u2215" => [("/", "/")],
        "\u2236" => [(":", ":")],
        "\u00bd" => [Decimals(where, ".5")],
        "\u00bc" => [Decimals(where, ".25")],
        "\u00be" => [Decimals(where, ".75")],
        _ => [],
    };

    /// <summary>Whether a number, with or without its unit, stands before a dash and a number behind it: <c>18 to 25 degC</c> as data sheets print it.</summary>
    private static bool JoinsNumbers(SourceSpan dash)
    {
        var (before, behind) = Round(dash);
        return NumberAtEnd().IsMatch(before.TrimEnd()) && behind.TrimStart() is [>= '0' and <= '9', ..];
    }

    private static (string Text, string Said) Decimals(SourceSpan fraction, string decimals) => FiguresAtEnd().Match(Round(fraction).Before) is { Success: true } whole
        ? (decimals, whole.Value + decimals)
        : ("0" + decimals, "0" + decimals);

    private static (string Before, string Behind) Round(SourceSpan where)
    {
        var line = where.Source.LineSpan(where.Start.Line);
        return (where.Source.Text[line.Start..where.Span.Start], where.Source.Text[where.Span.End..line.End]);
    }

    [GeneratedRegex(@"\d ?[^\s\d]*$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberAtEnd();

    [GeneratedRegex("[0-9]+$", RegexOptions.CultureInvariant)]
    private static partial Regex FiguresAtEnd();
}
