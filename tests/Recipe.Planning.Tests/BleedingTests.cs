using CsCheck;
using Recipe.Model;
using Recipe.TestKit.Models;
using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>From the resin laid to the resin that stays: what the layers of the bag carry away lies between them. Worked by hand.</summary>
public class BleedingTests
{
    /// <summary>163 g/m2 laid at 45 % is 133.4 g/m2 of resin; peel ply takes 40, so 93.4 stay: 36.4 %.</summary>
    [Fact]
    public void TheContentOfWetOutIsTheOneLaid()
    {
        var plan = Planned(Square("163 g/m2", Stuffs.PeelPly) with { WetOut = Laid(45) });
        var line = plan.Stack[0];
        Assert.Equal(133.364, line.LaidResin!.Value.Value.Grams, 3);
        Assert.Equal(93.364, line.CutResin!.Value.Value.Grams, 3);
        Assert.Equal(0.36418, line.Content!.Value.Value.Fraction, 5);
        Assert.Equal(0.45, plan.Laminate!.LaidResinFraction!.Value.Value, 9);
        Assert.Equal(0.36418, plan.Laminate.ResinFraction.Value, 5);
    }

    [Fact]
    public void ThatOfAPlysOwnLineToo()
    {
        var part = Square("163 g/m2", Stuffs.PeelPly);
        var plan = Planned(part with { Stack = [(PlyItem)part.Stack[0] with { Content = Fig.Resin(45) }] });
        Assert.Equal(93.364, plan.Stack[0].CutResin!.Value.Value.Grams, 3);
    }

    /// <summary>A cloth that keeps 42 % under a bag holds 118.0 g/m2 of resin; 40 more are laid for the peel ply.</summary>
    [Fact]
    public void TheFigureOfAClothIsWhatStays()
    {
        var line = Planned(Square("163 g/m2", Stuffs.PeelPly)).Stack[0];
        Assert.Equal(118.034, line.CutResin!.Value.Value.Grams, 3);
        Assert.Equal(158.034, line.LaidResin!.Value.Value.Grams, 3);
    }

    [Fact]
    public void WithoutABagWhatIsLaidStays()
    {
        var part = Square("163 g/m2", Stuffs.PeelPly) with { Process = Fig.Stated(Process.Hand, "hand"), Bag = null, WetOut = Laid(45) };
        var line = Planned(part).Stack[0];
        Assert.Equal(line.LaidResin!.Value.Value, line.CutResin!.Value.Value);
        Assert.Equal(0.45, line.Content!.Value.Value.Fraction);
    }

    [Fact]
    public void WhatIsInfusedIsNotLaid()
    {
        var line = Planned(Square("163 g/m2", Stuffs.PeelPly) with { Process = Fig.Stated(Process.Infused, "infused"), WetOut = Laid(35) }).Stack[0];
        Assert.Null(line.LaidResin);
        Assert.Equal(0.35, line.Content!.Value.Value.Fraction);
    }

    /// <summary>
    /// 25 g/m2 laid at 45 % is 20.5 g/m2 of resin, less than peel ply and felt could take: it is squeezed to 32 % (11.8 g/m2) and no
    /// further, so the peel ply gets the 8.7 g/m2 that come out and the felt above it none.
    /// </summary>
    [Fact]
    public void ABagSqueezesAClothOnlySoDry()
    {
        var plan = Planned(Square("25 g/m2", Stuffs.PeelPly, Stuffs.Breather) with { WetOut = Laid(45) });
        Assert.Equal(0.32, plan.Stack[0].Content!.Value.Value.Fraction, 9);
        Assert.Equal(8.690, plan.Bag!.Layers[0].Pickup!.Value.Value.Grams, 3);
        Assert.Equal(0, plan.Bag.Layers[1].Pickup!.Value.Value.Grams, 9);
        Assert.Contains(plan.Assumptions, a => a.Key == "default.driest-content.cloth");
        Assert.Equal(20.455, plan.Stack[0].LaidResin!.Value.Value.Grams, 3);
    }

    [Fact]
    public void NoRuleOfTheDriestClothIsAssumedWhereItIsWetEnough()
    {
        var plan = Planned(Square("163 g/m2", Stuffs.PeelPly) with { WetOut = Laid(45) });
        Assert.DoesNotContain(plan.Assumptions, a => a.Key.StartsWith("default.driest-content", StringComparison.Ordinal));
    }

    /// <summary>To a film that lets 25 g/m2 through, 2 more cling.</summary>
    [Fact]
    public void AFilmKeepsWhatItsOwnFigureSays()
    {
        var film = Stuffs.PerforatedFilm with { ResinPickup = Fig.ArealWeight("2 g/m2") };
        var plan = Planned(Square("163 g/m2", Stuffs.PeelPly, film, Stuffs.Breather));
        Assert.Equal(40, plan.Bag!.Layers[0].Pickup!.Value.Value.Grams, 9);
        Assert.Equal(2, plan.Bag.Layers[1].Pickup!.Value.Value.Grams, 9);
        Assert.Equal(25, plan.Bag.Layers[2].Pickup!.Value.Value.Grams, 9);
    }

    /// <summary>However it is laid: laid = stays + carried away, and no cloth comes out drier than the rule says unless it went in so.</summary>
    [Fact]
    public void LaidIsWhatStaysAndWhatIsCarriedAway() => Gen.Select(RandomParts.Model, Gen.Int[20, 60]).Sample(
        (model, percent) =>
        {
            var part = model.Parts[0] with { Process = Fig.Stated(Process.Bagged, "bagged"), WetOut = Laid(percent), Bag = model.Parts[0].Bag ?? Recipes.Bag() };
            var plan = Planner.Plan(part, model);
            var plies = plan.Stack.Where(s => s.Item is PlyItem && s.LaidResin is not null).ToList();
            var laid = plies.Sum(s => s.LaidResin!.Value.Value.Kilograms);
            var stays = plies.Sum(s => s.CutResin!.Value.Value.Kilograms);
            var away = plies.Count == 0 ? 0 : plan.Bag?.Pickup?.Value.Kilograms ?? 0;
            Assert.True(Math.Abs(laid - stays - away) <= 1e-9 * Math.Max(1e-3, laid), $"{laid} is not {stays} + {away}");
            Assert.All(
                plies.Where(s => s.Item is PlyItem { Content: null, Material.Form: ReinforcementForm.Fabric }),
                s => Assert.True(s.Content!.Value.Value.Fraction >= Math.Min(0.32, percent / 100.0) - 1e-9, $"{s.Content.Value.Value.Fraction}"));
        },
        iter: 500);

    private static WetOut Laid(double percent) => new() { Where = Fig.Somewhere, Content = Fig.Resin(percent) };

    // A square metre of one cloth without a border, under layers and a bag film.
    private static Part Square(string cloth, params Consumable[] layers)
    {
        var ply = Recipes.Ply("ply", Stuffs.Cloth("cloth", cloth)) with { Trim = Fig.Length("0 mm") };
        return Recipes.Part(Process.Bagged, Recipes.Mould(new FlatShape(Length.FromMeters(1), Length.FromMeters(1))), ply) with
        {
            Trim = Fig.Length("0 mm"),
            Bag = Recipes.Bag() with { Layers = [.. layers.Select(layer => Stuffs.Layer(layer)), Stuffs.Layer(Stuffs.BagFilm)] },
        };
    }

    private static Plan Planned(Part part) => Planner.Plan(part, Recipes.Around(part));
}
