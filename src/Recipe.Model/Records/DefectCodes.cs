using System.Collections.Immutable;

namespace Recipe.Model;

/// <summary>Faults that can be counted over many parts; common words of the trade, two letters each.</summary>
public static class DefectCodes
{
    /// <summary>The codes with what they mean.</summary>
    public static ImmutableArray<(string Code, string Meaning)> All { get; } =
    [
        ("DR", "dry"), ("BR", "bridge"), ("VD", "void, blister"), ("PH", "pinholes"), ("RR", "resin-rich, pool"), ("WR", "wrinkle"), ("PP", "print-through"), ("ST", "stuck, torn"), ("SO", "soft"),
        ("WP", "warp"), ("DL", "delaminated"), ("MS", "ply missing, misplaced"), ("CN", "contaminated"), ("EX", "exotherm"), ("LK", "vacuum lost"), ("TR", "trim error"), ("HV", "heavy"), ("LT", "light"),
    ];

    /// <summary>What a code means, or null when there is none of that name.</summary>
    public static string? MeaningOf(string code)
    {
        foreach (var (known, meaning) in All)
        {
            if (known == code)
            {
                return meaning;
            }
        }

        return null;
    }
}
