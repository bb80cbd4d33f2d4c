using System.Collections.Immutable;
using Recipe.Documents.Cures;
using Recipe.Documents.Cuts;
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
    /// <summary>From the roll to the last ply: H2, H3 where resin is laid by hand, H4; for an infusion on to the bag, H5.</summary>
    public static Station LayUp(BenchContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(Route(context, [Cut(context)]));
        blocks.Add(HoldPoints.Kit(context));
        if (context.IsWet)
        {
            blocks.Add(HoldPoints.Resin(context));
            blocks.Add(Route(context, [.. Pots(context), Lay(context)]));
        }
        else
        {
            blocks.Add(Route(context, [Lay(context)]));
        }

        blocks.Add(HoldPoints.LayUp(context));
        if (context.Process != Process.Infused)
        {
            return new Station(context.IsWet ? context.Say("Cut, mix, lay up") : context.Say("Cut and lay up"), blocks.ToImmutable());
        }

        // Nothing hurries a dry stack: the bag follows on the same page.
        blocks.AddRange(Bagged(context));
        return new Station(context.Say("Cut, lay up dry, bag"), blocks.ToImmutable());
    }

    /// <summary>From the bag, H5, to the open mould, H6 and H7; the bag of an infusion is closed by then.</summary>
    public static Station Cure(BenchContext context)
    {
        var bags = context.IsBagged && context.Process != Process.Infused;
        return new Station(
            bags ? context.Say("Bag, vacuum, cure") : context.Say("Cure"),
            [
                .. bags ? Bagged(context) : [],
                Route(context, [Heat(context)]),
                HoldPoints.Cure(context),
                HoldPoints.Demould(context),
            ]);
    }

    /// <summary>Resin into the dry stack, H3.</summary>
    public static Station Infuse(BenchContext context) => new(
        context.Say("Mix and infuse"),
        [HoldPoints.Resin(context), context.SignedSteps("", [.. Pots(context), .. InfuseSteps.Of(context)]), InfuseSteps.IfBox(context)]);

    private static ImmutableArray<Block> Bagged(BenchContext context) => [Route(context, [Bag(context), Pump(context)]), HoldPoints.Leak(context)];

    private static CellRow Heat(BenchContext context)
    {
        var text = context.Text;
        var target = context.Plan.Cure is { Steps.IsEmpty: false } cure
            ? InMould(cure)
            : (Cell)context.Say("as the data sheet says");
        return Step(context.Say("Cure"), context.Say("Follow the cure chart."), target, new Blank(context.Say("hottest part"), text.TemperatureUnit));

        // What comes after the demoulding stands behind it, in the finish.
        BigCell InMould(CurePlan plan)
        {
            var (time, hottest) = CureStation.InMould(plan);
            return new BigCell(QuantityText.Span(time), context.Say($"hottest {text.Temperature(hottest).Main}"));
        }
    }

    private static CellRow Step(string station, string what, Cell target, Blank actual) => BenchContext.Step(Phrase.Strong(station + ".") + (" " + what), target, actual);

    private static Table Route(BenchContext context, IEnumerable<CellRow> rows) => context.SignedSteps("", rows);

    private static CellRow Cut(BenchContext context)
    {
        var pieces = KitPage.PiecesOf(context.Plan);
        return Step(
            context.Say("Cut and kit"), context.Say("Follow the cut list."),
            pieces > 0 ? new BigCell(Counts.Pieces(pieces, context.Wording)) : (Cell)context.Say("no size is known"),
            new Blank(context.Say("pieces counted")));
    }

    private static IEnumerable<CellRow> Pots(BenchContext context)
    {
        var text = context.Text;
        if (context.Plan.Pots.IsEmpty)
        {
            yield return BenchContext.Tick(context.Say("No pot could be planned. Mix nothing by guess."), context.Say("see the last page"));
        }

        foreach (var pot in context.Plan.Pots)
        {
            var number = Numbers.Whole(pot.Number);
            yield return Step(
            context.Say("Mix"), context.Say($"Pot {number}: mix card {number}."), new BigCell(text.Weight(MixRun.Total(text, pot)).Main, When(context, pot)), new Blank(context.Say("mixed"), text.ScaleUnit));
        }
    }

    private static string When(BenchContext context, PotPlan pot)
    {
        var planned = context.Clock.TimeOfDay(pot.MixedAt.Value, Rounding.Nearest);
        var minute = WorkClock.Minute(context.Wording, pot.MixedAt.Value, Rounding.Nearest);
        return planned is null ? context.Say($"at {minute}") : context.Say($"at {minute} ({planned})");
    }

    private static CellRow Lay(BenchContext context)
    {
        var last = context.Plan.Pots is [.., var pot] && context.IsWet ? pot : null;
        var target = last is null
            ? (Cell)context.Say("every ply ticked")
            : new BigCell(WorkClock.Minute(context.Wording, last.UsedUpAt.Value, Rounding.Up), context.Clock.TimeOfDay(last.UsedUpAt.Value, Rounding.Up) is { } time ? context.Say($"{time} by the plan") : null);
        return Step(
            context.Say("Lay up"), last is null ? context.Say("Follow the lay-up card.") : context.Say("Follow the lay-up card. Finished by"), target, new Blank(context.Say("last ply at")));
    }

    private static CellRow Bag(BenchContext context)
    {
        var target = context.Plan.Clock is { } clock ? new BigCell(QuantityText.Minutes(clock.Bagging.Value, Rounding.Up), context.Say("to lay and close it")) : (Cell)"";
        return Step(context.Say("Bag"), context.Say("Follow the bag sheet."), target, new Blank(context.Say("closed at")));
    }

    private static CellRow Pump(BenchContext context)
    {
        var text = context.Text;
        var latest = context.Clock.PumpOnBy is { } by ? context.Say($"pump on by {WorkClock.Minute(context.Wording, by)}") : null;
        var target = context.Plan.Vacuum is { } levels
            ? new BigCell(text.Pressure(levels.BelowAmbient.Value).Main, latest is null ? context.Say("below ambient") : context.Say($"below ambient; {latest}"))
            : (Cell)(latest ?? context.Say("no level is written"));
        return Step(
            context.Say("Vacuum"), context.Say("Follow the vacuum card."), target, new Blank(context.Say("vacuum below ambient"), text.PressureUnit));
    }
}
