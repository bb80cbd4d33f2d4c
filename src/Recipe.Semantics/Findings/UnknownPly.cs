using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A ply name that the stack does not have.</summary>
public static class UnknownPly
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1211",
        Name = "unknown-ply",
        Severity = Severity.Error,
        Title = "No such line in the ply list",
        Reason = "The edit or the place means a line that is not there.",
        Remedy = "Name a line of the ply list.",
        Source = "the language",
        BadExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
            }
            part lid {
              plies {
                outer my-twill 0/90
                inner my-twill 0/90
              }
            }
            variant light-lid of lid {
              plies {
                remove iner
              }
            }

            """,
        GoodExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
            }
            part lid {
              plies {
                outer my-twill 0/90
                inner my-twill 0/90
              }
            }
            variant light-lid of lid {
              plies {
                remove inner
              }
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string name, IEnumerable<string> plies)
    {
        var near = Spelling.Nearest(name, plies);
        return near is null
            ? Finding.Of(Descriptor, where, $"There is no line `{name}` in the ply list.")
            : Finding.Of(Descriptor, where, $"There is no line `{name}` in the ply list; did you mean `{near}`?") with
            {
                Fixes = [new Fix($"Write {near}", FixSafety.NeedsALook, new TextEdit(where, near))],
            };
    }

    /// <summary>Lines that each lie on the other.</summary>
    internal static Finding Circle(SourceSpan where, string name, string after) =>
        Finding.Of(Descriptor, where, $"`{name}` is to lie after `{after}`, which waits for `{name}` itself.");

    /// <summary>A line that lies on one which the variant takes out.</summary>
    internal static Finding Removed(SourceSpan where, string name, string after, SourceSpan line) =>
        Finding.Of(Descriptor, where, $"`{after}` is taken out, but `{name}` lies on it.") with
        {
            Labels = [new FindingLabel(line, $"`{name}` lies after `{after}`")],
        };
}
