using System.Collections.Immutable;
using Recipe.Documents.Cuts;
using Recipe.Documents.Layout;
using Recipe.Documents.LayUps;
using Recipe.Documents.Mixing;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Travellers;

/// <summary>Hold points of stations that have a card of their own. They are signed here and nowhere else.</summary>
internal static class HoldPoints
{
    /// <summary>H2: everything is cut.</summary>
    public static HoldPoint Kit(BenchContext context)
    {
        var pieces = KitPage.PiecesOf(context.Plan);

        // The cloth alone, the same sum of printed pieces as in the cut list and in the record: history takes what it says off the part.
        var cloth = context.Plan.Stack.Where(line => line.Item is PlyItem).ToList();
        var weighed = cloth.Where(line => line.CutMass is not null).ToList();
        var mass = weighed.Aggregate(Mass.Zero, (sum, line) => sum + context.Text.OnScale(line.CutMass!.Value.Value));
        var pieceLine = context.Say($"{Counts.Pieces(pieces, context.Wording)} counted, numbered, this side up");
        ImmutableArray<Phrase> laidOut = context.IsBagged ? [context.Say("Bag, tape, port and hose laid out; dry bag tried once")] : [];
        if (cloth.Count == 0 && !context.Plan.Stack.IsEmpty)
        {
            return new HoldPoint("H2", context.Say("kit complete"), [pieceLine, .. laidOut], []);
        }

        var kit = weighed.Count == cloth.Count && weighed.Count > 0
            ? context.SayPhrase($"Cloth in the kit weighs {Phrase.Strong(context.Text.Weight(mass).ToString())}")
            : context.Say("Cloth in the kit weighed (no target: a weight is missing in the recipe)");
        return new HoldPoint(
            "H2",
            context.Say("kit complete"),
            [pieceLine, kit, .. laidOut],
            [new Blank(context.Say("Cloth weight"), context.Text.ScaleUnit)]);
    }

    /// <summary>H3: ready to mix.</summary>
    public static HoldPoint Resin(BenchContext context) => new(
        "H3",
        context.Say("resin ready"),
        [context.Say("Lots written on the last page, in date"), Liquids.Ratio(context), context.Say($"Scale level, at zero, shows {context.Text.ScaleStep} steps")],
        [new Blank(context.Say("Resin temperature"), context.Text.TemperatureUnit)]);

    /// <summary>H4: every ply lies.</summary>
    public static HoldPoint LayUp(BenchContext context)
    {
        var plies = context.Plan.Stack.Where(line => line.Item is PlyItem).Sum(line => StackNames.Plies(line.Item));
        var ticked = plies == 0 ? context.Say("Every line of the lay-up card ticked") : context.Say($"{Counts.Plies(plies, context.Wording)} ticked");
        ImmutableArray<Phrase> checks = context.IsWet
            ? [ticked, context.IsWrapped ? context.Say("No white, no pool, no crease, laps down") : context.Say("No white, no pool, corners down"), .. Sum(context)]
            : [ticked, context.IsWrapped ? context.Say("Laps down, no crease, nothing moved, no thread under the tape") : context.Say("Corners down, nothing moved, no thread under the tape")];
        return new HoldPoint("H4", context.Say("lay-up complete"), checks, context.IsWet ? [new Blank(context.Say("Resin used"), context.Text.ScaleUnit)] : []);
    }

    private static IEnumerable<Phrase> Sum(BenchContext context)
    {
        var held = context.Plan.Stack.Select(LayUpStation.TargetOf).OfType<Computed<Mass>>().ToList();
        if (held.Count > 0)
        {
            var sum = Mass.FromKilograms(held.Sum(target => context.Text.OnScale(target.Value).Kilograms));
            yield return context.SayPhrase($"Resin laid on the plies: {Phrase.Strong(context.Text.Weight(sum).ToString())}");
        }
    }

    /// <summary>H5: the bag holds.</summary>
    public static HoldPoint Leak(BenchContext context) => new(
        "H5",
        context.Process == Process.Infused ? context.Say("leak check: no resin without it") : context.Say("leak check: no cure without it"),
        [context.Bags.Length > 1 ? context.Say("Level reached, rise within its limit, in every bag") : context.Say("Level reached, rise within its limit")],
        [.. context.BlankEach(context.Say("Rise"), context.Text.PressureUnit)]);

    /// <summary>H6: cured.</summary>
    public static HoldPoint Cure(BenchContext context)
    {
        var held = context.Plan.Cure?.VacuumOff?.Value ?? context.Part.Vacuum?.Hold?.Value;
        var vacuum = held is { } hold && hold > Duration.Zero ? context.Say($"Vacuum held {QuantityText.Span(hold)}") : context.Say("Vacuum held as written");
        return new HoldPoint(
            "H6",
            context.Say("cure done"),
            [context.Say("Time and temperature as written"), .. context.IsBagged ? [vacuum] : ImmutableArray<Phrase>.Empty],
            [new Blank(context.Say("Hottest"), context.Text.TemperatureUnit)]);
    }

    /// <summary>H7: the part may leave the mould.</summary>
    public static HoldPoint Demould(BenchContext context) => new HoldPoint(
        "H7",
        context.IsLeftOn ? context.Say("hard enough to go on") : context.IsWrapped ? context.Say("may come off the mandrel") : context.Say("may leave the mould"),
        [
            context.Say("Cool to the touch; a fingernail leaves no mark"),

            // Of a prepreg nothing is mixed, so there is no cup.
            .. context.Process == Process.Prepreg ? ImmutableArray<Phrase>.Empty : [context.Say("The leftover in the cup is hard and rings")],
        ],
        [new Blank(context.Say("Part"), context.Text.TemperatureUnit)]);
}
