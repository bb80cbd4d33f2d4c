using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Travellers;

/// <summary>
/// The cure of a join that is made after the cure of its parts: how long it stays clamped, how warm, when it may be loaded. The figures are those of the
/// sheets of what is in the seam, the slowest of them.
/// </summary>
internal static class JoinCure
{
    public static IEnumerable<Row> Rows(BenchContext context)
    {
        var text = context.Text;
        var systems = InTheSeam(context).ToList();
        yield return new GroupRow(context.Say("Cure of the join"));
        yield return systems.Select(system => system.Demould?.Value).OfType<TimeAt>().OrderByDescending(time => time.Time.Seconds).ToList() is [var firm, ..]
            ? BenchContext.Step(
                context.Say("Leave it clamped and still, at least"),
                new BigCell(Time(context, firm.Time), context.Say($"at {text.Temperature(firm.At).Main}, by the data sheet; colder takes longer")),
                new Blank(context.Say("from, to")))
            : BenchContext.Step(context.Say("Leave it clamped and still."), context.Say("as long as the data sheet says"), new Blank(context.Say("from, to")));
        if (systems.Select(system => system.MinimumTemperature?.Value).OfType<UnitsNet.Temperature>().OrderByDescending(least => least.Kelvins).ToList() is [var coldest, ..])
        {
            yield return BenchContext.Step(
                context.Say("Never colder than, nights too"), new BigCell(text.Temperature(coldest).Main), new Blank(context.Say("coldest"), text.TemperatureUnit));
        }

        yield return BenchContext.Tick(context.Say("Unclamp only when the leftover in its witness cup is hard and rings."), context.Say("soft? leave it clamped"));
        if (systems.Select(system => system.FullCure?.Value).OfType<TimeAt>().OrderByDescending(time => time.Time.Seconds).ToList() is [var full, ..])
        {
            yield return BenchContext.Tick(
                context.Say("Put no load on it before"), new BigCell(Time(context, full.Time), context.Say($"at {text.Temperature(full.At).Main}, by the data sheet")));
        }
    }

    // Whole days are said as days from three on.
    private static string Time(BenchContext context, UnitsNet.Duration time) =>
        time.Days >= 3 && Math.Abs(time.Days - Math.Round(time.Days)) < 1e-6 ? Counts.Days((int)Math.Round(time.Days), context.Wording) : QuantityText.Span(time);

    // What is mixed for the seam: its glue or filler, and the resin of its tape.
    private static IEnumerable<ResinSystem> InTheSeam(BenchContext context)
    {
        var mixed = context.Plan.OwnMixes.Where(mix => mix.Use != OwnMixUse.Coat).Select(mix => mix.System);
        var written = context.Part.Join is { Adhesive: { } glue } ? [glue] : Array.Empty<ResinSystem>();
        return mixed.Concat(written).DistinctBy(system => system.Name);
    }
}
