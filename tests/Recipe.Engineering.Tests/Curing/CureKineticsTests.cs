using UnitsNet;
using static Recipe.Engineering.Tests.Cures;

namespace Recipe.Engineering.Tests;

public class CureKineticsTests
{
    // Lee, Loos and Springer, J. Compos. Mater. 16 (1982) 510; constants from memory. The degrees were computed from them by an
    // independent program (RK4, steps of 0.002 min).
    [Theory]
    [InlineData(120, 10, 0.125326)]
    [InlineData(120, 30, 0.231492)]
    [InlineData(120, 60, 0.29797)]
    [InlineData(120, 120, 0.505071)]
    [InlineData(140, 10, 0.243977)]
    [InlineData(140, 30, 0.408285)]
    [InlineData(140, 60, 0.607451)]
    [InlineData(140, 120, 0.827235)]
    [InlineData(177, 10, 0.532011)]
    [InlineData(177, 30, 0.837853)]
    [InlineData(177, 60, 0.966931)]
    [InlineData(177, 120, 0.998625)]
    public void A_hot_prepreg_cures_as_Lee_Loos_and_Springer_have_it(double celsius, double minutes, double degree)
    {
        Within(degree, CureSimulation.Along(new LeeLoosSpringer(), Hold(celsius, minutes)).FinalDegree.DecimalFractions, 2e-5);

        // The curve says the same in the middle of a longer one.
        Within(degree, CureSimulation.Along(new LeeLoosSpringer(), Hold(celsius, 150)).At(minutes), 2e-5);
    }

    [Fact]
    public void Its_rates_are_those_of_the_three_constants()
    {
        // At 450.15 K, from the constants by a calculator: k1 0.907397, k2 -1.88779, k3 0.0529965 1/min.
        const double k1 = 0.907397;
        const double k2 = -1.88779;
        const double k3 = 0.0529965;
        LeeLoosSpringer model = new();
        double PerMinute(double degree) => 60 * model.RateAt(Part(degree), C(177)).Hertz;
        Digits.Close(k1 * 0.47, PerMinute(0), 1e-5);
        Digits.Close((k1 + (k2 * 0.2)) * 0.8 * 0.27, PerMinute(0.2), 1e-5);
        Digits.Close((k1 + (k2 * 0.3)) * 0.7 * 0.17, PerMinute(0.3), 1e-5);
        Digits.Close(k3 * 0.69999, PerMinute(0.30001), 1e-5);
        Digits.Close(k3 * 0.1, PerMinute(0.9), 1e-5);
        Assert.Equal(0, PerMinute(1));
        Assert.Equal([0.3], model.JumpDegrees);
        Digits.Close(473.6, LeeLoosSpringer.HeatOfReaction.JoulesPerKilogram / 1000);
    }

    [Fact]
    public void The_closed_form_after_the_jump_is_met_exactly()
    {
        // From 0.3 on the cure is of first order: 1 - a = 0.7 exp(-k3 (t - t1)).
        CureCurve cure = CureSimulation.Along(new LeeLoosSpringer(), Hold(177, 120));
        double jump = cure.TimeTo(Part(0.3))!.Value.Minutes;
        double k3 = 60 * new LeeLoosSpringer().RateAt(Part(0.5), C(177)).Hertz / 0.5;
        foreach (double after in new[] { 0.01, 1, 7, 30, 100 })
        {
            Within(1 - (0.7 * Math.Exp(-k3 * after)), cure.At(jump + after), 1e-7);
        }
    }

    [Fact]
    public void It_refuses_the_cold_and_the_very_hot_with_a_reason()
    {
        LeeLoosSpringer model = new();
        ArgumentOutOfRangeException cold = Assert.Throws<ArgumentOutOfRangeException>(() => model.RateAt(Part(0), C(20)));
        Assert.Contains("must be in the range of the cure model, 90 to 200 degC; it is 20 degC", cold.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => model.RateAt(Part(0), C(201)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CureSimulation.Along(model, Oven(20, 177, 2, 120)));
        Assert.Throws<ArgumentOutOfRangeException>(() => model.RateAt(Part(1.1), C(120)));

        // Unless the way up is taken to cure nothing: then it is the cure from 90 degC to 90 degC.
        CureCurve idle = CureSimulation.Along(model, Oven(20, 177, 2, 120), new CureOptions { IdleBelowRange = true });
        CureSchedule hot = CureSchedule.Create(
            C(90), [new RampStep(C(177), PerMinute(2)), new HoldStep(C(177), Min(120)), new CoolStep(C(90), PerMinute(2))]);
        Within(CureSimulation.Along(model, hot).FinalDegree.DecimalFractions, idle.FinalDegree.DecimalFractions, 1e-8);
        Assert.Equal(0, idle.At(60 + 34.9));
        Assert.True(idle.At(60 + 36) > 0);
    }

    [Fact]
    public void The_rate_of_Kamal_and_Sourour_is_its_formula()
    {
        CureKinetics model = Kamal(2, 1000, 3, 500, 0.5, 1.5);
        double k1 = 2 * Math.Exp(-1000 / 300.0);
        double k2 = 3 * Math.Exp(-500 / 300.0);
        Digits.Close((k1 + (k2 * Math.Sqrt(0.3))) * Math.Pow(0.7, 1.5), model.RateAt(Part(0.3), Temperature.FromKelvins(300)).Hertz);
        Assert.Equal(0, model.RateAt(Part(1), C(20)).Hertz);
        Assert.Empty(model.JumpDegrees);
    }

    [Fact]
    public void Constants_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Kamal(-1, 1000, 1, 1000, 1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Kamal(0, 1000, 0, 1000, 1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Kamal(1, -1000, 1, 1000, 1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Kamal(1, 1000, 1, 1000, double.NaN, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Kamal(1, 1000, 1, 1000, -1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Kamal(1, 1000, 1, 1000, 1, 0));
    }

    [Fact]
    public void A_cure_in_no_time_is_followed_to_its_end() =>
        Assert.Equal(1, CureSimulation.Along(Kamal(1e30, 0, 1e30, 0, 5, 1), Hold(20, 1)).FinalDegree.DecimalFractions, 9);
}
