using System.Collections.Immutable;
using Recipe.Documents.Languages;
using Recipe.Model;

namespace Recipe.Documents.Layout;

/// <summary>What every page says about itself.</summary>
/// <param name="Part">What the part is called.</param>
/// <param name="PartName">Its name in the recipe.</param>
/// <param name="Revision">Short hash of the recipe, or null.</param>
/// <param name="Printed">The day, or null.</param>
/// <param name="Source">Name of the recipe file.</param>
/// <param name="OfOneBuild">Whether the paper belongs to one serial number and is destroyed after the build.</param>
/// <param name="Serial">Serial number of the piece, or null to leave a space for it.</param>
internal sealed record Identity(string Part, string PartName, string? Revision, DateOnly? Printed, string Source, bool OfOneBuild, string? Serial = null)
{
    /// <summary>The words that its writers add, in the language it is written in.</summary>
    public Wording Wording { get; init; } = Wording.English;
}

/// <summary>One paper, free of any format.</summary>
internal sealed record Document
{
    /// <summary>What kind of paper it is: "Traveller".</summary>
    public required string Kind { get; init; }

    /// <summary>What every page says about itself.</summary>
    public required Identity Identity { get; init; }

    /// <summary>Paper size.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>Whether it lies on its side: a wide table.</summary>
    public bool Landscape { get; init; }

    /// <summary>Whether it is read at the bench, from a metre away and with gloves on: large type, a page for each station.</summary>
    public required bool ForTheBench { get; init; }

    /// <summary>
    /// Whether its stations are read by one pair of hands in one place, one after the other: they may then stand on one sheet, as many as fit on it whole.
    /// </summary>
    public bool OnePlace { get; init; }

    /// <summary>The stations in order.</summary>
    public required ImmutableArray<Station> Stations { get; init; }

    /// <summary>The same content as one rectangular table, for formats that hold just that; or null.</summary>
    public DataTable? Data { get; init; }

    /// <summary>The heading of the paper.</summary>
    public string Title => $"{Kind}: {Identity.Part}";
}

/// <summary>What one pair of hands does in one place: one page where it fits.</summary>
internal sealed record Station(string Title, ImmutableArray<Block> Blocks);

/// <summary>A rectangular table of typed values.</summary>
/// <param name="Columns">Names of the columns.</param>
/// <param name="Rows">Rows of as many values as there are columns: string, double, decimal, int, DateOnly, <see cref="Sum"/> or null.</param>
internal sealed record DataTable(ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<object?>> Rows);

/// <summary>A value that adds up others of its column: a workbook holds it as a formula, other formats its total.</summary>
/// <param name="Total">The sum: double or decimal.</param>
/// <param name="Rows">Which rows of the table it adds up, from 0, in ascending order; at least one.</param>
internal sealed record Sum(object Total, ImmutableArray<int> Rows);
