using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A `use` that leads back to its own file.</summary>
public static class ImportCycle
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1208",
        Name = "import-cycle",
        Severity = Severity.Error,
        Title = "Files that use each other in a circle",
        Reason = "Nobody can read one of them without having read the other.",
        Remedy = "Move what both need into a third file.",
        Source = "the language",
        BadExample =
            """
            # this file is this.recipe
            use "this.recipe"

            """,
        GoodExample =
            """
            # this file is this.recipe
            let lap = 20 mm

            """,
    };

    internal static Finding Create(SourceSpan where, IReadOnlyList<string> files) =>
        Finding.Of(Descriptor, where, files.Count == 0
            ? $"{where.Source.Name} uses itself."
            : $"{where.Source.Name} uses {string.Join(", which uses ", files)}, which uses {where.Source.Name} again.");
}
