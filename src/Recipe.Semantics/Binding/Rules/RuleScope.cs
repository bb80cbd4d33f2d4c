using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text.Units;

namespace Recipe.Semantics.Binding;

/// <summary>What a word means inside a condition: a fact of the thing that is asked, of what is round it, out to the part; then a figure of the rule.</summary>
/// <param name="Groups">The things, the innermost first; the part is the last.</param>
/// <param name="Figures">The figures that stand above.</param>
internal sealed record RuleScope(ImmutableArray<FactGroup> Groups, IReadOnlyList<(RuleFigure Figure, RuleType Type)> Figures)
{
    /// <summary>Most things inside each other: the work of a rule grows with the power of it.</summary>
    public const int Deepest = 4;

    /// <summary>Whether nothing more may stand inside.</summary>
    public bool IsDeepest => Groups.Length >= Deepest;

    /// <summary>The same inside a thing of a kind.</summary>
    public RuleScope Within(FactGroup group) => this with { Groups = Groups.Insert(0, group) };

    /// <summary>The fact of a word, and how many things further out it is.</summary>
    public (FactWord Fact, int Level)? FindFact(string word)
    {
        for (var level = 0; level < Groups.Length; level++)
        {
            if (Groups[level].Find(word) is { } fact)
            {
                return (fact, level);
            }
        }

        return null;
    }

    /// <summary>The figure of a name.</summary>
    public (int Index, RuleType Type)? FindFigure(string name)
    {
        for (var i = 0; i < Figures.Count; i++)
        {
            if (Figures[i].Figure.Name == name)
            {
                return (i, Figures[i].Type);
            }
        }

        return null;
    }

    /// <summary>All words that mean something, for a did-you-mean.</summary>
    public IEnumerable<string> Words => Groups.SelectMany(g => g.Facts).Select(f => f.Word).Concat(Figures.Select(f => f.Figure.Name));
}

/// <summary>What an expression of a rule is.</summary>
/// <param name="Dimension">What it measures.</param>
/// <param name="IsTemperature">Whether it is a temperature and not a difference of two.</param>
/// <param name="Unit">The unit that messages show it in, or null.</param>
internal readonly record struct RuleType(Dimension Dimension, bool IsTemperature, Unit? Unit)
{
    public string Name => IsTemperature ? "temperature" : Dimension.Name;
}
