using System.Collections.Immutable;

namespace Recipe.Compiler;

/// <summary>Which papers are wanted.</summary>
public sealed record PaperWish
{
    /// <summary>The most good parts that papers are made for at a time.</summary>
    public const int MostParts = 100_000;

    /// <summary>Only this part or variant; all of them when null.</summary>
    public string? Part { get; init; }

    /// <summary>Only these parts or variants; all of them when empty.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>Names of papers; all of them when empty.</summary>
    public ImmutableArray<string> Papers { get; init; } = [];

    /// <summary>Names of formats; all of them when empty.</summary>
    public ImmutableArray<string> Formats { get; init; } = [];

    /// <summary>The day printed on them, or null to print none, so that the same recipe gives the same bytes on any day.</summary>
    public DateOnly? Printed { get; init; }

    /// <summary>The day they are checked for, as the workspace was given it.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>Serial number of the piece, or null to leave a space for it.</summary>
    public string? Serial { get; init; }

    /// <summary>How many good parts are wanted, 1 to <see cref="MostParts"/>; null for as many as the recipe says.</summary>
    public int? Quantity { get; init; }

    /// <summary>One of <see cref="BenchPapers.Units"/>, or null for the shop's.</summary>
    public string? Units { get; init; }

    /// <summary>One of <see cref="BenchPapers.PaperSizes"/>, or null for the shop's.</summary>
    public string? PaperSize { get; init; }

    /// <summary>One of <see cref="BenchPapers.Languages"/>.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The version of a file that change notes compare it with, by its name; null when it has none. Null to write no change notes.</summary>
    public Func<string, CompiledFile?>? Earlier { get; init; }

    /// <summary>What that version is called.</summary>
    public string EarlierName { get; init; } = "";
}
