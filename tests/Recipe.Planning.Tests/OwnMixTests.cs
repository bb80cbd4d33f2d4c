using CsCheck;
using Recipe.Model;
using Recipe.TestKit.Models;
using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>Coats, adhesives and the resin of a later seam have pots of their own. Worked by hand.</summary>
public class OwnMixTests
{
    private static readonly ResinSystem White = Stuffs.Epoxy with
    {
        Name = "white-coat",
        Keyword = "surface-coat",
        Role = ResinRole.SurfaceCoat,
        Mix = Fig.Stated(new MixRatio(100, 20, MixBasis.Weight), "100:20 by weight"),
        PotLife = Fig.TimeAt("25 min", 23, "100 g"),
    };

    private static readonly ResinSystem Thick = Stuffs.Epoxy with { Name = "thick-epoxy", Keyword = "adhesive", Role = ResinRole.Adhesive, CuredDensity = Fig.Density("1100 kg/m3") };

    /// <summary>
    /// A square metre at 300 g/m2 with 5 g on the brush, 10 % spare and 3 % left in the pots: 305 x 1.1 / 0.97 = 345.9 g, of which the
    /// hardener is 20 parts in 120. In 150 g that is three pots, whose life at 23 degC is that of the sheet.
    /// </summary>
    [Fact]
    public void ACoatIsMixedInPotsOfItsOwn()
    {
        var part = Square() with { Coats = [new Coat(White, Fig.ArealWeight("300 g/m2"), Fig.Somewhere)], WetOut = new WetOut { Where = Fig.Somewhere, Room = Fig.Celsius(23) } };
        var plan = Planned(part);
        var mix = Assert.Single(plan.OwnMixes);
        Assert.Equal(OwnMixUse.Coat, mix.Use);
        Assert.Equal(300, mix.Laid.Value.Grams, 6);
        Assert.Equal(30.5, mix.Spare.Value.Grams, 6);
        Assert.Equal(345.876, mix.ToMix.Value.Grams, 3);
        Assert.Equal(3, mix.Pots.Length);
        Assert.All(mix.Pots, pot =>
        {
            Assert.Equal(345.876 / 3, pot.Mass.Value.Grams, 3);
            Assert.Equal(345.876 / 3 / 6, pot.Hardener!.Value.Value.Grams, 3);
            Assert.Equal(25, pot.PotLife!.Value.Value.Minutes, 6);
            Assert.True(pot.UsedUpAt.Value < pot.DeadAt!.Value.Value);
        });
        Assert.DoesNotContain(plan.Resin!.Lines, l => l.Label.Contains("coat", StringComparison.Ordinal));
        Assert.Equal(345.876e-3, plan.Takeoff.Where(l => l.Group == TakeoffGroup.Coat).Sum(l => l.Gross.Value.Si), 6);
    }

    /// <summary>What `wet-out` says of the pots is said of the plies' resin.</summary>
    [Fact]
    public void ThePotsOfWetOutAreNotThoseOfACoat()
    {
        var part = Square() with
        {
            Coats = [new Coat(White, Fig.ArealWeight("100 g/m2"), Fig.Somewhere)],
            WetOut = new WetOut { Where = Fig.Somewhere, Pots = Fig.Count(4), Tray = Fig.Stated(true, "yes"), Loss = Fig.Mass("80 g") },
        };
        var plan = Planned(part);
        Assert.Equal(4, plan.Pots.Length);
        Assert.Single(Assert.Single(plan.OwnMixes).Pots);
        Assert.InRange(plan.OwnMixes[0].Loss.Value.Grams, 5, 10);
    }

    /// <summary>
    /// Two halves taped inside: 0.572 m of tape 50 mm wide at 200 g/m2 is 5.72 g, wetted out by hand with as much resin (FAA AC 43.13-1B
    /// p. 3-3), and 3 g/m of filler is 1.72 g. Taped halves meet edge to edge: there is no bond line.
    /// </summary>
    [Fact]
    public void TapeItsResinAndTheFilletAreInThePart()
    {
        var part = Halves() with { Join = Taped(JoinManner.CuredThenTaped) };
        var plan = Planned(part);
        var without = Planned(part with { Join = null });
        Assert.Equal(5.72, plan.Join!.TapeCloth!.Value.Value.Grams, 6);
        Assert.Equal(5.72, plan.Join.TapeResin!.Value.Value.Grams, 6);
        Assert.Equal(1.716, plan.Join.Fillet!.Value.Value.Grams, 6);
        Assert.Null(plan.Join.Adhesive);
        Assert.Equal(13.156, plan.Laminate!.Join!.Value.Value.Grams, 6);
        Assert.Equal(13.156, (plan.Laminate.TrimmedMass.Value.Value - without.Laminate!.TrimmedMass.Value.Value).Grams, 6);
        Assert.Equal(0.0286, Assert.Single(plan.Takeoff, l => l.Material.Name == "seam-tape").Net.Value.Si, 9);
        Assert.Equal([OwnMixUse.Adhesive, OwnMixUse.SeamResin], plan.OwnMixes.Select(m => m.Use));
        Assert.Equal(1.716, plan.OwnMixes[0].Laid.Value.Grams, 6);
        Assert.Equal(5.72, plan.OwnMixes[1].Laid.Value.Grams, 6);
        Assert.Equal(plan.OwnMixes[0].ToMix.Value.Kilograms, plan.Takeoff.Where(l => l.Group == TakeoffGroup.Adhesive).Sum(l => l.Gross.Value.Si), 9);
        Assert.Equal(without.Clock!.Need.Value, plan.Clock!.Need.Value);
    }

    /// <summary>A join mixes no less than its pot, and never more than it needs for that: what is over the need is spare.</summary>
    [Fact]
    public void APotOfTheJoinIsTheLeastThatIsMixed()
    {
        var part = Halves() with { Join = Taped(JoinManner.CuredThenTaped) };
        var plain = Planned(part).OwnMixes;
        var small = Planned(part with { Join = part.Join! with { Pot = Fig.Mass("1 g") } }).OwnMixes;
        var large = Planned(part with { Join = part.Join! with { Pot = Fig.Mass("40 g") } }).OwnMixes;
        Assert.All(plain, mix => Assert.InRange(mix.ToMix.Value.Grams, 1, 40));
        Assert.Equal(plain.Select(mix => mix.ToMix.Value.Grams), small.Select(mix => mix.ToMix.Value.Grams));
        Assert.All(large, mix => Assert.Equal(40, mix.ToMix.Value.Grams, 9));
        Assert.All(large, mix => Assert.Equal(40, Assert.Single(mix.Pots).Mass.Value.Grams, 9));
        Assert.All(large, mix => Assert.Equal(40, (mix.Laid.Value + mix.Loss.Value + mix.Spare.Value).Grams, 9));
    }

    /// <summary>0.572 m by 25 mm by 0.5 mm at 1.1 g/cm3: 7.87 g.</summary>
    [Fact]
    public void BondedHalvesHaveABondLine()
    {
        var join = Taped(JoinManner.CuredThenBonded) with { Tape = null, Fillet = null, Overlap = Fig.Length("25 mm"), BondLine = Fig.Length("0.5 mm") };
        var plan = Planned(Halves() with { Join = join });
        Assert.Equal(7.865, plan.Join!.Mass.Value.Grams, 3);
        Assert.Equal(OwnMixUse.Adhesive, Assert.Single(plan.OwnMixes).Use);
    }

    /// <summary>Closed wet, the seam is wetted out of the same pots, after both halves, and on the same clock.</summary>
    [Fact]
    public void ASeamClosedWetIsPartOfTheSession()
    {
        var part = Halves() with { Join = Taped(JoinManner.WetInWet) with { Adhesive = null, Fillet = null } };
        var plan = Planned(part);
        var without = Planned(part with { Join = null });
        Assert.Empty(plan.OwnMixes);
        Assert.Equal("seam tape", plan.Pots[^1].For[^1]);
        Assert.Equal(5.72, plan.Resin!.Lines.Single(l => l.Label == "seam tape and filler").Mass.Value.Grams, 6);
        Assert.Equal(plan.Join!.Work!.Value.Value.Minutes, (plan.Clock!.Need.Value - without.Clock!.Need.Value).Minutes, 6);
    }

    [Fact]
    public void AnAdhesiveOfUnknownAmountIsNamed()
    {
        var plan = Planned(Halves() with { Join = Taped(JoinManner.CuredThenTaped) with { Fillet = null } });
        Assert.Contains(plan.Gaps, g => g.Subject == "thick-epoxy in the join");
    }

    /// <summary>Whatever the part: what is mixed is laid, lost or spare, all of it stands in pots, and the takeoff has it all.</summary>
    [Fact]
    public void NothingIsLostBetweenPotAndCoat() => RandomParts.Model.Sample(
        model =>
        {
            var plan = Planner.Plan(model.Parts[0], model);
            foreach (var mix in plan.OwnMixes)
            {
                Close(mix.ToMix.Value.Kilograms, (mix.Laid.Value + mix.Loss.Value + mix.Spare.Value).Kilograms);
                Close(mix.ToMix.Value.Kilograms, mix.Pots.Sum(p => p.Mass.Value.Kilograms));
                Assert.True(mix.Laid.Value < mix.ToMix.Value);
            }

            var coats = plan.OwnMixes.Where(m => m.Use == OwnMixUse.Coat).Sum(m => m.ToMix.Value.Kilograms);
            Close(coats * plan.Part.Quantity, plan.Takeoff.Where(l => l.Group == TakeoffGroup.Coat).Sum(l => l.Net.Value.Si));
        },
        iter: 500);

    private static Join Taped(JoinManner manner) => new()
    {
        Where = Fig.Somewhere,
        Manner = Fig.Stated(manner, "as written"),
        Seam = Fig.Length("572 mm"),
        Tape = Stuffs.Cloth("seam-tape", "200 g/m2"),
        TapeWidth = Fig.Length("50 mm"),
        Adhesive = Thick,
        Fillet = Fig.LinearDensity("3 g/m"),
    };

    private static Part Square() => Recipes.Part(
        Process.Hand, Recipes.Mould(new FlatShape(Length.FromMeters(1), Length.FromMeters(1))), Recipes.Ply("ply", Stuffs.Cloth("cloth", "163 g/m2"))) with
    {
        Trim = Fig.Length("0 mm"),
    };

    private static Part Halves() => Recipes.Part(
        Process.Bagged,
        Recipes.Mould(new HalfEllipsoidShape(Recipes.Millimetres(220), Recipes.Millimetres(140), Recipes.Millimetres(60)), halves: true),
        Recipes.Ply("ply", Stuffs.Cloth("cloth", "280 g/m2")));

    private static Plan Planned(Part part) => Planner.Plan(part, Recipes.Around(part));

    private static void Close(double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-9 * Math.Max(1e-6, Math.Abs(expected)), $"{actual} is not {expected}");
}
