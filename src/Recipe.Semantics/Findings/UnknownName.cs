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
        var all = candidates.Distinct(StringComparer.Ordinal).ToArray();
        var meant = Spelling.Nearest(name, all) is { } near ? [near] : Longer(name, all);
        return meant.Length == 0
            ? Finding.Of(Descriptor, where, $"There is no `{name}` in scope; {noun} is wanted here.")
            : Finding.Of(Descriptor, where, $"There is no `{name}` in scope; did you mean {Numbers.Or([.. meant.Select(m => $"`{m}`")])}?") with
            {
                Fixes = [.. meant.Select(m => new Fix($"Write {m}", FixSafety.NeedsALook, new TextEdit(where, m)))],
            };
    }

    /// <summary>Names that say the same and more: `flow-mesh` for `nylon-flow-mesh`; none when there are many.</summary>
    private static string[] Longer(string name, string[] candidates)
    {
        var longer = candidates.Where(c => $"-{c}-".Contains($"-{name}-", StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal).ToArray();
        return longer.Length <= MostNames ? longer : [];
    }
}
