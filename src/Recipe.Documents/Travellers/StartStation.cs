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
        "Start",
        [.. Stop(context), Header(context), .. Safety(context), .. Clock(context), .. Conditions(context)]);

    private static IEnumerable<Block> Stop(BenchContext context)
    {
        var errors = Notes.Open(context.Paper).Where(finding => finding.Severity == Severity.Error).ToList();
        if (errors.Count > 0)
        {
            yield return new Caution(
                $"STOP: {Words.Count(errors.Count, "error is", "errors are")} open. Mix no resin.",
                [.. errors.Select(error => (Phrase)$"{error.Descriptor.Code} {error.Message}")]);
        }
    }

    private static Facts Header(BenchContext context)
    {
        var part = context.Part;
        var made = part.Mould is { } mould ? $"{Words.Of(part.Process.Value)}, in {mould.Label}" : Words.Of(part.Process.Value);
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new("Job, customer", Phrase.Empty, new Blank("job and customer")));
        facts.Add(new("Due", Phrase.Empty, new Blank("when it is due")));
        facts.Add(new("Built by", Phrase.Empty, new Blank("who builds it")));
        facts.Add(new("First-off?", Phrase.Empty, new Blank("first-off after a change", "yes / no")));
        facts.Add(new("Made", part.Mould?.Pulls is { } pulls ? $"{made}, {Numbers.Whole(pulls.Value)} pulls so far" : made));
        if (part.VariantOf is { } original)
        {
            facts.Add(new("Variant of", original));
        }

        return new Facts(facts.ToImmutable());
    }

    private static IEnumerable<Block> Safety(BenchContext context)
    {
        yield return new Caution("Safety first",
        [
            .. Cautions.Of(context.Plan, Danger.Skin, Danger.Vapour, Danger.Peroxide, Danger.Exotherm, Danger.Load, Danger.DataSheet).Select(caution => (Phrase)caution.Text),
            .. Cautions.HazardLines(context.Plan),
            .. Cautions.OfTheShop(context.Plan),
        ]);
    }

    /// <summary>Whether the job fits into the life of the resin.</summary>
    public static IEnumerable<Block> Clock(BenchContext context)
    {
        if (context.Process == Process.Prepreg)
        {
            yield break;
        }

        var clock = context.Clock;
        var items = ImmutableArray.CreateBuilder<KeyNumber>();
        items.Add(PotLife(context));
        if (context.Plan.Clock is { } plan)
        {
            items.Add(new(
                "Need: first mix to full vacuum",
                QuantityText.Minutes(plan.Need.Value, Rounding.Up),
                $"lay {QuantityText.Minutes(plan.WetOut.Value, Rounding.Up)}, bag {QuantityText.Minutes(plan.Bagging.Value, Rounding.Up)}, draw {QuantityText.Minutes(plan.DrawDown.Value, Rounding.Up)}"));
            items.Add(clock.MarginInMinutes is { } margin
                ? new("Margin", QuantityText.Minutes(margin), Margin(context, margin), Alarm: margin.Minutes < 0)
                : new("Margin", "not known", "no film life is given"));
            items.Add(clock.FullVacuumBy is { } by
                ? new(
                    "Full vacuum at the latest",
                    QuantityText.Minutes(by, Rounding.Down),
                    $"after first mix{Band(plan)}; pump on by {WorkClock.Minute(context.Wording, clock.PumpOnBy!.Value)}" + (clock.TimeOfDay(by) is { } time ? $"; {time} by the plan" : ""),
                    new Blank("By the clock"))
                : new("Full vacuum at the latest", "not known", "take the film life from the data sheet", new Blank("By the clock")));
        }

        items.AddRange(Fill(context));
        var start = context.Part.WetOut?.Start is { } planned ? $", first mix planned at {planned.Value.ToString("HH:mm", CultureInfo.InvariantCulture)}" : "";
        yield return new KeyNumbers($"The clock at {context.Text.Temperature(context.Plan.Conditions.Room.Value)}{start}", items.ToImmutable());
    }

    private static string Band(ClockPlan plan) => plan.FilmLifeBand is { Value: var band }
        ? $", {QuantityText.Minutes(band.Low, Rounding.Down)} to be sure"
        : "";

    private static IEnumerable<KeyNumber> Fill(BenchContext context)
    {
        if (context.Plan.Flow is not { } flow)
        {
            yield break;
        }

        var late = flow.Fill is null || flow.Fill.Value.Value > flow.Thickens.Value;
        var thick = $"thick after {QuantityText.Minutes(flow.Thickens.Value, Rounding.Down)}";
        yield return flow.Fill is { } fill
            ? new("Feed open to full, about", Short(fill.Value), $"{(flow.FillAtBest is { } best ? Short(best.Value) : "?")} to {(flow.FillAtWorst is { } worst ? Short(worst.Value) : "never")}; {thick}", Alarm: late)
            : new("Feed open to full", "never", $"the front stops after {context.Text.Size(flow.Reach.Value)}; {thick}", Alarm: true);
    }

    // Seconds to the nearest ten below two minutes: a mesh can be that quick.
    private static string Short(UnitsNet.Duration time) => time.Minutes < 2
        ? Numbers.Whole(Math.Max(1, (int)Math.Round(time.Seconds / 10)) * 10) + "\u00A0s"
        : QuantityText.Minutes(time, Rounding.Up);

    private static string? Margin(BenchContext context, UnitsNet.Duration margin) =>
        margin.Minutes < 0 ? "the job does not fit: do not start"
        : context.Paper.RestsOn(context.Plan.Clock!.FilmLife!.Value.RestsOn, context.Plan.Clock.Need.RestsOn) is null ? null
        : "partly assumed: see the cover";

    private static KeyNumber PotLife(BenchContext context)
    {
        if (context.Clock.Tightest is not { } pot)
        {
            return new("Pot life today", "not known", "take it from the data sheet");
        }

        var life = QuantityText.Minutes(pot.PotLife!.Value.Value, Rounding.Down);
        var which = context.Plan.Pots.Length > 1 ? $"pot {Numbers.Whole(pot.Number)}, the tightest; " : "";
        if (context.Process == Process.Infused)
        {
            return new("Pot life today", life, which + "mixed to clamped feed");
        }

        var margin = WorkClock.MarginInMinutesOf(pot)!.Value;
        var spare = margin.Minutes < 0 ? $"{which}{QuantityText.Minutes(-margin)} too short" : $"{which}{QuantityText.Minutes(margin)} to spare";
        return new("Pot life today", life, spare, Alarm: margin.Minutes < 0);
    }

    private static IEnumerable<Block> Conditions(BenchContext context)
    {
        var (conditions, text) = (context.Plan.Conditions, context.Text);
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new("Room", text.Temperature(conditions.Room.Value).ToString(), new Blank("room temperature", text.TemperatureUnit)));
        if (context.Process != Process.Prepreg)
        {
            facts.Add(new("Resin", text.Temperature(conditions.Resin.Value).ToString(), new Blank("resin temperature", text.TemperatureUnit)));
        }

        var humidity = context.Part.WetOut?.Humidity ?? context.Plan.Shop?.Humidity;
        facts.Add(new("Humidity", humidity is null ? Phrase.Empty : QuantityText.Written(humidity), new Blank("relative humidity", "%")));
        facts.Add(new("Coldest night", conditions.Night is { } night ? text.Temperature(night.Value).ToString() : Phrase.Empty, new Blank("coldest in the night", text.TemperatureUnit)));
        yield return new Heading(context.Process == Process.Prepreg ? "Conditions" : $"Conditions, {Words.Count(conditions.Laminators.Value, "laminator", "laminators")}");
        yield return new Facts(facts.ToImmutable());
    }
}
