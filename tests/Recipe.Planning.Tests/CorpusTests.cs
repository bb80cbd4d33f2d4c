using System.Globalization;
using Recipe.Model;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>Every sample and every recipe of the sound corpus, through its text: the plan is one that a shop could work by.</summary>
public class CorpusTests
{
    public static TheoryData<string, string> Parts
    {
        get
        {
            var parts = new TheoryData<string, string>();
            foreach (var path in Corpus.Sound)
            {
                // A part that only joins others has no plies of its own to plan.
                foreach (var part in Corpus.Model(path).Parts.Where(p => !p.Stack.IsEmpty))
                {
                    parts.Add(path, part.Name);
                }
            }

            return parts;
        }
    }

    public static TheoryData<string, string, string, string, string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string, string, string, string, string>();
            foreach (var row in Corpus.Table("tests/corpus/hand-check.tsv"))
            {
                rows.Add(row[0], row[1], row[2], row[3], row[4], row[5]);
            }

            return rows;
        }
    }

    [Fact]
    public void TheCorpusIsThere() => Assert.True(Parts.Count >= 15, $"{Parts.Count} parts");

    /// <summary>The author's target and the plan agree within the author's tolerance, and within the band of the plan.</summary>
    [Theory]
    [MemberData(nameof(Parts))]
    public void TheTargetIsWhatComesOut(string path, string part)
    {
        var plan = Corpus.Plan(path, part);
        var mass = plan.Laminate!.TrimmedMass.Value;
        if (plan.Part.TargetMass is { } target)
        {
            Assert.InRange(target.Value, mass.Low, mass.High);
            Assert.True(
                Math.Abs((target.Value - mass.Value).Grams) <= plan.Part.TargetTolerance!.Value.Grams,
                $"target {target.Written}, expected {mass.Value.Grams:F1} g");
        }
    }

    /// <summary>Nothing is missing but what the shipped book does not know: how a prepreg, a polyester and a vinylester cure.</summary>
    [Theory]
    [MemberData(nameof(Parts))]
    public void NothingIsMissing(string path, string part)
    {
        var plan = Corpus.Plan(path, part);
        Assert.Equal(
            plan.Part is { Process.Value: Process.Prepreg } or { Resin.Chemistry: Chemistry.Polyester or Chemistry.Vinylester } ? ["progress of the cure"] : [],
            plan.Gaps.Select(g => g.Subject));
    }

    /// <summary>In a sound recipe every pot is used up alive, and the bag is on while the resin still flows.</summary>
    [Theory]
    [MemberData(nameof(Parts))]
    public void ThereIsTimeEnough(string path, string part)
    {
        var plan = Corpus.Plan(path, part);
        Assert.All([.. plan.Pots, .. plan.OwnMixes.SelectMany(m => m.Pots)], pot => Assert.True(pot.UsedUpAt.Value < pot.DeadAt!.Value.Value, $"pot {pot.Number}"));
        Assert.Equal(plan.Part.Process.Value == Process.Bagged, plan.Clock is not null);
        Assert.True(plan.Clock is not { } clock || clock.Need.Value < clock.FilmLife!.Value.Value);
    }

    /// <summary>Nothing in the heat gets hotter than it stands; a hard point of the book says nothing of that, since its resin decides.</summary>
    [Theory]
    [MemberData(nameof(Parts))]
    public void EverythingStandsTheCure(string path, string part) => Assert.All(
        Corpus.Plan(path, part).Cure!.Limits,
        limit => Assert.True(limit.Limit is { } known ? limit.Hottest <= known.Value : limit.Item.StartsWith("insert ", StringComparison.Ordinal), limit.Item));

    /// <summary>Figures worked by hand beside the recipes, each with its formula in the table.</summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void TheFiguresAreThoseWorkedByHand(string path, string part, string quantity, string value, string unit, string tolerance)
    {
        var expected = UnitTable.Get(unit).ToSi(Number(value));
        var actual = Planned(Corpus.Plan(path, part), quantity);
        var off = Math.Max(Number(tolerance), 1e-9) * Math.Abs(expected);
        Assert.True(Math.Abs(actual - expected) <= off, string.Create(CultureInfo.InvariantCulture, $"{quantity}: {UnitTable.Get(unit).FromSi(actual)} {unit}, by hand {value}"));
    }

    private static double Planned(Plan plan, string quantity) => quantity switch
    {
        "surface of one side" => plan.Geometry!.Area.SquareMeters,
        "rim of one half" => plan.Geometry!.Rim.Meters,
        "dry fibre inside the trim line, all sides" => plan.Laminate!.Fibre.Value.Kilograms,
        "resin that stays, core faces included" => plan.Laminate!.Resin.Value.Kilograms,
        "core" => plan.Laminate!.Core.Value.Kilograms,
        "coats" => plan.Laminate!.Coats.Value.Kilograms,
        "seam: tape, its resin and fillet" => plan.Laminate!.Join!.Value.Value.Kilograms,
        "trimmed mass" => plan.Laminate!.TrimmedMass.Value.Value.Kilograms,
        "resin needed, without spare" => plan.Resin!.Need.Value.Kilograms,
        "resin mixed in the three pots" => plan.Pots.Length == 3 ? plan.Pots.Sum(p => p.Mass.Value.Kilograms) : double.NaN,
        "film life at 20 degC" => plan.Clock!.FilmLife!.Value.Value.Seconds,
        _ when quantity.StartsWith("air outside at ", StringComparison.Ordinal) => plan.Conditions.Ambient.Value.Pascals,
        _ when quantity.StartsWith("vacuum below ambient ", StringComparison.Ordinal) => plan.Vacuum!.BelowAmbient.Value.Pascals,
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "The plan has no such quantity."),
    };

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
