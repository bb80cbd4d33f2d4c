using Recipe.Model;
using Recipe.TestKit.Models;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>
/// A thin fairing as it is laid in small shops: 3/4, 3 and 1/2 oz/yd2 cloth with two 0.2 oz/yd2 veils, bagged. All expectations: common
/// practice.
/// </summary>
public class CommonPracticeTests
{
    private static readonly double Ounce = UnitTable.Get("oz").ToSi(1);

    [Fact]
    public void TheStackIsAbout158GramsDry()
    {
        var plan = Planned(Fairing(Area.FromSquareMeters(1), 45, halves: false));
        Assert.InRange(plan.Laminate!.Fibre.Value.Grams, 157, 159);
    }

    [Theory]
    [InlineData(40, 263)]
    [InlineData(55, 350)]
    public void BaggedItWeighs260To350GramsASquareMetre(double percent, double expected)
    {
        var plan = Planned(Fairing(Area.FromSquareMeters(1), percent, halves: false));
        Assert.InRange(plan.Laminate!.TrimmedMass.Value.Value.Grams, expected - 2, expected + 2);
        Assert.Equal(percent / 100, plan.Laminate.ResinFraction.Value, 6);
    }

    [Theory]
    [InlineData(40, 268)]
    [InlineData(55, 200)]
    public void SevenGramsAre200To270SquareCentimetres(double percent, double area)
    {
        var plan = Planned(Fairing(Area.FromSquareCentimeters(area), percent, halves: false));
        Assert.InRange(plan.Laminate!.TrimmedMass.Value.Value.Grams, 6.9, 7.1);
    }

    [Fact]
    public void TwoHalvesOfSevenGramsAreHalfAnOunce()
    {
        var plan = Planned(Fairing(Area.FromSquareCentimeters(244), 45, halves: true));
        var pair = plan.Laminate!.TrimmedMass.Value.Value.Kilograms;
        Assert.InRange(pair / Ounce, 0.485, 0.5);
        Assert.InRange(pair * 1e3, 13.8, 14.2);
    }

    [Fact]
    public void AOneHourEpoxyLeavesTimeForFivePliesAndABag()
    {
        var plan = Planned(Fairing(Area.FromSquareCentimeters(244), 45, halves: false));
        var pot = Assert.Single(plan.Pots);
        Assert.True(pot.UsedUpAt.Value < pot.DeadAt!.Value.Value, $"used up at {pot.UsedUpAt.Value}, dead at {pot.DeadAt.Value.Value}");
        Assert.True(plan.Clock!.Need.Value < plan.Clock.FilmLife!.Value.Value);

        // Even by the strict rule of US Army TM 1-1500-204-23-11, pressure on within the pot life.
        Assert.True(plan.Clock.Need.Value < pot.PotLife!.Value.Value, $"needs {plan.Clock.Need.Value.Minutes} min of {pot.PotLife.Value.Value.Minutes}");
    }

    [Fact]
    public void APumpOfTwoAndAHalfCubicFeetAMinuteIsAmple()
    {
        var plan = Planned(Fairing(Area.FromSquareCentimeters(244), 45, halves: false));
        Assert.True(plan.Vacuum!.PumpDown!.Value.Value.Minutes < 1);
        Assert.True(plan.Vacuum.PumpMargin!.Value.Value > 5);
    }

    /// <summary>
    /// Common practice: a rise of 1 inHg in 5 min is 67 mL of air a minute for 10 L of bag, and 20 L/s go through a square centimetre of
    /// hole into a good vacuum (from memory; 0.85 of that through a sharp edge).
    /// </summary>
    [Fact]
    public void TheRiseThatIsAcceptedIsSaidAsAirAndAsAHole()
    {
        var plan = Corpus.Plan("samples/hatch-lid.recipe", "hatch-lid");
        var (levels, pump) = (plan.Vacuum!, plan.Shop!.Pump!.Value.LitersPerSecond);
        var leak = levels.LeakOfAir!.Value.Value;

        // Millibars and litres: the margin is what the pump carries off, less what its hose takes, over what leaks in.
        var carried = pump * (levels.Absolute.Value.Millibars - 20) * (1 - levels.HoseTakes!.Value.Value);
        Assert.Equal(carried / levels.PumpMargin!.Value.Value, leak.LitersPerSecond * plan.Conditions.Ambient.Value.Millibars, 1e-6);

        // Film 10 mm off the part on the mean, 3 m of hose with a bore of 8 mm, and a pot of 2 L.
        var film = plan.Bag!.Layers.Single(layer => layer.Layer.Class == LayerClass.BagFilm).Area.Value.SquareDecimeters;
        var litres = (film * 0.1) + (Math.PI / 4 * 0.08 * 0.08 * 30) + 2;
        Assert.InRange(leak.MillilitersPerMinute, 6.7 * litres * 30 / 33.86 * 0.95, 6.7 * litres * 30 / 33.86 * 1.05);
        var squareCentimetres = Math.PI / 4 * Math.Pow(levels.Hole!.Value.Value.Centimeters, 2);
        Assert.InRange(leak.LitersPerSecond / squareCentimetres, 0.85 * 19, 0.85 * 21);
    }

    /// <summary>Resin for a part of a few grams is a matter of tens of grams, not of hundreds.</summary>
    [Fact]
    public void ATinyPartNeedsATinyPot()
    {
        var plan = Planned(Fairing(Area.FromSquareCentimeters(244), 45, halves: false));
        Assert.InRange(plan.Resin!.ToMix.Value.Grams, 8, 30);
    }

    private static Plan Planned(Part part) => Planner.Plan(part, Recipes.Around(part, Recipes.Shop()));

    private static Part Fairing(Area area, double percent, bool halves)
    {
        // Shape of no matter; the fine veils are squeezed like the cloth, so they are given the same content.
        var shape = new GivenAreaShape(area, null, null, Length.FromMillimeters(30));
        var stack = new StackItem[]
        {
            Ply("outer", Stuffs.Cloth("glass-plain-3/4", "0.75 oz/yd2")),
            Ply("veil-1", Stuffs.Veil("veil", "0.2 oz/yd2")),
            Ply("body", Stuffs.Cloth("glass-plain-3", "3 oz/yd2")),
            Ply("veil-2", Stuffs.Veil("veil", "0.2 oz/yd2")),
            Ply("inner", Stuffs.Cloth("glass-plain-1/2", "0.5 oz/yd2")),
        };
        return Recipes.Part(Process.Bagged, Recipes.Mould(shape, halves), stack) with
        {
            Vacuum = new VacuumPlan
            {
                Where = Fig.Somewhere,
                Draw = Fig.Vacuum("25 inHg", VacuumConvention.BelowAmbient),
                LeakCheck = new LeakCheck(Fig.Time("5 min"), Fig.Pressure("34 mbar"), true, Fig.Somewhere),
            },
        };

        PlyItem Ply(string name, Reinforcement cloth) => Recipes.Ply(name, cloth with { BaggedContent = Fig.Resin(percent) });
    }
}
