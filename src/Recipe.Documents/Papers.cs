using System.Collections.Immutable;
using Recipe.Documents.Bags;
using Recipe.Documents.Changes;
using Recipe.Documents.Covers;
using Recipe.Documents.Cures;
using Recipe.Documents.Cuts;
using Recipe.Documents.Labels;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.LayUps;
using Recipe.Documents.Mixing;
using Recipe.Documents.Records;
using Recipe.Documents.Shapes;
using Recipe.Documents.Takeoffs;
using Recipe.Documents.Travellers;
using Recipe.Documents.Vacuums;
using Recipe.Documents.Writing;

namespace Recipe.Documents;

/// <summary>
/// The papers of a part. A paper is built once, as blocks without a format, and written by one writer for each format. A new paper
/// is a file that builds its blocks, a line in <see cref="All"/>, and its expected output in the tests.
/// </summary>
public static class Papers
{
    /// <summary>What the job is and what goes with it.</summary>
    public static PaperKind Cover { get; } = new(
        "cover", "Job cover", "what the job is, which papers go with it, what is open, accepted and assumed, and the card for who helps",
        CoverPaper.Build, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>What to take from the shelf or buy.</summary>
    public static PaperKind Takeoff { get; } = new(
        "takeoff", "Takeoff", "what to take from the shelf or buy, what it weighs and costs",
        TakeoffPaper.Build, PaperFormat.Markdown, PaperFormat.Html, PaperFormat.Csv, PaperFormat.Json);

    /// <summary>The sheet that goes with the part from station to station.</summary>
    public static PaperKind Traveller { get; } = new(
        "traveller", "Traveller", "every station of the build with targets, hold points and spaces to write in",
        TravellerPaper.Build, PaperFormat.Markdown, PaperFormat.Html)
    { Languages = Wordings.Tags };

    /// <summary>What is cut before anything is mixed.</summary>
    public static PaperKind CutList { get; } = new(
        "cut-list", "Cut list", "what is cut from which roll, how it lies there, and in which order it goes into the kit box",
        CutListPaper.Build, IsLaid, PaperFormat.Markdown, PaperFormat.Html, PaperFormat.Csv);

    /// <summary>The surface, and the cloth on it.</summary>
    public static PaperKind Shape { get; } = new(
        "shape", "Shape sheet", "the surface as measured, where each cloth is sheared on it, and what it looks like flat",
        ShapePaper.Build, ShapePaper.Applies, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>What is weighed into each pot.</summary>
    public static PaperKind MixCards { get; } = new(
        "mix-cards", "Mix cards", "one card for each pot: what is weighed, mixed and used up by when",
        MixCardsPaper.Build, MixCardsPaper.Applies, PaperFormat.Markdown, PaperFormat.Html, PaperFormat.Csv);

    /// <summary>Ply by ply from the mould.</summary>
    public static PaperKind LayUp { get; } = new(
        "lay-up", "Lay-up card", "ply by ply from the mould: direction, resin, minutes",
        LayUpPaper.Build, IsLaid, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>The bag from the part outwards.</summary>
    public static PaperKind Bag { get; } = new(
        "bag", "Bag sheet", "the layers of the bag from the part outwards, tape, port and gauge",
        BagPaper.Build, BagPaper.Applies, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>The level and its proof.</summary>
    public static PaperKind Vacuum { get; } = new(
        "vacuum", "Vacuum card", "the level to draw, the leak test and what to do when it leaks",
        VacuumPaper.Build, BagPaper.Applies, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>Heat against the clock.</summary>
    public static PaperKind Cure { get; } = new(
        "cure", "Cure chart", "heat and vacuum against the clock, with limits and spaces for readings",
        CurePaper.Build, input => IsLaid(input) || input.Plan.Cure is not null, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>What was found on the part.</summary>
    public static PaperKind Record { get; } = new(
        "record", "Build record", "what the part weighs and measures, its faults, why, and what changes",
        RecordPaper.Build, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>What a mould is and what was done to it.</summary>
    public static PaperKind Passport { get; } = new(
        "passport", "Mould passport", "what the mould is, how it is released, what it stands, pull by pull",
        PassportPaper.Build, IsLaidInAMould, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>Labels to cut out.</summary>
    public static PaperKind Labels { get; } = new(
        "labels", "Labels", "labels for the part, the kit box, pots, witness cups and offcuts, each with a code to scan",
        LabelsPaper.Build, PaperFormat.Markdown, PaperFormat.Html);

    /// <summary>What is different from the version built before.</summary>
    public static PaperKind ChangeNote { get; } = new(
        "change-note", "Change note", "what is different from the version before, what to expect and to watch",
        ChangeNotePaper.Build, input => input.Earlier is not null, PaperFormat.Markdown, PaperFormat.Html);

    // What is joined of finished parts is cut, laid and released by their papers.
    private static bool IsLaid(PaperInput input) => !input.Plan.Part.IsAssembly;

    // What stays in the part is no tool: no pull is counted of it.
    private static bool IsLaidInAMould(PaperInput input) => IsLaid(input) && input.Plan.Part.Mould is not { StaysInPart: true };

    /// <summary>All papers, in the order in which they are used.</summary>
    public static IReadOnlyList<PaperKind> All { get; } = [Cover, Takeoff, Traveller, CutList, Shape, MixCards, LayUp, Bag, Vacuum, Cure, Record, Passport, Labels, ChangeNote];

    /// <summary>BCP 47 tags of the languages there are; a paper that is not written in one is English (<see cref="PaperKind.Languages"/>).</summary>
    public static ImmutableArray<string> Languages => Wordings.Tags;

    /// <summary>The paper with this name, or null.</summary>
    public static PaperKind? Find(string name) => All.FirstOrDefault(kind => kind.Name.Equals(name, StringComparison.Ordinal));

    /// <summary>The hold points that the traveller of a part has: name and what is signed.</summary>
    public static IEnumerable<(string Id, string Title)> HoldPoints(PaperInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return TravellerPaper.Build(input).Stations.SelectMany(station => station.Blocks).OfType<HoldPoint>().Select(hold => (hold.Id, hold.Title)).Distinct();
    }

    /// <summary>
    /// Writes a paper. The text ends with a line end; lines end with LF, in CSV with CRLF. JSON is the whole plan, everything that
    /// any paper shows (<see cref="PlanJson"/>).
    /// </summary>
    /// <exception cref="ArgumentException">The paper cannot be written as that.</exception>
    public static string Write(PaperInput input, PaperKind kind, PaperFormat format)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(kind);
        if (!kind.Formats.Contains(format))
        {
            throw new ArgumentException($"A {kind.Name} is not written as {format}.", nameof(format));
        }

        return format switch
        {
            PaperFormat.Json => PlanJson.Write(input),
            _ => Write(kind.Build(input), format),
        };
    }

    /// <summary>Writes a built paper in a format that is text.</summary>
    internal static string Write(Document document, PaperFormat format) => format switch
    {
        PaperFormat.Csv => CsvWriter.Write(document.Data ?? throw new ArgumentException($"A {document.Kind} has no table.", nameof(document))),
        PaperFormat.Html => HtmlWriter.Write(document),
        PaperFormat.Markdown => MarkdownWriter.Write(document),
        _ => throw new ArgumentOutOfRangeException(nameof(format), format, "That is no format of text."),
    };
}
