namespace Recipe.Planning.Tests;

/// <summary>One moment at which the vacuum comes off, for chart, traveller and checks. What says it is common practice: who opens the bag reads the cure.</summary>
public class VacuumOffTests
{
    [Theory]
    [InlineData("", "hold 20 degC for 24 h; vent; demould", 24.0)]
    [InlineData("", "hold 20 degC for 24 h; demould", 24.0)]
    [InlineData("", "hold 20 degC for 24 h", 24.0)]
    [InlineData("", "hold 20 degC for 12 h; vent; hold 20 degC for 24 h; demould", 12.0)]
    [InlineData("", "hold 20 degC for 12 h; debag; hold 20 degC for 24 h; demould", 12.0)]
    [InlineData("hold 24 h", "hold 20 degC for 24 h; vent; demould", 24.0)]
    [InlineData("hold 23.5 h", "hold 20 degC for 24 h; vent; demould", 24.0)] // the same, said twice
    [InlineData("hold 12 h", "hold 20 degC for 24 h; demould", 12.0)]
    [InlineData("hold 60 h", "hold 20 degC for 24 h; vent; demould", 24.0)]
    public void The_vacuum_comes_off_once(string hold, string cure, double hours) =>
        Assert.Equal(hours, Corpus.PlanOf(Part("bag { peel-ply; breather; bag-film }", "vacuum { draw 25 inHg below ambient within 10 min; " + hold + " }", cure)).Cure!.VacuumOff!.Value.Value.Hours, 6);

    [Fact]
    public void Without_a_bag_there_is_none() => Assert.Null(Corpus.PlanOf(Part("", "", "hold 20 degC for 24 h; demould")).Cure!.VacuumOff);

    private static string Part(string bag, string vacuum, string cure) => $$"""
        mould tray-mould {
          surface flat 400 mm x 300 mm
          made-of epoxy-glass-tooling
        }

        part tray {
          mould tray-mould
          process {{(bag.Length > 0 ? "bagged" : "hand")}}
          resin slow-laminating-epoxy
          plies { outer glass-twill-163 0/90; inner glass-twill-163 0/90 }
          {{bag}}
          {{vacuum}}
          cure { {{cure}} }
        }
        """;
}
