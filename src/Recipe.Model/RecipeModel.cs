using System.Collections.Immutable;

namespace Recipe.Model;

/// <summary>
/// What a file and everything it uses mean together: names resolved, variants worked out, units read. Things that could not be
/// understood are absent here and present among the findings.
/// </summary>
public sealed record RecipeModel
{
    /// <summary>
    /// Every material in scope by name, the book's included. A read-only view, so that a thousand files can share one book;
    /// its order means nothing.
    /// </summary>
    public required IReadOnlyDictionary<string, Material> Materials { get; init; }

    /// <summary>Every mould and pattern in scope by name.</summary>
    public IReadOnlyDictionary<string, Mould> Moulds { get; init; } = ImmutableSortedDictionary<string, Mould>.Empty;

    /// <summary>The parts and variants that the file itself declares, in order.</summary>
    public ImmutableArray<Part> Parts { get; init; } = [];

    /// <summary>Parts that come from used files, by name.</summary>
    public IReadOnlyDictionary<string, Part> UsedParts { get; init; } = ImmutableSortedDictionary<string, Part>.Empty;

    /// <summary>The studies that the file itself declares, in order.</summary>
    public ImmutableArray<Study> Studies { get; init; } = [];

    /// <summary>The house rules in scope: those of the file itself, then those of the files it uses.</summary>
    public ImmutableArray<HouseRule> Rules { get; init; } = [];

    /// <summary>The house rules that the file itself declares, in order, second ones of a name among them.</summary>
    public ImmutableArray<HouseRule> OwnRules { get; init; } = [];

    /// <summary>The shop in scope, or null.</summary>
    public Shop? Shop { get; init; }

    /// <summary>What is on the shelf.</summary>
    public ImmutableArray<StockLine> Stock { get; init; } = [];

    /// <summary>Prices that stand apart from their material.</summary>
    public ImmutableArray<PriceLine> Prices { get; init; } = [];

    /// <summary>Build records.</summary>
    public ImmutableArray<BuildRecord> Builds { get; init; } = [];

    /// <summary>How bad the file holds findings to be.</summary>
    public ImmutableArray<SeveritySetting> Settings { get; init; } = [];

    /// <summary>Waivers at the top level of the file.</summary>
    public ImmutableArray<Waiver> Waivers { get; init; } = [];
}
