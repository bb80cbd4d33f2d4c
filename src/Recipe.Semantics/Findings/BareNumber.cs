using System.Collections.Immutable;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Semantics.Findings;

/// <summary>A physical quantity without a unit.</summary>
public static class BareNumber
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1101",
        Name = "bare-number",
        Severity = Severity.Error,
        Title = "A quantity has no unit",
        Reason = "A number alone can be degrees, minutes or millimetres, and the next reader will guess another one.",
        Remedy = "Write the unit behind the number.",
        Source = "common practice",
        BadExample =
            """
            fabric my-twill {
              areal-weight 163
            }

            """,
        GoodExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
            }

            """,
        Exceptions = "Counts, mix ratios, Poisson's ratio and ply angles have no unit.",
    };

    internal static Finding Create(SourceSpan where, string head, string written, string noun, ImmutableArray<string> units, bool canAppend)
    {
        // Who writes inches elsewhere in the file probably means inches here.
        string[] likeliest = [.. units.OrderByDescending(UnitsInUse.Of(where.Source).Uses)];
        return Finding.Of(Descriptor, where, $"{written} has no unit; `{head}` takes {noun} ({Numbers.Or(likeliest)}).") with
        {
            Fixes = canAppend ? [.. likeliest.Select(u => Append(where, written, u))] : [],
        };
    }

    /// <summary>A percentage without its sign; the number says which of two readings is likelier.</summary>
    internal static Finding Percentage(SourceSpan where, string head, string written, double? number)
    {
        var percent = number is > 0 and < 1 ? Numbers.Format(number.Value * 100) : null;
        var fixes = ImmutableArray.CreateBuilder<Fix>();
        if (percent is not null)
        {
            fixes.Add(new Fix($"Write {percent} %", FixSafety.NeedsALook, new TextEdit(where, percent + " %")));
        }

        if (number is not null)
        {
            fixes.Add(Append(where, written, "%"));
        }

        return Finding.Of(Descriptor, where, $"{written} has no unit; `{head}` takes a percentage (%).") with { Fixes = fixes.ToImmutable() };
    }

    private static Fix Append(SourceSpan where, string written, string unit) =>
        new($"Write {written} {unit}", FixSafety.NeedsALook, new TextEdit(where with { Span = new TextSpan(where.Span.End, 0) }, " " + unit));
}
