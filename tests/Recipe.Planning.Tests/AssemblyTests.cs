using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>What is joined of finished parts weighs what they weigh and what joins them. Worked by hand.</summary>
public class AssemblyTests
{
    private const string Rudder = "tests/corpus/sound/join-cured-then-bonded-rudder.recipe";

    /// <summary>
    /// Both shells are one stack in two moulds, so the blade weighs two of them and the adhesive: 1900 mm of seam, 25 mm wide and 0.3 mm thick, are
    /// 14.25 cm3 of it.
    /// </summary>
    [Fact]
    public void ItsMassIsThatOfItsPartsAndOfTheJoin()
    {
        var (shell, blade) = (Corpus.Plan(Rudder, "rudder-left").Laminate!.TrimmedMass, Corpus.Plan(Rudder, "rudder-blade"));
        var whole = blade.TrimmedMass!.Value;
        var adhesive = blade.Part.Join!.Adhesive!.CuredDensity?.Value ?? blade.Part.Join.Adhesive.Density!.Value;
        var glue = Mass.FromKilograms(14.25e-6 * adhesive.KilogramsPerCubicMeter);
        Assert.Null(blade.Laminate);
        Assert.Equal(((2 * shell.Value.Value) + glue).Grams, whole.Value.Value.Grams, 1e-6);

        // The same hands laid both: light both, or heavy both.
        Assert.Equal(((2 * shell.Value.Low) + glue).Grams, whole.Value.Low.Grams, 1e-6);
        Assert.Equal(((2 * shell.Value.High) + glue).Grams, whole.Value.High.Grams, 1e-6);
        Assert.Equal(["rudder-left", "rudder-right"], blade.Join!.Parts.Select(part => part.Name));
        Assert.DoesNotContain(blade.Gaps, gap => gap.Subject == "mass of the part");
    }

    [Fact]
    public void ItRestsOnWhatItsPartsRestOnAndListsIt()
    {
        var (shell, blade) = (Corpus.Plan(Rudder, "rudder-left"), Corpus.Plan(Rudder, "rudder-blade"));
        Assert.Empty(shell.TrimmedMass!.Value.RestsOn.Except(blade.TrimmedMass!.Value.RestsOn));
        Assert.NotEmpty(shell.TrimmedMass.Value.RestsOn);
        Assert.All(shell.TrimmedMass.Value.RestsOn, key => Assert.Equal(
            shell.Assumptions.Single(assumption => assumption.Key == key), blade.Assumptions.Single(assumption => assumption.Key == key)));
    }

    [Fact]
    public void AnAssemblyMayBeJoinedOfAssemblies()
    {
        var model = Corpus.Model(Rudder);
        var blade = model.Parts.Single(part => part.Name == "rudder-blade");
        var both = blade with { Name = "both", Join = blade.Join! with { Parts = ["rudder-blade", "rudder-left"] } };
        var all = model with { Parts = model.Parts.Add(both) };
        var joint = Corpus.Plan(Rudder, "rudder-blade").Join!.Mass.Value;
        Assert.Equal(
            ((3 * Corpus.Plan(Rudder, "rudder-left").TrimmedMass!.Value.Value.Value) + (2 * joint)).Grams,
            Planner.Plan(both, all).TrimmedMass!.Value.Value.Value.Grams,
            1e-6);
    }

    /// <summary>A part that is not known, or is joined of itself, is said and has no mass.</summary>
    [Theory]
    [InlineData("rudder-left", "rudder-middle", "rudder-middle")]
    [InlineData("rudder-left", "rudder-blade", "rudder-blade")]
    public void WithAPartOfUnknownMassItHasNone(string first, string second, string unknown)
    {
        var model = Corpus.Model(Rudder);
        var blade = model.Parts.Single(part => part.Name == "rudder-blade");
        var odd = blade with { Join = blade.Join! with { Parts = [first, second] } };
        var plan = Planner.Plan(odd, model with { Parts = model.Parts.Replace(blade, odd) });
        Assert.Null(plan.TrimmedMass);
        Assert.Contains(plan.Gaps, gap => gap.Subject == "mass of the part" && gap.Missing.Contains(unknown, StringComparison.Ordinal));
    }

    /// <summary>Each of two of the one before: 2^k shells and 2^k - 1 joints, and no more work than there are assemblies.</summary>
    [Theory]
    [InlineData(30, true)]
    [InlineData(2000, false)]
    public void AnAssemblyOfAssembliesIsPlannedOnceForEach(int deep, bool isWeighed)
    {
        var model = Corpus.Model(Rudder);
        var blade = model.Parts.Single(part => part.Name == "rudder-blade");
        var chain = Enumerable.Range(1, deep).Select(k => blade with
        {
            Name = FormattableString.Invariant($"of-{k}"),
            Join = blade.Join! with { Parts = [.. Enumerable.Repeat(k == 1 ? "rudder-left" : FormattableString.Invariant($"of-{k - 1}"), 2)] },
        }).ToList();
        var plan = Planner.Plan(chain[^1], model with { Parts = model.Parts.AddRange(chain) });
        Assert.Equal(isWeighed, plan.TrimmedMass is not null);
        if (plan.TrimmedMass is { Value: var whole })
        {
            var (shell, joint) = (Corpus.Plan(Rudder, "rudder-left").TrimmedMass!.Value.Value.Value, plan.Join!.Mass.Value);
            Assert.Equal((Math.Pow(2, deep) * shell.Grams) + ((Math.Pow(2, deep) - 1) * joint.Grams), whole.Value.Grams, 1e-9 * whole.Value.Grams);
        }
        else
        {
            Assert.Contains(plan.Gaps, gap => gap.Subject == "mass of the part");
        }
    }
}
