using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Syntax.Tests;

/// <summary>A part of a production.</summary>
internal abstract record EbnfPart;

internal sealed record EbnfText(string Text) : EbnfPart;

internal sealed record EbnfProse(string Text) : EbnfPart;

internal sealed record EbnfName(string Name) : EbnfPart;

internal sealed record EbnfSequence(IReadOnlyList<EbnfPart> Parts) : EbnfPart;

internal sealed record EbnfChoice(IReadOnlyList<EbnfPart> Parts) : EbnfPart;

internal sealed record EbnfRepeat(EbnfPart Part, int AtLeast, bool Many) : EbnfPart;

/// <summary>Reads <c>grammar/recipe.ebnf</c>.</summary>
internal sealed partial class Ebnf
{
    private readonly List<string> _symbols;
    private int _at;

    private Ebnf(IEnumerable<string> symbols) => _symbols = [.. symbols, "", ""];

    private string Current => _symbols[_at];

    /// <summary>The productions by their names, in order.</summary>
    public static IReadOnlyDictionary<string, EbnfPart> Productions { get; } = Load();

    private static OrderedDictionary<string, EbnfPart> Load()
    {
        var text = Comment().Replace(Repository.Read("grammar/recipe.ebnf"), " ");
        var symbols = Symbol().Matches(text).Select(match => match.Value).ToList();
        Assert.Empty(Symbol().Replace(text, "").Trim());
        var reader = new Ebnf(symbols);
        var productions = new OrderedDictionary<string, EbnfPart>();
        while (reader.Current.Length > 0)
        {
            var name = reader.Take();
            Assert.Equal("::=", reader.Take());
            productions.Add(name, reader.Choice());
        }

        return productions;
    }

    private string Take() => _symbols[_at++];

    private EbnfPart Choice()
    {
        var parts = new List<EbnfPart> { Sequence() };
        while (Current == "|")
        {
            Take();
            parts.Add(Sequence());
        }

        return parts.Count == 1 ? parts[0] : new EbnfChoice(parts);
    }

    private EbnfSequence Sequence()
    {
        var parts = new List<EbnfPart>();
        while (Current is not ("" or "|" or ")") && _symbols[_at + 1] != "::=")
        {
            parts.Add(Repeated());
        }

        Assert.NotEmpty(parts);
        return new EbnfSequence(parts);
    }

    private EbnfPart Repeated()
    {
        var part = Single();
        var sign = Current is "?" or "*" or "+" ? Take() : "";
        return sign.Length == 0 ? part : new EbnfRepeat(part, sign == "+" ? 1 : 0, sign != "?");
    }

    private EbnfPart Single()
    {
        var symbol = Take();
        switch (symbol[0])
        {
            case '"':
                return new EbnfText(symbol[1..^1]);
            case '#':
                return new EbnfText(((char)int.Parse(symbol[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString());
            case '<':
                return new EbnfProse(symbol[1..^1]);
            case '(':
                var inner = Choice();
                Assert.Equal(")", Take());
                return inner;
            default:
                Assert.Matches("^[A-Za-z-]+$", symbol);
                return new EbnfName(symbol);
        }
    }

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex("""::=|"[^"]*"|\#x[0-9A-F]+|<[^>]*>|[A-Za-z][A-Za-z-]*|[()|?*+]""")]
    private static partial Regex Symbol();
}
