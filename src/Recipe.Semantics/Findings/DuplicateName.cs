using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>Two declarations of one name in the files of a user.</summary>
public static class DuplicateName
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1204",
        Name = "duplicate-name",
        Severity = Severity.Error,
        Title = "One name for two things",
        Reason = "Nobody can say which of the two is meant.",
        Remedy = "Rename one of them, or take one out.",
        Source = "the language",
        BadExample =
            """
            fibre my-glass {
              density 2.55 g/cm3
            }
            fibre my-glass {
              density 2.6 g/cm3
            }

            """,
        GoodExample =
            """
            fibre my-glass {
              density 2.55 g/cm3
            }
            fibre my-other-glass {
              density 2.6 g/cm3
            }

            """,
        Exceptions = "A declaration of your own replaces the book's of the same name; that is no finding.",
    };

    internal static Finding Create(SourceSpan where, string name, SourceSpan first) =>
        Finding.Of(Descriptor, where, $"`{name}` is declared twice; the first one counts.") with
        {
            Labels = [new FindingLabel(first, "declared here first"), new FindingLabel(where, "and here again")],
        };

    /// <summary>Two lines of one ply list. Both are laid; a line that lies after the name means the first.</summary>
    internal static Finding Ply(SourceSpan where, string name, SourceSpan first) =>
        Finding.Of(Descriptor, where, $"Two lines of the ply list are named `{name}`.") with
        {
            Labels = [new FindingLabel(first, "the first one"), new FindingLabel(where, "and this one")],
        };

    /// <summary>Both halves of a mould.</summary>
    internal static Finding Half(SourceSpan where, string name, SourceSpan first)
    {
        return Finding.Of(Descriptor, where, $"Both halves are named `{name}`; papers and pieces could not tell them apart.") with
        {
            Labels = [new FindingLabel(first, "the first half"), new FindingLabel(where, "and the second")],
            Fixes = name switch
            {
                "left" => [Other("right")],
                "right" => [Other("left")],
                "upper" => [Other("lower")],
                "lower" => [Other("upper")],
                _ => [],
            },
        };

        Fix Other(string half) => new($"Name it {half}", FixSafety.NeedsALook, new TextEdit(where, half));
    }

    /// <summary>Two used files, or a used file and this one, declare the same name.</summary>
    internal static Finding Between(SourceSpan where, string name, SourceSpan first, SourceSpan second) =>
        Finding.Of(Descriptor, where, $"`{name}` is declared in {first.Source.Name} and in {second.Source.Name}; the one in {first.Source.Name} counts.") with
        {
            Labels = [new FindingLabel(first, "declared here"), new FindingLabel(second, "and here")],
        };
}
