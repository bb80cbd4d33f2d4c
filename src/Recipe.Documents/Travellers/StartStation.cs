using System.Collections.Immutable;
using System.Globalization;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Documents.Travellers;

/// <summary>The first page: what is built, what can hurt, and whether the job fits into the clock.</summary>
internal static class StartStation
{
    public static Station Build(BenchContext context) => new(
        context.Say("Start"),
        [.. Stop(context), Header(context), .. Safety(context), .. Clock(context), .. Conditions(context)]);

    private static IEnumerable<Block> Stop(BenchContext context)
    {
        var errors = Notes.Open(context.Paper).Where(finding => finding.Severity == Severity.Error).ToList();
        if (errors.Count > 0)
        {
            yield return new Caution(
                errors.Count == 1 ? context.Say("STOP: 1\u00A0error is open. Mix no resin.") : context.Say($"STOP: {Numbers.Whole(errors.Count)}\u00A0errors are open. Mix no resin."),
                [.. errors.Select(error => (Phrase)$"{error.Descriptor.ShortCode} {error.Message}")]);
        }
    }

    private static Facts Header(BenchContext context)
    {
        var part = context.Part;
        var process = Words.Of(part.Process.Value, context.Wording);
        var made = part.IsAssembly ? context.Say($"joined of {string.Join(", ", part.Join!.Parts)}") : part.Mould is not { } mould ? process : context.StaysOn ? context.Say($"{process}, on {mould.Label}") : context.IsWrapped ? context.Say($"{process}, round {mould.Label}") : context.Say($"{process}, in {mould.Label}");
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new(context.Say("Job, customer"), Phrase.Empty, new Blank(context.Say("job and customer"))));
        facts.Add(new(context.Say("Due"), Phrase.Empty, new Blank(context.Say("when it is due"))));
        facts.Add(new(context.Say("Built by"), Phrase.Empty, new Blank(context.Say("who builds it"))));
        facts.Add(new(context.Say("First-off?"), Phrase.Empty, new Blank(context.Say("first-off after a change"), context.Say("yes / no"))));
        facts.Add(new(context.Say("Made"), part.Mould?.Pulls is { } pulls ? context.Say($"{made}, {Numbers.Whole(pulls.Value)} pulls so far") : made));
        if (part.VariantOf is { } original)
        {
            facts.Add(new(context.Say("Variant of"), original));
        }

        return new Facts(facts.ToImmutable());
    }

    private static IEnumerable<Block> Safety(BenchContext context)
    {
        yield return new Caution(context.Say("Safety first"),
        [
            .. Cautions.Of(context.Plan, context.Wording, Danger.Skin, Danger.Vapour, Danger.Peroxide, Danger.Exotherm, Danger.Load, Danger.DataSheet).Select(caution => (Phrase)caution.Text),
            .. Cautions.HazardLines(context.Plan),
            .. Cautions.OfTheShop(context.Plan, context.Wording),
        ]);
    }

    /// <summary>Whether the job fits into the life of the resin.</summary>
    public static IEnumerable<Block> Clock(BenchContext context)
    {
        // The life of an adhesive stands on its card.
        if (context.Process == Process.Prepreg || context.Part.IsAssembly)
        {
            yield break;
        }

        var clock = context.Clock;
        var items = ImmutableArray.CreateBuilder<KeyNumber>();
        items.Add(PotLife(context));
        if (context.Plan.Clock is { } plan)
        {
            items.Add(new(
                context.Say("Need: first mix to full vacuum"),
                QuantityText.Minutes(plan.Need.Value, Rounding.Up),
                context.Say($"lay {QuantityText.Minutes(plan.WetOut.Value, Rounding.Up)}, bag {QuantityText.Minutes(plan.Bagging.Value, Rounding.Up)}, draw {QuantityText.Minutes(plan.DrawDown.Value, Rounding.Up)}")));
            items.Add(clock.MarginInMinutes is { } margin
                ? new(context.Say("Margin"), QuantityText.Minutes(margin), Margin(context, margin), Alarm: margin.Minutes < 0)
                : new(context.Say("Margin"), context.Say("not known"), context.Say("no film life is given")));
            items.Add(clock.FullVacuumBy is { } by
                ? new(
                    context.Say("Full vacuum at the latest"),
                    QuantityText.Minutes(by, Rounding.Down),
                    Remarks(After(context, plan), context.Say($"pump on by {WorkClock.Minute(context.Wording, clock.PumpOnBy!.Value)}"), clock.TimeOfDay(by) is { } time ? context.Say($"{time} by the plan") : null),
                    new Blank(context.Say("By the clock")))
                : new(context.Say("Full vacuum at the latest"), context.Say("not known"), context.Say("take the film life from the data sheet"), new Blank(context.Say("By the clock"))));
        }

        items.AddRange(Fill(context));
        // Pots live by the temperature of the resin, what is spread by that of the mould.
        var (air, film) = (context.Text.Temperature(context.Plan.Conditions.Room.Value).ToString(), context.Plan.Conditions.Film is { } on ? context.Text.Temperature(on.Value).ToString() : "");
        var room = film.Length == 0 || film == air ? air : context.Say($"{air}, on a mould at {film}");
        var caption = context.Part.WetOut?.Start is { } planned
            ? context.Say($"The clock at {room}, first mix planned at {planned.Value.ToString("HH:mm", CultureInfo.InvariantCulture)}")
            : context.Say($"The clock at {room}");
        yield return new KeyNumbers(caption, items.ToImmutable());
    }

    private static string After(BenchContext context, ClockPlan plan) => plan.FilmLifeBand is { Value: var band }
        ? context.Say($"after first mix, {QuantityText.Minutes(band.Low, Rounding.Down)} to be sure")
        : context.Say("after first mix");

    // Remarks that stand each for itself.
    private static string Remarks(params IEnumerable<string?> remarks) => string.Join("; ", remarks.OfType<string>());

    private static IEnumerable<KeyNumber> Fill(BenchContext context)
    {
        if (context.Plan.Flow is not { } flow)
        {
            yield break;
        }

        var late = flow.Fill is null || flow.Fill.Value.Value > flow.Thickens.Value;
        var thick = context.Say($"thick after {QuantityText.Minutes(flow.Thickens.Value, Rounding.Down)}");
        var never = context.Say("never");
        yield return flow.Fill is { } fill
            ? new(
                context.Say("Feed open to full, about"),
                Short(fill.Value),
                Remarks(context.Say($"{(flow.FillAtBest is { } best ? Short(best.Value) : "?")} to {(flow.FillAtWorst is { } worst ? Short(worst.Value) : never)}"), thick),
                Alarm: late)
            : new(context.Say("Feed open to full"), never, Remarks(context.Say($"the front stops after {context.Text.Size(flow.Reach.Value)}"), thick), Alarm: true);
    }

    /// <summary>The time of a fill: seconds to the nearest ten below two minutes, since a mesh can be that quick.</summary>
    public static string Short(UnitsNet.Duration time) => time.Minutes < 2
        ? Numbers.Whole(Math.Max(1, (int)Math.Round(time.Seconds / 10)) * 10) + "\u00A0s"
        : QuantityText.Minutes(time, Rounding.Up);

    private static string? Margin(BenchContext context, UnitsNet.Duration margin) =>
        margin.Minutes < 0 ? context.Say("the job does not fit: do not start")
        : context.Paper.RestsOn(context.Plan.Clock!.FilmLife!.Value.RestsOn, context.Plan.Clock.Need.RestsOn) is null ? null
        : context.Say("partly assumed: see the cover");

    private static KeyNumber PotLife(BenchContext context)
    {
        if (context.Clock.Tightest is not { } pot)
        {
            return new(context.Say("Pot life today"), context.Say("not known"), context.Say("take it from the data sheet"));
        }

        var life = QuantityText.Minutes(pot.PotLife!.Value.Value, Rounding.Down);
        var which = context.Plan.Pots.Length > 1 ? context.Say($"pot {Numbers.Whole(pot.Number)}, the tightest") : null;
        if (context.Process == Process.Infused)
        {
            return new(context.Say("Pot life today"), life, Remarks(which, context.Say("mixed to clamped feed")));
        }

        var margin = WorkClock.MarginInMinutesOf(pot)!.Value;
        var spare = margin.Minutes < 0 ? context.Say($"{QuantityText.Minutes(-margin)} too short") : context.Say($"{QuantityText.Minutes(margin)} to spare");
        return new(context.Say("Pot life today"), life, Remarks(which, spare), Alarm: margin.Minutes < 0);
    }

    private static IEnumerable<Block> Conditions(BenchContext context)
    {
        var (conditions, text) = (context.Plan.Conditions, context.Text);
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new(context.Say("Room"), text.Temperature(conditions.Room.Value).ToString(), new Blank(context.Say("room temperature"), text.TemperatureUnit)));
        if (context.Process != Process.Prepreg)
        {
            facts.Add(new(context.Say("Resin"), text.Temperature(conditions.Resin.Value).ToString(), new Blank(context.Say("resin temperature"), text.TemperatureUnit)));
        }

        var humidity = context.Part.WetOut?.Humidity ?? context.Plan.Shop?.Humidity;
        facts.Add(new(context.Say("Humidity"), humidity is null ? Phrase.Empty : QuantityText.Written(humidity), new Blank(context.Say("relative humidity"), "%")));
        facts.Add(new(context.Say("Coldest night"), conditions.Night is { } night ? text.Temperature(night.Value).ToString() : Phrase.Empty, new Blank(context.Say("coldest in the night"), text.TemperatureUnit)));
        yield return new Heading(context.Process == Process.Prepreg ? context.Say("Conditions") : context.Say($"Conditions, {Counts.Laminators(conditions.Laminators.Value, context.Wording)}"));
        yield return new Facts(facts.ToImmutable());
    }
}
