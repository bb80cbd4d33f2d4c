using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Travellers;

/// <summary>What the stations of one traveller share: the plan, the clock and the count of steps, which runs through all pages.</summary>
internal sealed class TravellerContext(PaperInput input)
{
    private int _steps;

    public PaperContext Paper { get; } = new(input);

    public WorkClock Clock { get; } = new(input.Plan);

    public Plan Plan => Paper.Plan;

    public Part Part => Paper.Part;

    public QuantityText Text => Paper.Text;

    public Process Process => Part.Process.Value;

    /// <summary>Whether resin is laid on with brush and roller.</summary>
    public bool IsWet => Process is Process.Hand or Process.Bagged;

    /// <summary>Names of the halves; empty when the mould is in one piece. Two nameless sides are called 1 and 2.</summary>
    public ImmutableArray<string> Sides => Part.Mould is { Halves: { IsEmpty: false } halves }
        ? halves
        : Plan.Geometry is { Sides: > 1 } geometry ? [.. Enumerable.Range(1, geometry.Sides).Select(Numbers.Whole)] : [];

    /// <summary>Columns of a table of steps.</summary>
    public static ImmutableArray<Column> StepColumns =>
        [new("No.", Align.Centre, 12), new("Do this", NamesTheRow: true), new("Target", WidthMm: 44), new("Actual", WidthMm: 40), new("Time, by", WidthMm: 22)];

    /// <summary>A step with a target and a space for what it really was.</summary>
    public CellRow Step(Phrase what, Cell target, Blank actual, string? note = null) =>
        new([Next(), new TextCell(what, note), target, actual, new Blank("time and initials")]);

    /// <summary>A step that is done or not done.</summary>
    public CellRow Tick(Phrase what, Cell? target = null, string? note = null, ImmutableArray<string> boxes = default) =>
        new([Next(), new TextCell(what, note), target ?? "", new TickCell(boxes.IsDefault ? [""] : boxes), new Blank("time and initials")]);

    /// <summary>A table of steps.</summary>
    public static Table Steps(string caption, IEnumerable<Row> rows) => new(caption, StepColumns, [.. rows], TableUse.Steps);

    /// <summary>A caution box with the cautions of a station, or nothing when none applies.</summary>
    public IEnumerable<Block> Caution(params ReadOnlySpan<Danger> dangers)
    {
        var lines = Cautions.Of(Plan, dangers);
        return lines.IsEmpty ? [] : [new Caution("Caution", [.. lines.Select(line => (Phrase)line.Text)])];
    }

    private Phrase Next() => Phrase.Strong(Numbers.Whole(++_steps));
}
