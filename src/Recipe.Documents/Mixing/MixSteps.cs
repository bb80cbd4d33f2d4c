using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>
/// Weighing and mixing one pot. Where the recipe writes the mixing down line by line, its order holds and each weighing begins at zero; else
/// the second liquid goes in until the scale shows the sum.
/// </summary>
internal static class MixSteps
{
    public static Table Of(PaperContext context, MixRun run, PotPlan pot)
    {
        var say = context.Wording;
        var rows = new List<Row>
        {
            Step(
                say.Say("Resin and hardener stand at"),
                new BigCell(context.Text.Temperature(context.Plan.Conditions.Resin.Value).Main, context.RestsOn(context.Plan.Conditions.Resin.RestsOn)),
                new Blank(say.Say("resin temperature"), context.Text.TemperatureUnit)),
        };
        if (pot is not { Resin: { } resin, Hardener: { } hardener })
        {
            rows.Add(Step(say.Say("No mix ratio is known. Mix by the data sheet."), new BigCell(context.Text.Weight(pot.Mass.Value).Main, say.Say("in all")), new Blank(say.Say("mixed"), context.Text.ScaleUnit)));
        }
        else if (run.Own is null && IsWritten(context.Part))
        {
            rows.AddRange(Written(context, run, resin.Value, hardener.Value, pot.HardenerTolerance));
        }
        else
        {
            rows.AddRange(Usual(context, run, resin.Value, hardener.Value, pot.HardenerTolerance));
        }

        if (run.Own is not null && run.System.Filler is { } filler)
        {
            rows.Add(Filler(context, run.System, filler, pot));
        }

        if (run.Own is null && context.Part.WetOut?.Tray?.Value == true)
        {
            rows.Add(Tick(say.Say("Pour it into the tray at once."), ""));
        }

        return new Table(
            "",
            [new(say.Say("Do this"), NamesTheRow: true), new(say.Say("Target"), WidthMm: 62), new(say.Say("Actual"), WidthMm: 42)],
            [.. rows],
            TableUse.Steps);
    }

    // Resin and hardener among the lines; else the block says only some of it.
    private static bool IsWritten(Part part) =>
        part.Mixing is { } mixing && mixing.Steps.Any(step => step.Action == MixAction.AddResin) && mixing.Steps.Any(step => step.Action == MixAction.AddHardener);

    private static IEnumerable<Row> Usual(PaperContext context, MixRun run, Mass resin, Mass hardener, Mass? tolerance)
    {
        var (say, text) = (context.Wording, context.Text);
        yield return Step(say.Say("Clean cup, scale at zero. Pour ● A until it shows"), new BigCell(text.Weight(resin).Main, text.Weight(resin).Beside ?? Cup(context)), new Blank(say.Say("A poured"), text.ScaleUnit));
        if (run.TakesPeroxide)
        {
            yield return Tick(say.Say("Stir the accelerator in, if it is not in already. Carry it away."), say.Say("fully stirred in"));
        }

        var total = text.OnScale(resin) + text.OnScale(hardener);
        var alone = say.Say($"■ B {text.Weight(hardener).Main}");
        var note = tolerance is { } off ? $"{Band(context, total, off)}; {alone}" : alone;
        yield return Step(
            run.TakesPeroxide ? say.Say("Peroxide last: add ■ B until the scale shows") : say.Say("Add ■ B until the scale shows"),
            new BigCell(text.Weight(total).Main, note), new Blank(say.Say("scale shows"), text.ScaleUnit));
        yield return Tick(
            say.Say("Mix, scrape. Second clean cup, mix again."),
            context.Part.WetOut?.Mixing is { } time ? new BigCell(QuantityText.Span(time.Value), say.Say("leave the scrapings behind")) : say.Say("until no streak is left"),
            boxes: 2);
    }

    private static IEnumerable<Row> Written(PaperContext context, MixRun run, Mass resin, Mass hardener, Mass? tolerance)
    {
        var say = context.Wording;
        foreach (var step in context.Part.Mixing!.Steps)
        {
            yield return step.Action switch
            {
                MixAction.AddResin => Weigh(context, say.Say("Clean cup, scale at zero. Pour ● A."), resin, say.Say("A poured"), null, Cup(context)),
                MixAction.AddHardener => Weigh(
                    context, run.TakesPeroxide ? say.Say("Set to zero. Add the peroxide, ■ B.") : say.Say("Set to zero. Add hardener, ■ B."), hardener, say.Say("B added"), tolerance),
                MixAction.Stir => Tick(say.Say("Stir."), step.Time is { } time ? new BigCell(QuantityText.Span(time.Value)) : say.Say("until no streak is left")),
                MixAction.Scrape => Tick(say.Say("Scrape sides, corners and stick."), say.Say("into the pot")),
                MixAction.SecondCup => Tick(say.Say("Pour into a second clean cup. Stir again."), say.Say("leave the scrapings behind")),
                _ when step.Parts is { } parts => Weigh(
                    context, say.Say($"Set to zero. Add the {Name(context, step.Action)}."), resin * (parts.Value / 100), Name(context, step.Action), null, say.Say($"{Numbers.Significant(parts.Value, 3)} parts to 100 of A")),
                _ => Tick(say.Say($"Add the {Name(context, step.Action)}."), say.Say("as the maker says")),
            };
        }
    }

    // Filler hides streaks and upsets the ratio, so it comes last; how much it takes is seen, and weighed for the next time (common practice).
    private static CellRow Filler(PaperContext context, ResinSystem system, string filler, PotPlan pot)
    {
        var say = context.Wording;
        var target = system.FillerParts is { } parts && pot.Resin is { } resin
            ? new BigCell(context.Text.Weight(resin.Value * (parts.Value / 100)).Main, say.Say($"{Numbers.Significant(parts.Value, 3)} parts to 100 of A; mask on"))
            : (Cell)say.Say("a little at a time, until a peak stands; mask on");
        return Step(say.Say($"Scale to zero. Filler last: stir in {WrittenText.ForReading(filler)}."), target, new Blank(say.Say("filler added"), context.Text.ScaleUnit));
    }

    private static string Cup(PaperContext context) => context.Part.Mixing?.Cup?.Value switch
    {
        MixingCup.Waxed => context.Wording.Say("the recipe says a waxed cup"),
        MixingCup.Foam => context.Wording.Say("the recipe says a foam cup"),
        _ => context.Wording.Say("no wax, no foam; a wide cup"),
    };

    // A band that holds no second step of the scale is none.
    private static string Band(PaperContext context, Mass mass, Mass off)
    {
        var (say, text) = (context.Wording, context.Text);
        var (least, most) = (text.OnScale(mass - off, Rounding.Up), text.OnScale(mass + off, Rounding.Down));
        return most.Grams - least.Grams > 1e-9
            ? say.Say($"{text.Weight(mass - off, Rounding.Up).Main} to {text.Weight(mass + off, Rounding.Down).Main}")
            : say.Say($"exactly: {text.AboutOnScale(off).Main} more or less is less than this scale shows");
    }

    private static CellRow Weigh(PaperContext context, string what, Mass mass, string blank, Mass? tolerance, string? note = null)
    {
        var text = context.Text;
        var band = tolerance is { } off ? Band(context, mass, off) : note;
        return Step(what, new BigCell(text.Weight(mass).Main, band), new Blank(blank, text.ScaleUnit));
    }

    private static CellRow Step(string what, Cell target, Blank blank) => new([what, target, blank]);

    private static CellRow Tick(string what, Cell target, int boxes = 1) => new([what, target, TickCell.Of(boxes)]);

    private static string Name(PaperContext context, MixAction action) => action switch
    {
        MixAction.AddAccelerator => context.Wording.Say("accelerator"),
        MixAction.AddFiller => context.Wording.Say("filler"),
        MixAction.AddPigment => context.Wording.Say("pigment"),
        _ => context.Wording.Say("thinner"),
    };
}
