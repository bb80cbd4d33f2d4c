using CsCheck;
using Recipe.Model;
using Recipe.TestKit.Models;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning.Tests;

public class AssumptionTests
{
    [Fact]
    public void EveryKeyIsListedAndEveryListedOneIsRestedOn() => RandomParts.Model.Sample(
        model =>
        {
            var plan = Planner.Plan(model.Parts[0], model);
            var used = PlanDump.RestsOn(plan).SelectMany(keys => keys).ToHashSet(StringComparer.Ordinal);
            var listed = plan.Assumptions.Select(a => a.Key).ToList();
            Assert.Equal(used.Order(StringComparer.Ordinal), listed);
        },
        iter: 500);

    [Fact]
    public void KeysOfAValueStandInOrderAndOnce() => RandomParts.Model.Sample(
        model => Assert.All(
            PlanDump.RestsOn(Planner.Plan(model.Parts[0], model)),
            keys => Assert.Equal(keys.Distinct().Order(StringComparer.Ordinal), keys)),
        iter: 200);

    [Fact]
    public void AnUnmeasuredFigureOfTheBookGoesUnderTheBook()
    {
        var plan = Planned(Recipes.HatchLid());
        var limit = Assert.Single(plan.Cure!.Limits, l => l.Item == "bag-film nylon-bag-film").Limit;
        Assert.Equal("book.nylon-bag-film.heat-limit", Assert.Single(limit!.Value.RestsOn));
        var assumption = Assert.Single(plan.Assumptions, a => a.Key == "book.nylon-bag-film.heat-limit");
        Assert.Equal("120 degC", assumption.Value);
        Assert.Contains("like nylon-bag-film", assumption.HowToReplace, StringComparison.Ordinal);
    }

    [Fact]
    public void AnUnmeasuredFigureOfTheAuthorGoesUnderTheRecipe()
    {
        var cloth = Stuffs.Cloth("my-cloth", "160 g/m2") with { ArealWeight = Fig.ArealWeight("160 g/m2").Assumed("kitchen scale") };
        var plan = Planned(Recipes.Around(Flat(cloth)));
        Assert.Contains("recipe.my-cloth.areal-weight", plan.Stack[0].NetMass!.Value.RestsOn);
        Assert.Contains(plan.Assumptions, a => a is { Key: "recipe.my-cloth.areal-weight", Source: "kitchen scale" });
    }

    [Fact]
    public void WhatTheAuthorOrAHandbookSaysIsNoAssumption()
    {
        var cloth = Stuffs.Cloth("my-cloth", "160 g/m2") with { HandContent = Fig.Resin(50).FromBook("FAA AC 43.13-1B p. 3-3") };
        var plan = Planned(Recipes.Around(Flat(cloth)));
        Assert.Empty(plan.Stack[0].NetMass!.Value.RestsOn);
        Assert.Empty(plan.Stack[0].NetResin!.Value.RestsOn);
        Assert.Equal("default.trim-allowance", Assert.Single(plan.Stack[0].CutMass!.Value.RestsOn));
        Assert.Empty(plan.Laminate!.ResinFraction.RestsOn);
    }

    [Fact]
    public void AMaterialChosenForItsClassIsAnAssumption()
    {
        var part = Flat(Stuffs.Cloth("my-cloth", "160 g/m2")) with
        {
            Process = Fig.Stated(Process.Bagged, "bagged"),
            Bag = Recipes.Bag() with { Layers = [Stuffs.ByDefault(Stuffs.PeelPly), Stuffs.Layer(Stuffs.BagFilm)] },
        };
        var plan = Planned(Recipes.Around(part));
        Assert.Contains("default.material.peel-ply", plan.Bag!.Layers[0].Pickup!.Value.RestsOn);
        Assert.Contains(plan.Assumptions, a => a is { Key: "default.material.peel-ply", Value: "nylon-peel-ply-85" });
    }

    [Fact]
    public void TheTableHoldsEveryDefaultOnceInOrder()
    {
        var declared = typeof(Defaults).GetFields().Where(f => f.FieldType.IsAssignableTo(typeof(TradeDefault))).Select(f => (TradeDefault)f.GetValue(null)!);
        Assert.Superset(declared.Select(d => d.Key).ToHashSet(), Defaults.All.Select(d => d.Key).ToHashSet());
        Assert.Equal(Defaults.All.Select(d => d.Key).Distinct().Order(StringComparer.Ordinal), Defaults.All.Select(d => d.Key));
        Assert.All(Defaults.All, d =>
        {
            Assert.StartsWith("default.", d.Key, StringComparison.Ordinal);
            Assert.All([d.What, d.Written, d.Source, d.HowToReplace], text => Assert.False(string.IsNullOrWhiteSpace(text)));
        });
    }

    /// <summary>The text that people read and the value that is used are the same, read back with the table of units.</summary>
    [Fact]
    public void TheTextOfADefaultIsItsValue()
    {
        var compared = 0;
        foreach (var value in Defaults.All)
        {
            if (SiOf(value) is not { } si)
            {
                continue;
            }

            var space = value.Written.IndexOf(' ', StringComparison.Ordinal);
            var number = double.Parse(space < 0 ? value.Written : value.Written[..space], System.Globalization.CultureInfo.InvariantCulture);
            var read = space < 0 ? number : UnitTable.Get(value.Written[(space + 1)..]).ToSi(number);
            Assert.True(Math.Abs(read - si) <= 1e-9 * Math.Max(1e-3, Math.Abs(si)), $"{value.Key}: '{value.Written}' is {read}, the value {si}");
            compared++;
        }

        Assert.True(compared > 50, $"only {compared} defaults were compared");
    }

    private static double? SiOf(TradeDefault value) => value switch
    {
        TradeDefault<Length> v => v.Value.Meters,
        TradeDefault<Mass> v => v.Value.Kilograms,
        TradeDefault<Duration> v => v.Value.Seconds,
        TradeDefault<AreaDensity> v => v.Value.KilogramsPerSquareMeter,
        TradeDefault<Density> v => v.Value.KilogramsPerCubicMeter,
        TradeDefault<Temperature> v => v.Value.Kelvins,
        TradeDefault<Volume> v => v.Value.CubicMeters,
        TradeDefault<Pressure> v => v.Value.Pascals,
        TradeDefault<int> v => v.Value,
        TradeDefault<double> v => v.Value,
        _ => null,
    };

    private static Part Flat(Reinforcement cloth) => Recipes.Part(
        Process.Hand, Recipes.Mould(new FlatShape(Recipes.Millimetres(300), Recipes.Millimetres(200))), Recipes.Ply("outer", cloth));

    private static Plan Planned(RecipeModel model) => Planner.Plan(model.Parts[0], model);
}
