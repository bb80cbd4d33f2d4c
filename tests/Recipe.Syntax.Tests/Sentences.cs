using System.Globalization;
using System.Text;
using CsCheck;
using Recipe.Text.Units;

namespace Recipe.Syntax.Tests;

/// <summary>
/// Makes texts from <c>grammar/recipe.ebnf</c> by following its productions at random. What the page says in words, this class knows:
/// which quantities add up, which days there are, what <c>+/-</c> and <c>to</c> stand behind.
/// </summary>
internal sealed class Sentences
{
    private const int Deepest = 26;
    private static readonly string[] UnitSpellings = [.. UnitTable.Spellings.Order(StringComparer.Ordinal)];
    private static readonly string[] Compounds = ["1 h 30 min", "3 ft 4 in", "2 kg 350 g", "1 d 2 h 5 min", "1.5 m 20 cm 3 mm"];
    private readonly Random _random;
    private readonly StringBuilder _text = new();

    // Whether the last value was an amount, behind which +/- would be that of a tolerance, and how many parentheses are open.
    private bool _endsAmount;
    private int _open;

    private Sentences(int seed) => _random = new Random(seed);

    /// <summary>Texts of the grammar.</summary>
    public static Gen<string> All { get; } = Gen.Int[0, int.MaxValue - 1].Select(Of);

    /// <summary>The text that belongs to this number.</summary>
    public static string Of(int seed)
    {
        var sentences = new Sentences(seed);
        sentences.Write(Ebnf.Productions["file"], 0);
        return sentences._text.ToString();
    }

    private static bool IsToken(string name) => !name.Any(char.IsLower);

    private static bool IsInRange(string number) =>
        double.Parse(number, CultureInfo.InvariantCulture) is var value && double.IsFinite(value) && (value != 0 || !number.Split('e', 'E')[0].Any(c => c is >= '1' and <= '9'));

    private void Write(EbnfPart part, int depth)
    {
        switch (part)
        {
            case EbnfText text:
                Add(text.Text);
                break;
            case EbnfName { Name: "compound" }:
                Add(Compounds[_random.Next(Compounds.Length)]);
                _endsAmount = true;
                break;
            case EbnfName { Name: "both-signs" or "amount-with" } when _endsAmount:
                // Two amounts in a row might add up, and a sign belong to the first.
                Add("x");
                _endsAmount = false;
                Write(part, depth);
                break;
            case EbnfName { Name: "BYTE-ORDER-MARK" }:
                _text.Append('\ufeff');
                break;
            case EbnfName name when IsToken(name.Name):
                Add(Token(name.Name), isOnSameLine: name.Name == "UNIT");
                _endsAmount = name.Name is not ("WORD" or "TEXT" or "DATE" or "PLUS-MINUS");
                break;
            case EbnfName name:
                Write(Ebnf.Productions[name.Name], depth + 1);
                break;
            case EbnfSequence sequence:
                foreach (var one in sequence.Parts)
                {
                    Write(one, depth + 1);
                }

                break;
            case EbnfChoice choice:
                // Deep down the shortest way is taken: the productions put it first.
                Write(choice.Parts[depth > Deepest ? 0 : _random.Next(choice.Parts.Count)], depth + 1);
                break;
            case EbnfRepeat repeat:
                for (var i = depth > Deepest ? repeat.AtLeast : repeat.AtLeast + _random.Next(repeat.Many ? 4 : 2); i > 0; i--)
                {
                    Write(repeat.Part, depth + 1);
                }

                break;
        }
    }

    private void Add(string token, bool isOnSameLine = false)
    {
        if (token is not ("\n" or "\r" or "\r\n"))
        {
            _text.Append(_open > 0 && !isOnSameLine && _random.Next(12) == 0 ? "\n" : new string(' ', 1 + (_random.Next(6) / 5)));
        }

        _text.Append(token);
        _endsAmount |= token == ")";
        _open += token switch { "(" => 1, ")" => -1, _ => 0 };
    }

    private string Token(string name)
    {
        while (true)
        {
            var text = new StringBuilder();
            Spell(text, Ebnf.Productions[name]);
            var token = text.ToString();
            var isFit = name switch
            {
                "WORD" => token is not ("let" or "to") && !UnitTable.TryRead(token, out _, out _),
                "DATE" => DateOnly.TryParseExact(token, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _),
                "UNIT" => UnitTable.TryParse(token, out _),
                "NUMBER" or "FRACTION" => token.Split('/').All(IsInRange),
                _ => true,
            };
            if (isFit)
            {
                return token;
            }
        }
    }

    /// <summary>Spells a token, nothing between its characters.</summary>
    private void Spell(StringBuilder text, EbnfPart part)
    {
        switch (part)
        {
            case EbnfText literal:
                text.Append(literal.Text);
                break;
            case EbnfName name:
                Spell(text, Ebnf.Productions[name.Name]);
                break;
            case EbnfSequence sequence:
                foreach (var one in sequence.Parts)
                {
                    Spell(text, one);
                }

                break;
            case EbnfChoice choice:
                Spell(text, choice.Parts[_random.Next(choice.Parts.Count)]);
                break;
            case EbnfRepeat repeat:
                for (var i = repeat.AtLeast + _random.Next(repeat.Many ? 3 : 2); i > 0; i--)
                {
                    Spell(text, repeat.Part);
                }

                break;
            case EbnfProse prose:
                text.Append(prose.Text switch
                {
                    "a letter of any script" => "abcghmstxZ\u00e9\u03a9\u0416\u5c42"[_random.Next(14)].ToString(),
                    "a digit of any script" => "0123456789\u0663"[_random.Next(11)].ToString(),
                    "an accent that is a character of its own" => "\u0301",
                    "a spelling of the unit table" => UnitSpellings[_random.Next(UnitSpellings.Length)],
                    "any character but a quote, a backslash and a line end" => "a #{};=\t\u2603\ufeff"[_random.Next(10)].ToString(),
                    "any character but a line end" => "a \"\\#{};\u2603"[_random.Next(9)].ToString(),
                    _ => throw new InvalidOperationException($"Nothing is known about '{prose.Text}'."),
                });
                break;
        }
    }
}
