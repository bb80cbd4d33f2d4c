using Recipe.Model;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A mix ratio that is neither by weight nor by volume.</summary>
public static class RatioWithoutBasis
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1107",
        Name = "ratio-without-basis",
        Severity = Severity.Error,
        Title = "A mix ratio without by weight or by volume",
        Reason = "Resin and hardener differ in density by a tenth or more: the wrong reading never cures right.",
        Remedy = "Write `by weight` or `by volume` as the data sheet says it.",
        Source = "common practice",
        BadExample =
            """
            resin my-epoxy {
              mix 100:30
              density resin 1.13 g/cm3
              density hardener 0.98 g/cm3
            }

            """,
        GoodExample =
            """
            resin my-epoxy {
              mix 100:30 by weight
              density resin 1.13 g/cm3
              density hardener 0.98 g/cm3
            }

            """,
    };

    /// <param name="where">The ratio.</param>
    /// <param name="written">The ratio as written.</param>
    /// <param name="mix">The ratio.</param>
    /// <param name="resin">Density of the liquid resin, kg/m3, when known.</param>
    /// <param name="hardener">Density of the liquid hardener, kg/m3, when known.</param>
    internal static Finding Create(SourceSpan where, string written, MixRatio mix, double? resin, double? hardener)
    {
        var parts = mix.Hardener / mix.Resin * 100;
        var message = $"{written} does not say whether it is weighed or measured by volume.";
        if (resin is { } r && hardener is { } h)
        {
            // Parts by volume = parts by weight times the ratio of the densities, and the other way round.
            message = $"{written} does not say whether it is weighed or measured by volume: by weight it is 100:{Show(parts * r / h)} by volume, by volume it is 100:{Show(parts * h / r)} by weight.";
        }

        return Finding.Of(Descriptor, where, message) with { Fixes = [Behind(where, written, "by weight"), Behind(where, written, "by volume")] };
    }

    private static string Show(double parts) => Numbers.Format(Math.Round(parts, 1));

    private static Fix Behind(SourceSpan where, string written, string words) =>
        new($"Write {written} {words}", FixSafety.NeedsALook, new TextEdit(where with { Span = new TextSpan(where.Span.End, 0) }, " " + words));
}
