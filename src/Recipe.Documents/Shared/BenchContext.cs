using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Shared;

/// <summary>What the stations of one paper for the bench share: the plan, the clock and the shape of a step.</summary>
internal sealed class BenchContext(PaperInput input)
{
    public PaperContext Paper { get; } = new(input);

    public WorkClock Clock { get; } = new(input.Plan, PaperContext.WordingOf(input));

    public Plan Plan => Paper.Plan;

    public Part Part => Paper.Part;

    public QuantityText Text => Paper.Text;

    public Languages.Wording Wording => Paper.Wording;

    public Process Process => Part.Process.Value;

    /// <summary>Whether resin is laid on with brush and roller.</summary>
    public bool IsWet => Process is Process.Hand or Process.Bagged;

    /// <summary>Whether the part comes under a bag at all.</summary>
    public bool IsBagged => Paper.IsBagged;

    /// <summary>Whether the part is wrapped round its mould, a mandrel.</summary>
    public bool IsWrapped => Paper.IsWrapped;

    /// <summary>Whether the part is laid on what stays in it.</summary>
    public bool StaysOn => Paper.StaysOn;

    /// <summary>Whether it is left where it was laid.</summary>
    public bool IsLeftOn => Paper.IsLeftOn;

    /// <summary>Names of the halves; empty when the mould is in one piece. Two nameless sides are called 1 and 2.</summary>
    public ImmutableArray<string> Sides => Paper.Sides;

    /// <summary>Names of the bags: a half is a bag of its own; one without a name where there is one bag.</summary>
    public ImmutableArray<string> Bags => Paper.Bags;

    /// <summary>Feed lines of one bag of an infusion.</summary>
    public int FeedsOfABag => Paper.FeedsOfABag;

    /// <summary>Boxes for something that is done to each half, so many times.</summary>
    public TickCell TickEach(int times = 1) => Paper.TickEach(times);

    /// <summary>A space to write in for each bag, named where there are several.</summary>
    public IEnumerable<Blank> BlankEach(string what, string unit) => Bags.Select(bag => new Blank(bag.Length == 0 ? what : $"{what}, {bag}", unit));

    /// <summary>Columns of a table of steps. Who did them and when stands at the hold point that follows: a box of 40 mm for each step would cost half the page.</summary>
    public ImmutableArray<Column> StepColumns =>
        [new(Say("No."), Align.Centre, 12), new(Say("Do this"), NamesTheRow: true), new(Say("Target"), WidthMm: 52), new(Say("Actual"), WidthMm: 42)];

    /// <summary>Columns of a table of steps whose time matters as much as the reading.</summary>
    public ImmutableArray<Column> TimedStepColumns =>
        [new(Say("No."), Align.Centre, 12), new(Say("Do this"), NamesTheRow: true), new(Say("Target"), WidthMm: 43), new(Say("Actual"), WidthMm: 41), new(Say("Time"), WidthMm: 41)];

    /// <summary>Columns of a table of steps that are signed one by one. Time, name and inspector share one space: three of 40 mm would leave none for the step.</summary>
    public ImmutableArray<Column> SignedColumns =>
        [new(Say("No."), Align.Centre, 11), new(Say("Do this"), NamesTheRow: true), new(Say("Target, limits"), WidthMm: 40), new(Say("Actual"), WidthMm: 41), new(Say("Time, by, inspected"), WidthMm: 41)];

    /// <summary>A step with a target and a space for what it really was.</summary>
    public static CellRow Step(Phrase what, Cell target, Blank actual, string? note = null) =>
        new([StepNumbers.ToCome, new TextCell(what, note), target, actual]);

    /// <summary>A step that is done or not done.</summary>
    public static CellRow Tick(Phrase what, Cell? target = null, string? note = null, int boxes = 1) =>
        new([StepNumbers.ToCome, new TextCell(what, note), target ?? "", TickCell.Of(boxes)]);

    /// <summary>A step that is done for each bag.</summary>
    public static CellRow TickEach(BenchContext context, Phrase what, Cell? target = null) => new([StepNumbers.ToCome, new TextCell(what), target ?? "", context.TickEach()]);

    /// <summary>A table of steps.</summary>
    public Table Steps(string caption, IEnumerable<Row> rows) => new(caption, StepColumns, [.. rows], TableUse.Steps);

    /// <summary>A step with a space for the time, the name and the inspector.</summary>
    private CellRow Signed(CellRow step) => step with { Cells = [.. step.Cells, new Blank(Say("time, by, inspected by"))] };

    /// <summary>A table of steps that are signed one by one.</summary>
    public Table SignedSteps(string caption, IEnumerable<Row> rows) =>
        new(caption, SignedColumns, [.. rows.Select(row => row is CellRow step ? Signed(step) : row)], TableUse.Steps);

    /// <summary>A table of steps whose rows get a space for the time.</summary>
    public Table TimedSteps(string caption, IEnumerable<CellRow> rows) =>
        new(caption, TimedStepColumns, [.. rows.Select(row => row with { Cells = [.. row.Cells, new Blank(Say("time"))] })], TableUse.Steps);

    /// <summary>A sentence of the paper in its language.</summary>
    public string Say(string sentence) => Wording.Say(sentence);

    /// <summary>The same with values.</summary>
    public string Say(Languages.PhraseHandler sentence) => Wording.Say(sentence);

    /// <summary>The same with values that stand out.</summary>
    public Phrase SayPhrase(Languages.PhraseHandler sentence) => Wording.SayPhrase(sentence);

    /// <summary>A paper of the bench with these stations; steps are numbered through all of them.</summary>
    public Document Document(string kind, IEnumerable<Station> stations) => new()
    {
        Kind = kind,
        Identity = Paper.Identity(ofOneBuild: true),
        Paper = Paper.Paper,
        ForTheBench = true,
        Stations = StepNumbers.Run(stations),
    };

    /// <summary>
    /// What stands at the foot of a card: where its hold point is signed, and on which assumptions its numbers rest. Assumptions are
    /// listed on the cover, waivers and findings on the traveller too.
    /// </summary>
    public ImmutableArray<Block> Foot(string? hold, params IEnumerable<ImmutableArray<string>> restsOn)
    {
        var signed = hold is null ? "" : Say($"{hold} is signed on the traveller.") + " ";
        var assumed = Paper.RestsOn(restsOn) is { } ids ? Say($"This card {ids}: see the cover.") : "";
        var text = (signed + assumed).TrimEnd();
        return text.Length == 0 ? [] : [new Paragraph(text, Fine: true)];
    }

    /// <summary>A caution box with the cautions of a station, or nothing when none applies.</summary>
    public IEnumerable<Block> Caution(params ReadOnlySpan<Danger> dangers)
    {
        var lines = Cautions.Of(Plan, Wording, dangers);
        return lines.IsEmpty ? [] : [new Caution(Say("Caution"), [.. lines.Select(line => (Phrase)line.Text)])];
    }
}
