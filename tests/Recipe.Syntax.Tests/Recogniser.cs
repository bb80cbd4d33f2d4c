using System.Text.RegularExpressions;
using Recipe.Text.Units;

namespace Recipe.Syntax.Tests;

/// <summary>
/// Says whether a text has the shape of <c>grammar/recipe.ebnf</c>. It follows the productions with every way of reading at once, over
/// characters, and uses nothing of the parser. Of what the page says in words it knows where blanks stand, that the longest token
/// counts, that an entry does not begin with <c>let</c>, and that units end words; it knows nothing of what numbers, dates and units are worth.
/// </summary>
internal sealed class Recogniser
{
    private const string WordFollows = @"(?:[\p{L}\p{Nd}\p{Mn}\p{Mc}_]|-[\p{L}\p{Nd}_])";
    private static readonly Dictionary<string, Regex> Tokens = [];
    private static readonly int[] Nowhere = [];
    private readonly string _text;
    private readonly Dictionary<(string Name, int At, bool IsInside), int[]> _known = [];

    private Recogniser(string text) => _text = text;

    /// <summary>Whether the whole text is a file.</summary>
    public static bool Accepts(string text)
    {
        var recogniser = new Recogniser(text);
        return recogniser.Ends(new EbnfName("file"), 0, isInside: false).Any(recogniser.IsLast);
    }

    private static bool IsToken(string name) => !name.Any(char.IsLower);

    private static Regex Token(string name)
    {
        lock (Tokens)
        {
            if (!Tokens.TryGetValue(name, out var regex))
            {
                var tail = name switch
                {
                    "UNIT" => @"(?:(?<=%)|(?![\p{L}\p{Nd}_]|-[\p{L}_]))",
                    "DATE" => $"(?!{WordFollows})",
                    _ => "",
                };
                regex = new Regex(@"\G(?:" + Pattern(Ebnf.Productions[name]) + ")" + tail, RegexOptions.CultureInvariant);
                Tokens.Add(name, regex);
            }

            return regex;
        }
    }

    private static string Pattern(EbnfPart part) => part switch
    {
        EbnfText text => Regex.Escape(text.Text),
        EbnfName name => "(?:" + Pattern(Ebnf.Productions[name.Name]) + ")",
        EbnfSequence sequence => string.Concat(sequence.Parts.Select(Pattern)),
        EbnfChoice choice => "(?:" + string.Join('|', choice.Parts.Select(Pattern)) + ")",
        EbnfRepeat repeat => "(?:" + Pattern(repeat.Part) + ")" + (repeat.Many ? (repeat.AtLeast > 0 ? "+" : "*") : "?"),
        EbnfProse prose => prose.Text switch
        {
            "a letter of any script" => @"\p{L}",
            "a digit of any script" => @"\p{Nd}",
            "an accent that is a character of its own" => @"[\p{Mn}\p{Mc}]",
            "a spelling of the unit table" => "(?:" + string.Join('|', UnitTable.Spellings.OrderByDescending(s => s.Length).Select(Regex.Escape)) + ")",
            "any character but a quote, a backslash and a line end" => @"[^""\\\r\n]",
            "any character but a line end" => @"[^\r\n]",
            _ => throw new InvalidOperationException($"Nothing is known about '{prose.Text}'."),
        },
        _ => throw new InvalidOperationException(),
    };

    /// <summary>Where a part may end that begins here.</summary>
    private int[] Ends(EbnfPart part, int at, bool isInside) => part switch
    {
        EbnfText text => Literal(text.Text, at, isInside),
        EbnfName name => Named(name.Name, at, isInside),
        EbnfSequence sequence => sequence.Parts.Aggregate(new[] { at }, (ends, one) => Follow(ends, one, isInside)),
        EbnfChoice choice => [.. choice.Parts.SelectMany(one => Ends(one, at, isInside)).Distinct()],
        EbnfRepeat { Many: false } repeat => [.. Ends(repeat.Part, at, isInside).Append(at).Distinct()],
        EbnfRepeat repeat => Repeated(repeat, at, isInside),
        _ => throw new InvalidOperationException(),
    };

    private int[] Follow(int[] from, EbnfPart part, bool isInside) => from.Length switch
    {
        0 => Nowhere,
        1 => Ends(part, from[0], isInside),
        _ => [.. from.SelectMany(at => Ends(part, at, isInside)).Distinct()],
    };

    private int[] Repeated(EbnfRepeat repeat, int at, bool isInside)
    {
        var first = repeat.AtLeast == 0 ? [at] : Ends(repeat.Part, at, isInside);
        var found = new HashSet<int>(first);
        var next = new Queue<int>(first);
        while (next.TryDequeue(out var from))
        {
            foreach (var end in Ends(repeat.Part, from, isInside).Where(found.Add))
            {
                next.Enqueue(end);
            }
        }

        return [.. found];
    }

    private int[] Named(string name, int at, bool isInside)
    {
        if (_known.TryGetValue((name, at, isInside), out var ends))
        {
            return ends;
        }

        if (IsToken(name))
        {
            // A unit stands on the line of its number.
            var start = Skip(at, isInside && name != "UNIT");
            var match = Token(name).Match(_text, start);
            ends = match.Success ? [match.Index + match.Length] : Nowhere;
        }
        else if (name == "entry" && Literal("let", at, isInside).Length > 0)
        {
            ends = Nowhere;
        }
        else if (name == "parenthesis")
        {
            ends = Parenthesis(at, isInside);
        }
        else
        {
            ends = Ends(Ebnf.Productions[name], at, isInside);
        }

        _known.Add((name, at, isInside), ends);
        return ends;
    }

    /// <summary>A line end is a blank up to the last of the parentheses.</summary>
    private int[] Parenthesis(int at, bool isInside)
    {
        var parts = Assert.IsType<EbnfSequence>(Ebnf.Productions["parenthesis"]).Parts;
        var ends = Ends(parts[0], at, isInside);
        foreach (var part in parts.Skip(1))
        {
            ends = Follow(ends, part, isInside: true);
        }

        return ends;
    }

    private int[] Literal(string literal, int at, bool isInside)
    {
        var start = Skip(at, isInside);
        if (!char.IsLetter(literal[0]))
        {
            return string.CompareOrdinal(_text, start, literal, 0, literal.Length) == 0 ? [start + literal.Length] : Nowhere;
        }

        var word = Token("WORD").Match(_text, start);
        return word.Success && word.Value == literal ? [start + literal.Length] : Nowhere;
    }

    private int Skip(int at, bool withLines)
    {
        while (at < _text.Length)
        {
            if (_text[at] == '\t' || char.GetUnicodeCategory(_text[at]) == System.Globalization.UnicodeCategory.SpaceSeparator)
            {
                at++;
            }
            else if (withLines && _text[at] is '\n' or '\r')
            {
                at++;
            }
            else if (withLines && _text[at] == '#')
            {
                at = EndOfLine(at);
            }
            else
            {
                break;
            }
        }

        return at;
    }

    private int EndOfLine(int at) => _text.AsSpan(at).IndexOfAny('\n', '\r') is var length and >= 0 ? at + length : _text.Length;

    /// <summary>Whether nothing follows but blanks and a comment.</summary>
    private bool IsLast(int at)
    {
        at = Skip(at, withLines: false);
        return at == _text.Length || (_text[at] == '#' && EndOfLine(at) == _text.Length);
    }
}
