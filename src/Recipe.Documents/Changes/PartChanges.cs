using System.Collections.Immutable;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Planning.Comparing;
using Recipe.Text.Findings;

namespace Recipe.Documents.Changes;

/// <summary>All that is different between two versions of a part: what was written, and what it does.</summary>
internal static class PartChanges
{
    public const string Stack = "Plies, from the mould";
    public const string Effect = "What it does";
    public const string Found = "Findings";

    /// <summary>The stack, line by line. Lines that are the same are left out.</summary>
    public static ImmutableArray<ChangeRow> OfStack(Plan before, Plan after)
    {
        var rows = ImmutableArray.CreateBuilder<ChangeRow>();
        foreach (var change in StackComparison.Of(before.Stack, after.Stack).Where(change => change.IsChange))
        {
            var (was, now) = (Line(change.Before), Line(change.After));
            rows.Add(new(Stack, MarkOf(change), (change.After ?? change.Before)!.Item.Name, was, now, change is { Moved: true, Fate: not LineFate.Same } ? "moved too" : ""));
        }

        return rows.ToImmutable();
    }

    /// <summary>The lines that were written differently, by block. The lines of the ply list are left out where <see cref="OfStack"/> tells them.</summary>
    public static ImmutableArray<ChangeRow> OfLines(IEnumerable<WrittenChange> changes, string? thing, bool withoutPlies) =>
    [
        .. changes.Where(change => (thing is null || change.Thing == thing) && !(withoutPlies && change.Block == "plies"))
            .Select(change => new ChangeRow(
                GroupOf(change, thing),
                change.Moved ? ChangeMark.Moved : change.Was is null ? ChangeMark.Added : change.Now is null ? ChangeMark.Removed : ChangeMark.Changed,
                change.Word.Length > 0 ? change.Word : change.Thing,
                WrittenText.ForReading(change.Was ?? ""),
                WrittenText.ForReading(change.Now ?? ""))),
    ];

    /// <summary>The figures that differ as far as papers show it.</summary>
    public static ImmutableArray<ChangeRow> OfFigures(Plan before, Plan after, QuantityText text)
    {
        var rows = ImmutableArray.CreateBuilder<ChangeRow>();
        foreach (var figure in Figures.All.Where(figure => figure.Kind != PartFigure.Cost))
        {
            var (was, now) = (figure.Value(before), figure.Value(after));
            var (wasText, nowText) = (Write(figure, was), Write(figure, now));
            if (wasText != nowText)
            {
                rows.Add(new(Effect, Mark(was, now), figure.Label, wasText, nowText, was is { } a && now is { } b ? Figures.Difference(figure, text, a, b) : ""));
            }
        }

        rows.AddRange(OfCost(before.Cost, after.Cost));
        return rows.ToImmutable();

        string Write(Figure figure, double? value) => value is { } known ? figure.Text(text, known) : "not known";
    }

    /// <summary>Findings that are new, gone, or say other figures.</summary>
    public static ImmutableArray<ChangeRow> OfFindings(ImmutableArray<Finding> before, ImmutableArray<Finding> after)
    {
        var rows = ImmutableArray.CreateBuilder<ChangeRow>();
        var left = Fresh(after, before);
        foreach (var now in Fresh(before, after))
        {
            var was = left.FirstOrDefault(f => f.Descriptor.Code == now.Descriptor.Code);
            left = was is null ? left : left.Remove(was);
            rows.Add(new(Found, was is null ? ChangeMark.Added : ChangeMark.Changed, Name(now), was?.Message ?? "", now.Message));
        }

        rows.AddRange(left.Select(was => new ChangeRow(Found, ChangeMark.Removed, Name(was), was.Message, "")));
        return rows.ToImmutable();

        static string Name(Finding finding) =>
            $"{finding.Descriptor.Label}, {(finding.AcceptedBecause is null ? Words.Of(finding.Severity, Languages.Wording.English) : "accepted")}";
    }

    /// <summary>The findings of the later version that the earlier one did not have: of the same kind, with the same words.</summary>
    public static ImmutableArray<Finding> Fresh(ImmutableArray<Finding> before, ImmutableArray<Finding> after) => after.RemoveAll(now => before.Any(was =>
        was.Descriptor.Code == now.Descriptor.Code && was.Severity == now.Severity && was.Message == now.Message && was.AcceptedBecause is null == now.AcceptedBecause is null));

    private static IEnumerable<ChangeRow> OfCost(CostPlan? before, CostPlan? after)
    {
        var (was, now) = (Write(before), Write(after));
        if (was != now)
        {
            var difference = before is { } a && after is { } b && a.Currency == b.Currency
                ? (b.Total >= a.Total ? "+" : "-") + QuantityText.Money(Math.Abs(b.Total - a.Total), b.Currency)
                : "";
            yield return new(Effect, before is null ? ChangeMark.Added : after is null ? ChangeMark.Removed : ChangeMark.Changed, "Materials, all parts", was, now, difference);
        }

        static string Write(CostPlan? cost) => cost is null ? "not known" : QuantityText.Money(cost.Total, cost.Currency) + (cost.WithoutPrice > 0 ? $", {Words.Count(cost.WithoutPrice, "price", "prices")} missing" : "");
    }

    private static ChangeMark Mark(double? was, double? now) => was is null ? ChangeMark.Added : now is null ? ChangeMark.Removed : ChangeMark.Changed;

    /// <summary>What a line of the stack says, its number in front; nothing when there is none.</summary>
    public static string Line(StackPlan? line, bool named = false)
    {
        if (line is null)
        {
            return "";
        }

        var head = string.Join(' ', new[] { line.Number > 0 ? Numbers.Whole(line.Number) : null, named ? line.Item.Name : null }.OfType<string>());
        var says = WrittenText.ForReading(StackComparison.RestOf(line.Item));
        return head.Length == 0 ? says : $"{head}: {says}";
    }

    /// <summary>What happened to a line of the stack, by its mark.</summary>
    public static ChangeMark MarkOf(StackChange change) => change.Fate switch
    {
        LineFate.Added => ChangeMark.Added,
        LineFate.Removed => ChangeMark.Removed,
        LineFate.Renamed => ChangeMark.Renamed,
        LineFate.Same => ChangeMark.Moved,
        _ => ChangeMark.Changed,
    };

    private static string GroupOf(WrittenChange change, string? thing)
    {
        var block = WrittenText.InTitle(change.Block);
        return thing is not null ? (block.Length == 0 ? "The part" : block) : (block.Length == 0 ? change.Thing : $"{change.Thing}, {block}");
    }
}
