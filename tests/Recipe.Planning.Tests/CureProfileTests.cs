using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>The temperature of a cure against the clock, through the text of a recipe. By hand where no source is named.</summary>
public class CureProfileTests
{
    /// <summary>12 h at 20 degC, 30 degC up at 0.5 degC/min (60 min), 6 h at 50 degC, 20 degC down at 1 degC/min (20 min): 19 h 20 min.</summary>
    [Fact]
    public void StepsFollowEachOther()
    {
        var cure = Planned("room 20 degC", "hold 20 degC for 12 h under vacuum; ramp 0.5 degC/min to 50 degC; hold 50 degC for 6 h; cool to 30 degC at 1 degC/min; vent; demould");
        Assert.Equal([0, 720, 780, 1140, 1160, 1160], cure.Steps.Select(step => Math.Round(step.Start.Value.Minutes, 6)));
        Assert.Equal([(20, 20), (20, 50), (50, 50), (50, 30), (30, 30), (30, 30)], cure.Steps.Select(step => (Whole(step.From), Whole(step.To))));
        Assert.Equal(1160, cure.Total.Value.Minutes, 6);
        Assert.Equal(50, cure.Peak.Value.DegreesCelsius, 9);
        Assert.All(cure.Steps, step => Assert.True(step.InMould));
    }

    /// <summary>US Army TM 1-1500-204-23-11 dries at no more than 10 degF a minute: from 70 to 250 degF takes 18 min. A degree Fahrenheit of difference is 1/1.8 K (NIST SP 811).</summary>
    [Fact]
    public void RatesInFahrenheitAreDifferences()
    {
        var cure = Planned("room 70 degF", "ramp 10 degF/min to 250 degF; hold 250 degF for 2 h");
        Assert.Equal(18, cure.Steps[0].End.Value.Minutes, 6);
        Assert.Equal(138, cure.Total.Value.Minutes, 6);
        Assert.Equal(121.111, cure.Peak.Value.DegreesCelsius, 0.001);
    }

    /// <summary>A part that goes into heat is in it at once, and a cure that begins warm begins from the room.</summary>
    [Fact]
    public void AHoldAtAnotherTemperatureBeginsAtOnceAndARampFromTheRoom()
    {
        var cure = Planned("room 18 degC", "ramp 20 degC/h to 38 degC; hold 60 degC for 2 h");
        Assert.Equal((18, 38), (Whole(cure.Steps[0].From), Whole(cure.Steps[0].To)));
        Assert.Equal(60, cure.Steps[0].End.Value.Minutes, 6);
        Assert.Equal((60, 60), (Whole(cure.Steps[1].From), Whole(cure.Steps[1].To)));
        Assert.Equal(180, cure.Total.Value.Minutes, 6);
    }

    /// <summary>Common practice: what cures in the room cures through its night. A range of the room is its warm end for the pots and its cold end for the cure.</summary>
    [Theory]
    [InlineData("room 22 degC; night 14 degC", "", 14, 22)]
    [InlineData("room 18 to 24 degC", "", 18, 24)]
    [InlineData("night 14 degC", "room 20 degC", 14, 20)]
    [InlineData("", "", 20, 20)]
    public void HoldRoomIsTheColdestTheRoomGets(string shop, string wetOut, int cure, int pots)
    {
        var plan = PlanOf(shop, wetOut, "hold room for 24 h");
        Assert.Equal(cure, Whole(plan.Cure!.Steps[0].To));
        Assert.Equal(pots, Whole(plan.Conditions.Room.Value));
    }

    /// <summary>Where nobody says how fast a part cools it is half a degree a minute (from memory of the trade), and that is said among the assumptions.</summary>
    [Fact]
    public void ARateThatNobodyGaveIsAssumedAndSaid()
    {
        var plan = PlanOf("", "room 20 degC", "ramp 20 degC/h to 60 degC; cool to 30 degC");
        Assert.Equal([120, 180], plan.Cure!.Steps.Select(step => Math.Round(step.End.Value.Minutes, 6)));
        Assert.Equal("default.cool-rate", Assert.Single(plan.Cure.Total.RestsOn));
        Assert.Contains(plan.Assumptions, assumption => assumption is { Key: "default.cool-rate", Value: "0.5 degC/min" });
    }

    /// <summary>And where nobody says how fast it is heated, 20 K an hour: common practice in the mould is 20 to 30.</summary>
    [Fact]
    public void ARampWithoutARateIsHeatedAsIsUsual()
    {
        var plan = PlanOf("", "room 20 degC", "ramp to 60 degC; hold 60 degC for 6 h");
        Assert.Equal([120, 480], plan.Cure!.Steps.Select(step => Math.Round(step.End.Value.Minutes, 6)));
        Assert.Equal("default.ramp-rate", Assert.Single(plan.Cure.Total.RestsOn));
        Assert.Contains(plan.Assumptions, assumption => assumption is { Key: "default.ramp-rate", Value: "20 degC/h" });
    }

    /// <summary>What is off the mould or out of the bag no longer heats it.</summary>
    [Fact]
    public void BagAndMouldLeaveTheHeatWhenTheyAreTakenAway()
    {
        var cure = Planned("room 20 degC", "hold 20 degC for 24 h; debag; hold 40 degC for 6 h; demould; hold 60 degC for 6 h");
        Assert.Equal([true, true, false, false, false], cure.Steps.Select(step => step.Bagged));
        Assert.Equal([true, true, true, true, false], cure.Steps.Select(step => step.InMould));
        Assert.Equal(20, Hottest("bag-film nylon-bag-film"), 9);
        Assert.Equal(40, Hottest("mould plate"), 9);
        double Hottest(string item) => Assert.Single(cure.Limits, limit => limit.Item == item).Hottest.DegreesCelsius;
    }

    /// <summary>
    /// A laminate 12 mm thick keeps some of its heat. It can warm by no more than its resin's own heat: H w / (w c + (1 - w) c of the fibre) with 450 J/g, 1.9 and 0.8 J/g K, 45 % of resin:
    /// 157 degC (adiabatic balance), and a thin one is left alone.
    /// </summary>
    [Fact]
    public void AThickLaminateIsWarmerInsideThanItsOvenAndNeverWarmerThanItsHeatAllows()
    {
        var thick = Planned("room 23 degC", "hold 23 degC for 24 h", "all glass-twill-280 0/90 x40 resin-content 45 % by weight");
        var inside = thick.Inside!.Value.Value.DegreesCelsius;
        Assert.InRange(inside, 30, 23 + (450 * 0.45 / ((0.45 * 1.9) + (0.55 * 0.8))));
        Assert.InRange(thick.InsideAt!.Value.Value.Hours, 0.5, 6);
        Assert.Null(Planned("room 23 degC", "hold 23 degC for 24 h").Inside);
    }

    // Nobody's share of fibre is made up: cloth of an unknown fibre has a gap instead of a figure.
    [Fact]
    public void WithoutAShareOfFibreTheHeatInsideIsNotGuessed()
    {
        var plan = PlanOf("", "room 23 degC", "hold 23 degC for 24 h", "all odd-cloth 0/90 x40 resin-content 45 % by weight", "fabric odd-cloth { areal-weight 280 g/m2; source \"scale\" }");
        Assert.Null(plan.Cure!.Inside);
        Assert.Contains(plan.Gaps, gap => gap.Missing == "the share of fibre by volume is not known");
    }

    private static int Whole(Temperature temperature) => (int)Math.Round(temperature.DegreesCelsius);

    private static CurePlan Planned(string wetOut, string cure, string plies = "only glass-twill-163 0/90") => PlanOf("", wetOut, cure, plies).Cure!;

    private static Plan PlanOf(string shop, string wetOut, string cure, string plies = "only glass-twill-163 0/90", string above = "") => Corpus.PlanOf($$"""
        {{above}}
        {{(shop.Length > 0 ? $"shop ours {{ {shop} }}" : "")}}
        mould plate {
          surface flat 400 mm x 300 mm
          made-of aluminium
        }
        part panel {
          mould plate
          process bagged
          resin slow-laminating-epoxy
          plies { {{plies}} }
          {{(wetOut.Length > 0 ? $"wet-out {{ {wetOut} }}" : "")}}
          bag { peel-ply; breather; bag-film }
          cure { {{cure}} }
        }
        """);
}
