using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A name that nothing in scope has.</summary>
public static class UnknownName
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1203",
        Name = "unknown-name",
        Severity = Severity.Error,
        Title = "Nothing of that name",
        Reason = "What the line asks for is not there, so the plan cannot count it.",
        Remedy = "Correct the name, declare it, or use the file that declares it.",
        Source = "the language",
        BadExample =
            """
            fibre my-glass {
              density 2.55 g/cm3
            }
            fabric my-twill {
              fibre my-glas
              areal-weight 163 g/m2
            }

            """,
        GoodExample =
            """
            fibre my-glass {
              density 2.55 g/cm3
            }
            fabric my-twill {
              fibre my-glass
              areal-weight 163 g/m2
            }

            """,
    };

    private const int MostNames = 3;

    internal static Finding Create(SourceSpan where, string name, string noun, IEnumerable<string> candidates)
    {
        if (BenchWords.Find(name, null, null) is { } word)
        {
            return Finding.Of(Descriptor, where, $"There is no `{name}` in scope: {word.Answer}.");
        }

        var all = candidates.Distinct(StringComparer.Ordinal).ToArray();
        var meant = Spelling.Nearest(name, all) is { } near ? [near] : Longer(name, all);
        return meant.Length == 0
            ? Finding.Of(Descriptor, where, $"There is no `{name}` in scope; {noun} is wanted here.")
            : Finding.Of(Descriptor, where, $"There is no `{name}` in scope; did you mean {Numbers.Or([.. meant.Select(m => $"`{m}`")])}?") with
            {
                Fixes = [.. meant.Select(m => new Fix($"Write {m}", FixSafety.NeedsALook, new TextEdit(where, m)))],
            };
    }

    /// <summary>A name whose words were written apart and not all of them: <c>slow epoxy</c> for <c>slow-laminating-epoxy</c>.</summary>
    /// <param name="where">The words.</param>
    /// <param name="head">How the line begins.</param>
    /// <param name="meant">Names that have all of those words.</param>
    /// <param name="mix">What stands behind it as the mix, or null.</param>
    internal static Finding InWords(SourceSpan where, string head, IReadOnlyList<string> meant, string? mix) =>
        Finding.Of(
            Descriptor,
            where,
            $"A name is one word with hyphens, and `{head}` has {where.Text}; did you mean {Numbers.Or([.. meant.Select(m => $"`{m}`")])}?"
            + (mix is null ? "" : $" The mix, {mix}, is said in the block of the resin, not where it is used.")) with
        {
            Fixes = [.. meant.Select(m => new Fix($"Write {m}", FixSafety.NeedsALook, new TextEdit(where, m)))],
        };

    /// <summary>A cloth that is asked for by its weight: <c>5.9 oz carbon twill</c>.</summary>
    /// <param name="where">The weight and the words behind it.</param>
    /// <param name="meant">Cloths of that weight, with the weight as people sell it; none when there is no such cloth.</param>
    internal static Finding ByWeight(SourceSpan where, IReadOnlyList<(string Name, string Weight)> meant) =>
        Finding.Of(
            Descriptor,
            where,
            $"A cloth is asked for by its name, not by its weight; {where.Text} " + (meant.Count == 0
                ? "is none that is in scope. `recipe explain fabric` lists those of the book."
                : $"may be {Numbers.Or([.. meant.Select(m => $"`{m.Name}` ({m.Weight})")])}.")) with
        {
            Fixes = [.. meant.Select(m => new Fix($"Write {m.Name}", FixSafety.NeedsALook, new TextEdit(where, m.Name)))],
        };

    /// <summary>Names that say the same and more: `flow-mesh` for `nylon-flow-mesh`; none when there are many.</summary>
    private static string[] Longer(string name, string[] candidates)
    {
        var longer = candidates.Where(c => $"-{c}-".Contains($"-{name}-", StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal).ToArray();
        return longer.Length <= MostNames ? longer : [];
    }
}
