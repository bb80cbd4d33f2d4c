using System.Runtime.CompilerServices;

namespace Recipe.Text.Units;

/// <summary>In which units an author measures each thing, told from the numbers of the file; remarks and texts do not count.</summary>
public sealed class UnitsInUse
{
    private static readonly HashSet<string> UsSymbols = new(StringComparer.Ordinal)
    {
        "in", "ft", "yd", "mil", "in2", "ft2", "yd2", "in3", "ft3", "gal", "qt", "floz", "lb", "oz", "lbf", "degF", "degF-diff", "psi", "ksi", "Msi", "inHg", "cfm",
    };

    private static readonly ConditionalWeakTable<SourceText, UnitsInUse> Known = [];
    private readonly HashSet<string> _symbols = new(StringComparer.Ordinal);
    private readonly HashSet<Dimension> _us = [];
    private readonly HashSet<Dimension> _other = [];

    private UnitsInUse(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '#')
            {
                i = EndOfLine(text, i);
            }
            else if (text[i] == '"')
            {
                i = BlockText.EndOfText(text, i);
            }
            else if (char.IsAsciiDigit(text[i]) && !(i > 0 && IsOfAWord(text[i - 1]) && !IsMinus(text, i - 1)))
            {
                i = Note(text, i);
            }
        }
    }

    /// <summary>The units of a file.</summary>
    public static UnitsInUse Of(SourceText source) => Known.GetValue(source, s => new UnitsInUse(s.Text));

    /// <summary>Whether things of this kind are measured in US units here and in no other.</summary>
    public bool AreUs(Dimension dimension) => _us.Contains(dimension) && !_other.Contains(dimension);

    /// <summary>Whether things of this kind are measured in other than US units here, too or only.</summary>
    public bool AreOther(Dimension dimension) => _other.Contains(dimension);

    /// <summary>Whether something is measured in this unit here.</summary>
    /// <param name="symbol">The unit as units are written.</param>
    public bool Uses(string symbol) => _symbols.Contains(symbol);

    /// <summary>Whether a character continues a word, so that a digit behind it is no number.</summary>
    public static bool IsOfAWord(char c) => char.IsLetterOrDigit(c) || c is '_' or '.' or '-';

    // A hyphen belongs to a word when it stands behind one.
    private static bool IsMinus(string text, int at) => text[at] == '-' && !(at > 0 && IsOfAWord(text[at - 1]));

    // Whether a unit, or a part of it, is one of US shops.
    private static bool IsUs(Unit unit) => unit.Symbol.Split('/', '.').Any(UsSymbols.Contains);

    private int Note(string text, int at)
    {
        while (at + 1 < text.Length && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] == '.'))
        {
            at++;
        }

        var unitAt = at + 1 < text.Length && text[at + 1] == ' ' ? at + 2 : at + 1;
        if (unitAt < text.Length && UnitTable.TryRead(text.AsSpan(unitAt), out _, out var unit))
        {
            _symbols.Add(unit.Symbol);
            (IsUs(unit) ? _us : _other).Add(unit.Dimension);
        }

        return at;
    }

    private static int EndOfLine(string text, int at)
    {
        var end = text.AsSpan(at).IndexOfAny('\n', '\r');
        return end < 0 ? text.Length : at + end;
    }
}
