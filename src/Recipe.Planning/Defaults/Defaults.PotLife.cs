using System.Collections.Immutable;
using Recipe.Engineering;

namespace Recipe.Planning;

/// <content>The rules of thumb of pot life, which Recipe.Engineering applies and reports.</content>
public static partial class Defaults
{
    private const string OwnPotLife = "write the data sheet's figure nearest to your shop: `pot-life 45 min at 20 degC in 100 g`";

    /// <summary>The rules, in the order of the flags of <see cref="PotLifeAssumptions"/>.</summary>
    private static readonly ImmutableArray<TradeDefault<PotLifeAssumptions>> PotLifeRules =
    [
        Rule(PotLifeAssumptions.HalvesPerTenKelvin, "temperature", "pot life at another temperature than the data sheet's", "halves for each 10 degC warmer", Common),
        Rule(PotLifeAssumptions.HalvedWhenHot, "hot", "pot life above 32 degC", "at most half of that at a cooler room", "US Army TM 1-1500-204-23-11 p. 0169"),
        Rule(PotLifeAssumptions.TemperatureBeyondRule, "far-temperature", "pot life below 10 or above 40 degC", "the same rule carried on", Memory),
        Rule(PotLifeAssumptions.BatchMassCurve, "mass", "pot life in a pot of more than 150 g", "0.75 of it at 300 g, 0.60 at 500 g, 0.42 at 1 kg", Memory),
        Rule(PotLifeAssumptions.MassBeyondCurve, "large-mass", "pot life in a pot of more than 1 kg", "the same curve carried on", Memory),
        Rule(PotLifeAssumptions.ShallowTray, "tray", "pot life in a tray at most 10 mm deep", "half as long again", $"{Memory}: 1.5 to 2.5 times"),
        Rule(PotLifeAssumptions.ThinFilm, "film", "how long resin spread on the part stays workable", "twice the pot life of a small pot", $"{Memory}: 2 to 3 times"),
    ];

    /// <summary>The heat of a pot.</summary>
    public static readonly TradeDefault<string> PotHeat = new(
        "default.pot-heat", "the pot and its heat", "cup", "a cup as deep as wide or a tray 10 mm deep; one lump that loses 10 W/m2 and takes 1.9 J/g for each degC", Memory,
        "put a thermometer into a witness pot outdoors");

    /// <summary>The rules that an estimate rests on.</summary>
    internal static IEnumerable<TradeDefault> RulesOf(PotLifeAssumptions used)
    {
        foreach (var rule in PotLifeRules)
        {
            if ((used & rule.Value) != 0)
            {
                yield return rule;
            }
        }
    }

    private static TradeDefault<PotLifeAssumptions> Rule(PotLifeAssumptions flag, string word, string what, string written, string source) => new(
        $"default.pot-life.{word}", what, flag, written, source, flag == PotLifeAssumptions.ThinFilm ? "give the resin a `film-life 150 min at 23 degC`" : OwnPotLife);
}
