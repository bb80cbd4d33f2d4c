using System.Collections.Immutable;
using Recipe.Documents.Bags;
using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Travellers;

/// <summary>Stations that have a card of their own: a line or few that name it, and the hold point behind it.</summary>
internal static class RouteStation
{
    /// <summary>From the roll to the last ply: H2, H3 where resin is laid by hand, H4.</summary>
    public static Station LayUp(BenchContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(Route([Cut(context)]));
        blocks.Add(HoldPoints.Kit(context));
        if (context.IsWet)
        {
            blocks.Add(HoldPoints.Resin(context));
            blocks.Add(Route([.. Pots(context), Lay(context)]));
        }
        else
        {
            blocks.Add(Route([Lay(context)]));
        }

        blocks.Add(HoldPoints.LayUp(context));
        return new Station(context.Say(context.IsWet ? "Cut, mix, lay up" : "Cut and lay up dry"), blocks.ToImmutable());
    }

    /// <summary>The bag and its proof, H5; null for a part without either.</summary>
    public static Station? Vacuum(BenchContext context) => BagPaper.Applies(context.Paper.Input)
        ? new Station(context.Say("Bag and vacuum"), [Route([Bag(context), Pump(context)]), HoldPoints.Leak(context)])
        : null;

    /// <summary>Resin into the dry stack, after H5: H3.</summary>
    public static Station Infuse(BenchContext context) => new(
        context.Say("Mix and infuse"),
        [HoldPoints.Resin(context), Route(Pots(context)), BenchContext.SignedSteps("", InfuseSteps.Of(context)), InfuseSteps.IfBox]);

    /// <summary>The cure as far as the part is in the mould, H6.</summary>
    public static Station Cure(BenchContext context)
    {
        var text = context.Text;
        var target = context.Plan.Cure is { Steps.IsEmpty: false } cure
            ? new BigCell(QuantityText.Span(cure.Total.Value), context.Say($"hottest {text.Temperature(cure.Peak.Value).Main}"))
            : (Cell)context.Say("as the data sheet says");
        var step = BenchContext.Step(context.Say("Cure by the cure chart."), target, new Blank(context.Say("hottest part"), text.TemperatureUnit));
        return new Station(context.Say("Cure"), [Route([Named(context.Say("Cure"), step)]), HoldPoints.Cure(context)]);
    }

    private static Table Route(IEnumerable<CellRow> rows) => new("", BenchContext.RouteColumns, [.. rows.Select(BenchContext.Signed)], TableUse.Steps);

    // The station stands between the number and what is done there.
    private static CellRow Named(string station, CellRow step) => step with { Cells = step.Cells.Insert(1, new TextCell(Phrase.Strong(station))) };

    private static CellRow Cut(BenchContext context)
    {
        var pieces = context.Plan.Stack.Sum(line => line.Pieces.Sum(piece => piece.Count));
        return Named(context.Say("Cut and kit"), BenchContext.Step(
            context.Say("Cut every piece by the cut list. Cut the bag too."),
            pieces > 0 ? new BigCell(Words.Count(pieces, "piece", "pieces")) : (Cell)context.Say("no size is known"),
            new Blank(context.Say("pieces counted"))));
    }

    private static IEnumerable<CellRow> Pots(BenchContext context)
    {
        var text = context.Text;
        if (context.Plan.Pots.IsEmpty)
        {
            yield return Named(context.Say("Mix"), BenchContext.Tick(context.Say("No pot could be planned. Mix nothing by guess."), context.Say("see the last page")));
        }

        foreach (var pot in context.Plan.Pots)
        {
            var number = Numbers.Whole(pot.Number);
            yield return Named(context.Say("Mix"), BenchContext.Step(
                context.Say($"Mix pot {number} by mix card {number}."), new BigCell(text.Weight(pot.Mass.Value).Main, When(context, pot)), new Blank(context.Say("mixed"), text.ScaleUnit)));
        }
    }

    private static string When(BenchContext context, PotPlan pot)
    {
        var planned = context.Clock.TimeOfDay(pot.MixedAt.Value, Rounding.Nearest);
        var minute = WorkClock.Minute(pot.MixedAt.Value, Rounding.Nearest);
        return planned is null ? context.Say($"at {minute}") : context.Say($"at {minute} ({planned})");
    }

    private static CellRow Lay(BenchContext context)
    {
        var last = context.Plan.Pots is [.., var pot] && context.IsWet ? pot : null;
        var target = last is null
            ? (Cell)context.Say("every ply ticked")
            : new BigCell(WorkClock.Minute(last.UsedUpAt.Value, Rounding.Up), context.Clock.TimeOfDay(last.UsedUpAt.Value, Rounding.Up) is { } time ? context.Say($"{time} by the plan") : null);
        return Named(context.Say("Lay up"), BenchContext.Step(
            last is null ? context.Say("Lay the stack by the lay-up card.") : context.Say("Lay the stack by the lay-up card. Finished by"), target, new Blank(context.Say("time of the last ply"))));
    }

    private static CellRow Bag(BenchContext context)
    {
        var target = context.Plan.Clock is { } clock ? new BigCell(QuantityText.Minutes(clock.Bagging.Value, Rounding.Up), context.Say("to lay and close it")) : (Cell)"";
        return Named(context.Say("Bag"), BenchContext.Step(context.Say("Close the bag by the bag sheet."), target, new Blank(context.Say("time closed"))));
    }

    private static CellRow Pump(BenchContext context)
    {
        var text = context.Text;
        var latest = context.Clock.PumpOnBy is { } by ? context.Say($"pump on by {WorkClock.Minute(by)}") : null;
        var target = context.Plan.Vacuum is { } levels
            ? new BigCell(text.Pressure(levels.BelowAmbient.Value).Main, latest is null ? context.Say("below ambient") : context.Say($"below ambient; {latest}"))
            : (Cell)(latest ?? context.Say("no level is written"));
        return Named(context.Say("Vacuum"), BenchContext.Step(
            context.Say("Draw down and test for leaks by the vacuum card."), target, new Blank(context.Say("vacuum below ambient"), text.PressureUnit)));
    }
}
