using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>How long the pots of a plan live and how hot they get, through the text of a recipe.</summary>
public class PotTests
{
    private const string Plain = "resin tried-resin { chemistry epoxy; mix 100:30 by weight; largest-pot 5 kg; pot-life ";

    // Common practice: factors on a life of an hour at 23 degC.
    [Theory]
    [InlineData(10, 2.5)]
    [InlineData(18, 1.4)]
    [InlineData(20, 1.2)]
    [InlineData(23, 1.0)]
    [InlineData(28, 0.7)]
    [InlineData(30, 0.6)]
    [InlineData(35, 0.44)]
    public void LifeGoesWithTheTemperatureOfTheResin(double celsius, double factor)
    {
        // The resin's own temperature, not that of the room.
        var pot = Pots(Plain + "60 min at 23 degC in 100 g }", FormattableString.Invariant($"room 23 degC; resin-temperature {celsius} degC; pot 100 g"))[0];
        Assert.InRange(pot.PotLife!.Value.Value.Minutes / 60, factor - 0.05, factor + 0.05);
    }

    /// <summary>US Army TM 1-1500-204-23-11: above 90 degF (32.2 degC) halve the maker's pot life.</summary>
    [Theory]
    [InlineData("90 degF", 24.19)] // 40 x 2^-((32.22 - 25) / 10)
    [InlineData("91 degF", 20)]
    public void AboveNinetyFahrenheitTheLifeIsHalved(string room, double minutes) =>
        Assert.Equal(minutes, Pots(Plain + "40 min at 25 degC in 100 g }", $"room {room}; pot 100 g")[0].PotLife!.Value.Value.Minutes, 0.3);

    // Common practice, from memory, in a deep cup: 300 g 0.75 of the life of 100 to 150 g, 500 g 0.55 to 0.65, 1 kg 0.35 to 0.5; a tray of at most 10 mm 1.5 to 2.5 times.
    [Theory]
    [InlineData("pot 150 g", 1, 1)]
    [InlineData("pot 300 g", 0.75, 0.75)]
    [InlineData("pot 500 g", 0.55, 0.65)]
    [InlineData("pot 1 kg", 0.35, 0.5)]
    [InlineData("pot 100 g; tray yes", 1.5, 2.5)]
    public void LifeGoesWithTheMassAndTheShapeOfThePot(string pot, double low, double high) => Assert.InRange(
        Pots(Plain + "60 min at 23 degC in 100 g }", "room 23 degC; " + pot)[0].PotLife!.Value.Value.Minutes / 60, low - 1e-9, high + 1e-9);

    /// <summary>The clock of a pot starts when its mixing does, and each pot has its own (US Army TM 1-1500-204-23-11: do not mix several batches at once).</summary>
    [Fact]
    public void EachPotHasAClockOfItsOwn()
    {
        var pots = Pots(Plain + "60 min at 23 degC in 100 g }", "room 23 degC; mixing 3 min; pace 12 min/m2; pot 100 g; pot 100 g");
        Assert.Equal(0, pots[0].MixedAt.Value.Minutes);

        // Half of the square metre of one ply at 12 min/m2, and half of the 2 min that lining it up takes.
        Assert.Equal(3 + 6 + 1, pots[0].UsedUpAt.Value.Minutes, 6);
        Assert.Equal(pots[0].UsedUpAt.Value, pots[1].MixedAt.Value);
        Assert.Equal([60.0, 70.0], pots.Select(pot => Math.Round(pot.DeadAt!.Value.Value.Minutes, 6)));
    }

    // Common practice, from memory: a film lives two to three times as long as a pot, and half as long for each 10 degC more.
    [Theory]
    [InlineData("film-life 150 min at 23 degC", 23, 150, 150)]
    [InlineData("film-life 150 min at 23 degC", 13, 300, 300)]
    [InlineData("", 23, 120, 180)]
    public void AFilmLivesAsItsSheetSaysOrTwoToThreeTimesAsLongAsAPot(string film, double celsius, double low, double high)
    {
        var plan = Planned(Plain + $"60 min at 23 degC in 100 g; {film} }}", FormattableString.Invariant($"room {celsius} degC; pot 200 g"), "bagged", "bag { peel-ply; breather; bag-film }");
        Assert.InRange(plan.Clock!.FilmLife!.Value.Value.Minutes, low - 1e-6, high + 1e-6);
    }

    /// <summary>
    /// The slow laminating epoxy that ships, left standing at 23 degC in a cup of 100 g as deep as it is wide and in a tray 10 mm deep: rate of Kamal and Sourour with the constants
    /// of the book, 450 J/g, 1.9 J/g K, 1.1 g/cm3, 10 W/m2 K to still air, 0.2 W/m K inside, integrated by a program outside the project (Runge-Kutta, steps of 0.5 s).
    /// </summary>
    [Theory]
    [InlineData("pot 100 g", 220.3)]
    [InlineData("pot 300 g", 235.4)]
    [InlineData("pot 100 g; tray yes", 106.6)]
    public void APotLeftStandingGetsAsHotAsItWasIntegrated(string pot, double celsius)
    {
        var peak = Pots("", "room 23 degC; " + pot, "slow-laminating-epoxy")[0].StandingPeak!.Value.Value.DegreesCelsius;
        Assert.Equal(celsius, peak, 0.5);

        // Never above what its heat alone can do: H / c (adiabatic balance).
        Assert.True(peak < 23 + (450 / 1.9));
    }

    /// <summary>Common practice: 100 g of a room-temperature epoxy in a cup may pass 200 degC, and a pot that is spread out in a tray stays far cooler.</summary>
    [Fact]
    public void ACupMaySmokeAndATrayIsCooler()
    {
        var cup = Pots("", "room 23 degC; pot 100 g", "slow-laminating-epoxy")[0];
        var tray = Pots("", "room 23 degC; pot 100 g; tray yes", "slow-laminating-epoxy")[0];
        Assert.True(cup.StandingPeak!.Value.Value.DegreesCelsius > 200);
        Assert.True(tray.StandingPeak!.Value.Value < cup.StandingPeak.Value.Value - TemperatureDelta.FromKelvins(50));

        // And the pot of the sheet lives as long as the sheet says, though it warms itself all the while.
        Assert.Equal(60, cup.PotLife!.Value.Value.Minutes, 0.1);
    }

    /// <summary>What the comment in the book says of the constants it ships: a film gels (57.7 %, Flory) after 5 h at 23 degC; 299.7 min by the same outside program.</summary>
    [Fact]
    public void TheFilmOfTheSlowEpoxyGelsWhenItsSheetSays()
    {
        var plan = Planned("", "room 23 degC", "hand", "cure { hold 23 degC for 24 h; demould }", "slow-laminating-epoxy");
        Assert.True(plan.Cure!.Progress!.OwnKinetics);
        Assert.Equal(299.7, plan.Cure.Progress.Gel!.Value.Value.Minutes, 0.2);
    }

    private static ImmutableArray<PotPlan> Pots(string resin, string wetOut, string name = "tried-resin") => Planned(resin, wetOut, "hand", "", name).Pots;

    private static Plan Planned(string resin, string wetOut, string process, string more, string name = "tried-resin") => Corpus.PlanOf($$"""
        {{resin}}
        fabric tried-cloth {
          fibre e-glass
          areal-weight 100 g/m2
          width 2 m
        }
        mould plate {
          surface flat 1 m x 1 m
        }
        part panel {
          mould plate
          process {{process}}
          resin {{name}}
          trim 0 mm
          plies {
            only tried-cloth 0/90 resin-content 50 % by weight
          }
          wet-out { {{wetOut}} }
          {{more}}
        }
        """);
}
