namespace Recipe.Planning.Tests;

/// <summary>From the cure block and the resin to gel, vacuum off, demould and glass transition.</summary>
public class CureProgressTests
{
    // Form of Kamal and Sourour 1973 with constants of our own, integrated by Runge-Kutta outside the project: 23 degC, 60, 480 and 1440 min.
    // 50 and 48 kJ/mol over 8.314 J/mol K.
    private const string Computed = """
        resin computed-epoxy {
          chemistry  epoxy
          kinetics kamal-sourour source "constants of a test, no material" {
            a1         (8.0e4 / 1 min)
            e1-over-r  6013.9524 K
            a2         (4.0e6 / 1 min)
            e2-over-r  5773.3943 K
            m          1
            n          2
          }
        }

        """;

    [Theory]
    [InlineData("60 min", 0.011116)]
    [InlineData("480 min", 0.60169)]
    [InlineData("1440 min", 0.9267)]
    public void TheDegreeOfCureIsTheIntegratedOne(string time, double degree)
    {
        var plan = Corpus.PlanOf(Computed + Part("computed-epoxy", $"hold 23 degC for {time}"));
        var progress = plan.Cure!.Progress!;
        Assert.True(progress.OwnKinetics);
        Assert.Equal(degree, progress.Degree.Value, 5e-5);

        // Nobody gave a glass transition, so nothing is said of it, and that it is missing is said.
        Assert.Null(progress.Transition);
        Assert.Contains(plan.Gaps, gap => gap.Missing.Contains("glass-transition-limit", StringComparison.Ordinal));
    }

    /// <summary>The way there passes through the values that were integrated outside, here in 60 pieces of 24 min.</summary>
    [Fact]
    public void TheCurvePassesThroughTheIntegratedDegrees()
    {
        var progress = Corpus.PlanOf(Computed + Part("computed-epoxy", "hold 23 degC for 1440 min")).Cure!.Progress!;
        Assert.Equal(0, progress.Curve[0].Degree, 1e-9);
        Assert.Equal(480, progress.Curve[20].At.Minutes, 1e-6);
        Assert.Equal(0.60169, progress.Curve[20].Degree, 5e-5);
        Assert.Equal(0.9267, progress.Curve[^1].Degree, 5e-5);
        Assert.All(progress.Curve, moment => Assert.Null(moment.Transition));
    }

    /// <summary>Without kinetics of its own a resin cures as fast as its gel time says.</summary>
    [Fact]
    public void TheGelTimeOfTheSheetComesBack()
    {
        var progress = Corpus.PlanOf(Part("infusion-epoxy", "hold 23 degC for 40 h")).Cure!.Progress!;
        Assert.False(progress.OwnKinetics);
        Assert.Equal(10, progress.Gel!.Value.Value.Hours, 0.05);
        Assert.Equal(15, progress.VacuumOff!.Value.Value.Hours, 1.0);
        Assert.Contains("default.cure-shape", progress.Gel.Value.RestsOn);
    }

    [Fact]
    public void TheGlassTransitionOfTheSheetComesBack()
    {
        var progress = Corpus.PlanOf(Part("slow-laminating-epoxy", "hold 20 degC for 24 h")).Cure!.Progress!;
        var (value, low, high) = (progress.Transition!.Value.Value.Value, progress.Transition.Value.Value.Low, progress.Transition.Value.Value.High);
        Assert.Equal(45, value.DegreesCelsius, 0.2);
        Assert.InRange(low.DegreesCelsius, 36, 40.1);
        Assert.InRange(high.DegreesCelsius, 49.9, 54);
    }

    /// <summary>Common practice: a laminating epoxy goes to 73 degC by 16 h at 50 degC, and a cure ends 15 to 30 degC above its temperature.</summary>
    [Theory]
    [InlineData("slow-laminating-epoxy")]
    [InlineData("infusion-epoxy")]
    public void APostCureLiftsItAsCommonPracticeHasIt(string resin)
    {
        var progress = Corpus.PlanOf(Part(resin, "hold 20 degC for 24 h\nramp 20 degC/h to 50 degC\nhold 50 degC for 16 h")).Cure!.Progress!;
        Assert.InRange(progress.Transition!.Value.Value.Value.DegreesCelsius, 68, 78);
    }

    [Fact]
    public void AColdRoomMakesEverythingLater()
    {
        var warm = Corpus.PlanOf(Part("slow-laminating-epoxy", "hold 23 degC for 300 h")).Cure!.Progress!;
        var cold = Corpus.PlanOf(Part("slow-laminating-epoxy", "hold 15 degC for 300 h")).Cure!.Progress!;
        Assert.InRange(cold.Gel!.Value.Value / warm.Gel!.Value.Value, 1.6, 2.0);
        Assert.True(cold.Demould!.Value.Value > warm.Demould!.Value.Value);
        Assert.True(cold.Transition!.Value.Value.Value < warm.Transition!.Value.Value.Value);
    }

    [Fact]
    public void AnOvenThatOutrunsALoosePartIsSeenAndASlowOneIsNot()
    {
        var quick = Corpus.PlanOf(Part("slow-laminating-epoxy", "hold 20 degC for 48 h\ndemould\nramp 120 degC/h to 75 degC\nhold 75 degC for 4 h")).Cure!.Progress!;
        Assert.True(quick.LeadOffMould!.Value.Value.Kelvins < 0);
        Assert.NotNull(quick.FastestRamp);
        var slow = FormattableString.Invariant($"{Math.Floor(quick.FastestRamp.Value.Value.DegreesCelsiusPerSecond * 3600)} degC/h");
        var kept = Corpus.PlanOf(Part("slow-laminating-epoxy", $"hold 20 degC for 48 h\ndemould\nramp {slow} to 75 degC\nhold 75 degC for 4 h")).Cure!.Progress!;
        Assert.InRange(kept.LeadOffMould!.Value.Value.Kelvins, 4.9, 60);
        Assert.Null(kept.FastestRamp);
    }

    [Fact]
    public void APrepregWithoutKineticsIsNotGuessed()
    {
        var plan = Corpus.Plan("tests/corpus/sound/prepreg-plate.recipe", Corpus.Model("tests/corpus/sound/prepreg-plate.recipe").Parts[0].Name);
        Assert.Null(plan.Cure!.Progress);
        Assert.Contains(plan.Gaps, gap => gap.Subject == "progress of the cure");
    }

    private static string Part(string resin, string cure) => $$"""
        mould plate {
          surface flat 400 mm x 300 mm
        }

        part strip {
          mould plate
          process hand
          resin {{resin}}
          plies {
            all glass-twill-163 0/90
          }
          cure {
        {{cure}}
          }
        }
        """;
}
