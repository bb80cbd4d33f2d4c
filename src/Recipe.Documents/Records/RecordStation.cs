using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Records;

/// <summary>Defects that were found, to count over many parts.</summary>
internal static class RecordStation
{
    private const int DefectLines = 3;

    /// <summary>Defects that can be counted over many parts; common words of the trade, two letters each.</summary>
    private static readonly ImmutableArray<(string Code, string Meaning)> Defects =
    [
        ("DR", "dry"), ("BR", "bridge"), ("VD", "void"), ("PH", "pinholes"), ("RR", "resin-rich"), ("WR", "wrinkle"), ("PP", "print-through"), ("ST", "stuck or torn"), ("SO", "soft"),
        ("WP", "warp"), ("DL", "delaminated"), ("MS", "ply missing"), ("CN", "contaminated"), ("EX", "exotherm"), ("LK", "vacuum lost"), ("TR", "trim error"), ("HV", "heavy"), ("LT", "light"),
    ];

    public static Station Build(BenchContext context) => new(
        "Record",
        [DefectTable(), Codes(), .. context.Foot("H9")]);

    private static Table DefectTable() => new(
        "Defects found",
        [new("Code", WidthMm: 41), new("Where, how large"), new("Cause"), new("Use, repair, scrap", WidthMm: 41)],
        [.. Enumerable.Range(0, DefectLines).Select(_ => new CellRow([new Blank("defect code"), new Blank("place and size"), new Blank("cause"), new Blank("use, repair or scrap")]))],
        TableUse.Steps);

    private static Paragraph Codes() => new("Codes: " + string.Join(", ", Defects.Select(defect => $"{defect.Code}\u00A0{defect.Meaning}")) + ".", Fine: true);
}
