using CsCheck;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class InfusionFillTests
{
    private static ViscosityCurve Growing(double start, double tau) => ViscosityCurve.Doubling(PaS(start), S(tau * Math.Log(2)));

    [Fact]
    public void A_viscosity_that_stays_gives_the_plain_times()
    {
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[0.01, 2]).Sample(
            (medium, mu, pull, length) =>
            {
                ViscosityCurve resin = ViscosityCurve.Constant(PaS(mu));
                FillOutcome line = InfusionFill.Line(medium, Kpa(pull), M(length), resin);
                Digits.Close(Darcy.FillTime(medium, PaS(mu), Kpa(pull), M(length)).Seconds, line.Time!.Value.Seconds);
                Assert.Equal(M(length), line.Front);
                FillOutcome circle = InfusionFill.Circle(medium, Kpa(pull), Mm(5), M(length), resin, S(600));
                Digits.Close(
                    RadialFlow.FillTime(medium, PaS(mu), Kpa(pull), Mm(5), M(length)).Seconds, circle.Time!.Value.Seconds);
            },
            iter: 500);
    }

    // Closed form for mu0 exp(t/tau): tau (1 - exp(-t/tau))/mu0 takes the place of t/mu, so t = -tau ln(1 - t0/tau) with t0 the
    // time at mu0; beyond t0 = tau the front never gets there and stops at L sqrt(tau/t0).
    [Fact]
    public void A_growing_viscosity_agrees_with_the_closed_form()
    {
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[0.05, 1.5], Gen.Double[0.05, 0.99]).Sample(
            (medium, mu, pull, length, share) =>
            {
                double plain = Darcy.FillTime(medium, PaS(mu), Kpa(pull), M(length)).Seconds;
                double tau = plain / share;
                double expected = -tau * Math.Log(1 - share);
                FillOutcome line = InfusionFill.Line(medium, Kpa(pull), M(length), Growing(mu, tau));
                Digits.Close(expected, line.Time!.Value.Seconds, 1e-9);
                Digits.Close(mu / (1 - share), Growing(mu, tau).At(line.Time.Value).PascalSeconds);

                // A pot that has stood for a while is a thicker resin with the same tau.
                FillOutcome late = InfusionFill.Line(medium, Kpa(pull), M(length), Growing(mu * Math.Exp(-3), tau), opened: S(3 * tau));
                Digits.Close(expected, late.Time!.Value.Seconds, 1e-9);
            },
            iter: 1000);
    }

    [Fact]
    public void A_front_that_stalls_says_where()
    {
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[0.05, 1.5], Gen.Double[1.01, 50]).Sample(
            (medium, mu, pull, length, times) =>
            {
                double plain = Darcy.FillTime(medium, PaS(mu), Kpa(pull), M(length)).Seconds;
                FillOutcome line = InfusionFill.Line(medium, Kpa(pull), M(length), Growing(mu, plain / times));
                Assert.Null(line.Time);
                Digits.Close(length / Math.Sqrt(times), line.Front.Meters);

                double round = RadialFlow.FillTime(medium, PaS(mu), Kpa(pull), Mm(2), M(length)).Seconds;
                FillOutcome circle = InfusionFill.Circle(medium, Kpa(pull), Mm(2), M(length), Growing(mu, round / times));
                Assert.Null(circle.Time);
                Digits.Close(round / times, RadialFlow.FillTime(medium, PaS(mu), Kpa(pull), Mm(2), circle.Front).Seconds);
            },
            iter: 500);
    }

    [Fact]
    public void Within_the_time_it_doubles_in_the_front_goes_as_far_as_in_half_the_growth_at_first()
    {
        // Rule of thumb (from memory): the fill ends before the viscosity doubles. With mu0 exp(t/tau) that is tau ln 2, and until
        // then the front has gone as far as in tau/2 at mu0.
        ViscosityCurve resin = Growing(0.3, 3000);
        Digits.Close(3000 * Math.Log(2), resin.DoublesIn!.Value.Seconds);
        Digits.Close(0.6, resin.At(resin.DoublesIn.Value).PascalSeconds);
        Assert.Null(ViscosityCurve.Constant(PaS(0.3)).DoublesIn);
        double reach = Darcy.FrontAfter(Glass, PaS(0.3), Pull, S(1500)).Meters;
        Digits.Close(3000 * Math.Log(2), InfusionFill.Line(Glass, Pull, M(reach), resin).Time!.Value.Seconds, 1e-9);
    }

    // mu0 exp(t/tau) with a tau so long that it hardly grows: the time is the plain one and t0/(2 tau) of it more.
    [Theory]
    [InlineData(1e7)]
    [InlineData(1e11)]
    public void A_viscosity_that_hardly_grows_keeps_the_digits_of_the_time(double tau)
    {
        double plain = Darcy.FillTime(Glass, PaS(0.3), Pull, M(0.5)).Seconds;
        double filled = InfusionFill.Line(Glass, Pull, M(0.5), Growing(0.3, tau)).Time!.Value.Seconds;
        Digits.Close(plain * (1 + (plain / (2 * tau))), filled, (plain * plain / (tau * tau)) + 1e-13);
    }

    [Fact]
    public void Thicker_resin_never_fills_sooner_nor_farther()
    {
        Gen.Select(Gen.Double[0.1, 1], Gen.Double[100, 5000], Gen.Double[0.05, 2], Gen.Double[1, 3]).Sample(
            (mu, tau, length, more) =>
            {
                FillOutcome thin = InfusionFill.Line(Glass, Pull, M(length), Growing(mu, tau));
                FillOutcome thick = InfusionFill.Line(Glass, Pull, M(length), Growing(mu * more, tau / more));
                double Seconds(FillOutcome outcome) => outcome.Time?.Seconds ?? double.PositiveInfinity;
                Assert.True(Seconds(thick) >= Seconds(thin));
                Assert.True(thick.Front.Meters <= thin.Front.Meters * (1 + 1e-12));
            },
            iter: 1000);
    }

    [Fact]
    public void Resin_long_gone_off_goes_nowhere_and_still_has_a_number()
    {
        ViscosityCurve resin = ViscosityCurve.Doubling(PaS(0.3), S(1));
        Assert.True(double.IsFinite(resin.At(S(1e12)).PascalSeconds));
        FillOutcome line = InfusionFill.Line(Glass, Pull, M(1), resin, opened: S(1e12));
        Assert.Null(line.Time);
        Digits.Close(1, 1 + line.Front.Meters);
        Assert.Null(InfusionFill.Circle(Glass, Pull, Mm(5), M(1), resin, S(1e12)).Time);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Refused("viscosity", () => ViscosityCurve.Constant(PaS(0)));
        Refused("start", () => ViscosityCurve.Doubling(PaS(-1), S(1)));
        Refused("doubling", () => ViscosityCurve.Doubling(PaS(1), S(0)));
        ViscosityCurve resin = ViscosityCurve.Doubling(PaS(1), S(10));
        Refused("time", () => resin.At(S(-1)));
        Refused("opened", () => InfusionFill.Line(Glass, Pull, M(1), resin, opened: S(-1)));
        Refused("length", () => InfusionFill.Line(Glass, Pull, M(0), resin));
        Refused("front", () => InfusionFill.Circle(Glass, Pull, Mm(5), Mm(1), resin));
    }
}
