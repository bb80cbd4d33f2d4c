using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A `use` whose file does not exist.</summary>
public static class ImportMissing
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1207",
        Name = "import-missing",
        Severity = Severity.Error,
        Title = "A used file that is not there",
        Reason = "Everything it declares is missing.",
        Remedy = "Correct the path; it is relative to this file.",
        Source = "the language",
        BadExample =
            """
            use "no-such-file.recipe"
            fibre my-glass {
              density 2.55 g/cm3
            }

            """,
        GoodExample =
            """
            fibre my-glass {
              density 2.55 g/cm3
            }

            """,
    };

    /// <summary>The finding.</summary>
    /// <param name="where">The path on its line.</param>
    /// <param name="path">The path.</param>
    public static Finding Create(SourceSpan where, string path) =>
        Finding.Of(Descriptor, where, $"There is no file \"{path}\" beside {where.Source.Name}.");
}
