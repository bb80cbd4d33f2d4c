using System.Runtime.CompilerServices;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Checks;

/// <summary>In which units an author measures each thing, told from the numbers of his file.</summary>
internal sealed class UnitsInUse
{
    private static readonly ConditionalWeakTable<SourceText, UnitsInUse> Known = [];
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
                var close = text.IndexOf('"', i + 1);
                i = close < 0 ? EndOfLine(text, i) : Math.Min(close, EndOfLine(text, i));
            }
            else if (char.IsAsciiDigit(text[i]) && !(i > 0 && Quantities.IsOfAWord(text[i - 1])))
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

    private int Note(string text, int at)
    {
        while (at + 1 < text.Length && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] == '.'))
        {
            at++;
        }

        var unitAt = at + 1 < text.Length && text[at + 1] == ' ' ? at + 2 : at + 1;
        if (unitAt < text.Length && UnitTable.TryRead(text.AsSpan(unitAt), out _, out var unit))
        {
            (Quantities.IsUs(unit) ? _us : _other).Add(unit.Dimension);
        }

        return at;
    }

    private static int EndOfLine(string text, int at)
    {
        var end = text.IndexOf('\n', at);
        return end < 0 ? text.Length : end;
    }
}
