using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class InfusionFillTests
{
    private static ViscosityCurve Growing(double start, double tau) => ViscosityCurve.Doubling(PaS(start), S(tau * Math.Log(2)));

    private static ViscosityCurve SampledExponential(double start, double tau) =>
        ViscosityCurve.FromFormula(t => PaS(start * Math.Exp(t.Seconds / tau)), S(12 * tau));

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
                FillOutcome circle = InfusionFill.Circle(medium, Kpa(pull), Mm(5), M(length), resin, PaS(2 * mu), S(600));
                Digits.Close(
                    RadialFlow.FillTime(medium, PaS(mu), Kpa(pull), Mm(5), M(length)).Seconds, circle.Time!.Value.Seconds);
                Digits.Close(mu, circle.Viscosity!.Value.PascalSeconds);
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
                Digits.Close(mu / (1 - share), line.Viscosity!.Value.PascalSeconds);

                // A pot that has stood for a while is a thicker resin with the same tau.
                FillOutcome late = InfusionFill.Line(medium, Kpa(pull), M(length), Growing(mu * Math.Exp(-3), tau), opened: S(3 * tau));
                Digits.Close(expected, late.Time!.Value.Seconds, 1e-9);
            },
            iter: 1000);
    }

    [Fact]
    public void A_sampled_formula_agrees_with_the_closed_form()
    {
        Gen.Select(Gen.Double[0.1, 1], Gen.Double[300, 6000], Gen.Double[0.05, 0.99]).Sample(
            (mu, tau, share) =>
            {
                double length = Darcy.FrontAfter(Glass, PaS(mu), Pull, S(share * tau)).Meters;
                FillOutcome line = InfusionFill.Line(Glass, Pull, M(length), SampledExponential(mu, tau));
                Digits.Close(-tau * Math.Log(1 - share), line.Time!.Value.Seconds, 1e-6);

                // A formula that is not straight in the logarithm: mu0 (1 + t/tau), whose integral is tau ln(1 + t/tau)/mu0.
                ViscosityCurve bent = ViscosityCurve.FromFormula(t => PaS(mu * (1 + (t.Seconds / tau))), S(12 * tau));
                Digits.Close(tau * (Math.Exp(share) - 1), InfusionFill.Line(Glass, Pull, M(length), bent).Time!.Value.Seconds, 1e-6);

                // mu0/(1 - t/tau)^2, which runs off at a gel time tau: the integral is tau (1 - (1 - t/tau)^3)/(3 mu0).
                ViscosityCurve gel = ViscosityCurve.FromFormula(t => PaS(mu * Math.Pow(1 - (t.Seconds / tau), -2)), S(0.999 * tau));
                double part = share / 3.1;
                Length reach = Darcy.FrontAfter(Glass, PaS(mu), Pull, S(part * tau));
                Digits.Close(
                    tau * (1 - Math.Cbrt(1 - (3 * part))), InfusionFill.Line(Glass, Pull, reach, gel).Time!.Value.Seconds, 1e-6);
            },
            iter: 30);
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
                Assert.Null(line.Viscosity);
                Digits.Close(length / Math.Sqrt(times), line.Front.Meters);

                double round = RadialFlow.FillTime(medium, PaS(mu), Kpa(pull), Mm(2), M(length)).Seconds;
                FillOutcome circle = InfusionFill.Circle(medium, Kpa(pull), Mm(2), M(length), Growing(mu, round / times));
                Assert.Null(circle.Time);
                Digits.Close(round / times, RadialFlow.FillTime(medium, PaS(mu), Kpa(pull), Mm(2), circle.Front).Seconds);
            },
            iter: 500);
    }

    [Fact]
    public void A_viscosity_limit_stops_the_count()
    {
        // Rule of thumb (from memory): the fill ends before the viscosity doubles. With mu0 exp(t/tau) that is tau ln 2, and until
        // then the front has gone as far as in tau/2 at mu0.
        ViscosityCurve resin = Growing(0.3, 3000);
        Digits.Close(3000 * Math.Log(2), resin.TimeToDouble()!.Value.Seconds);
        Digits.Close(3000 * Math.Log(2), resin.TimeToDouble(S(5000))!.Value.Seconds);
        double reach = Darcy.FrontAfter(Glass, PaS(0.3), Pull, S(1500)).Meters;
        FillOutcome there = InfusionFill.Line(Glass, Pull, M(reach * 0.999999), resin, PaS(0.6));
        Assert.NotNull(there.Time);
        Assert.True(there.Time < resin.TimeToDouble());
        FillOutcome shortOf = InfusionFill.Line(Glass, Pull, M(reach * 1.000001), resin, PaS(0.6));
        Assert.Null(shortOf.Time);
        Digits.Close(reach, shortOf.Front.Meters);
        Digits.Close(0.6, shortOf.Viscosity!.Value.PascalSeconds);

        // Resin that is past the limit when the feed is opened does not flow at all.
        FillOutcome late = InfusionFill.Circle(Glass, Pull, Mm(5), M(0.2), resin, PaS(0.6), S(4000));
        Assert.Null(late.Time);
        Digits.Close(5, late.Front.Millimeters);
    }

    [Fact]
    public void A_measured_curve_ends_where_it_ends()
    {
        // 0.2, 0.2, 0.4 Pa s at 0, 1000, 2000 s: by hand the integral to 1000 s is 5000, then 1000/(0.2 ln 2)/2 = 3606.74 1/Pa more.
        ViscosityCurve resin = ViscosityCurve.Measured([(S(0), PaS(0.2)), (S(1000), PaS(0.2)), (S(2000), PaS(0.4))]);
        Assert.Equal(S(2000), resin.End);
        Digits.Close(0.2, resin.Start.PascalSeconds);
        Digits.Close(0.2 * Math.Sqrt(2), resin.At(S(1500)).PascalSeconds);
        Digits.Close(1500, resin.TimeToViscosity(PaS(0.2 * Math.Sqrt(2)))!.Value.Seconds);
        Digits.Close(2000, resin.TimeToDouble()!.Value.Seconds);
        Assert.Null(resin.TimeToViscosity(PaS(0.41)));
        Assert.Equal(Duration.Zero, resin.TimeToViscosity(PaS(0.1)));
        FillOutcome line = InfusionFill.Line(Glass, Pull, M(10), resin);
        Assert.Null(line.Time);
        double integral = 5000 + (1000 / (0.4 * Math.Log(2)));
        Digits.Close(Math.Sqrt(2 * 1e-10 * 95e3 * integral / 0.5), line.Front.Meters);
        Digits.Close(0.4, line.Viscosity!.Value.PascalSeconds);
        FillOutcome middle = InfusionFill.Line(Glass, Pull, Darcy.FrontAfter(Glass, PaS(0.2), Pull, S(900)), resin);
        Digits.Close(900, middle.Time!.Value.Seconds);

        // Opened at 500 s: 500 s at 0.2 Pa s are left before it thickens.
        FillOutcome late = InfusionFill.Line(Glass, Pull, M(10), resin, opened: S(500));
        Digits.Close(Math.Sqrt(2 * 1e-10 * 95e3 * (integral - 2500) / 0.5), late.Front.Meters);
        Assert.Equal(Length.Zero, InfusionFill.Line(Glass, Pull, M(10), resin, opened: S(2000)).Front);
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
        Assert.Null(InfusionFill.Circle(Glass, Pull, Mm(5), M(1), resin, PaS(1e9), S(1e12)).Time);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Refused("viscosity", () => ViscosityCurve.Constant(PaS(0)));
        Refused("start", () => ViscosityCurve.Doubling(PaS(-1), S(1)));
        Refused("doubling", () => ViscosityCurve.Doubling(PaS(1), S(0)));
        Assert.Throws<ArgumentException>(() => ViscosityCurve.Measured([(S(0), PaS(1))]));
        Refused("points", () => ViscosityCurve.Measured([(S(1), PaS(1)), (S(2), PaS(1))]));
        Refused("points", () => ViscosityCurve.Measured([(S(0), PaS(1)), (S(0), PaS(1))]));
        Refused("points", () => ViscosityCurve.Measured([(S(0), PaS(1)), (S(1), PaS(0.9))]));
        Refused("points", () => ViscosityCurve.FromFormula(t => PaS(1 - (t.Seconds / 100)), S(10)));
        Refused("viscosity", () => ViscosityCurve.FromFormula(t => PaS(Math.Exp(10 * t.Seconds)), S(10)));
        Refused("end", () => ViscosityCurve.FromFormula(_ => PaS(1), S(0)));
        ViscosityCurve resin = ViscosityCurve.Measured([(S(0), PaS(1)), (S(10), PaS(2))]);
        Refused("time", () => resin.At(S(11)));
        Refused("opened", () => InfusionFill.Line(Glass, Pull, M(1), resin, opened: S(11)));
        Refused("limit", () => InfusionFill.Line(Glass, Pull, M(1), resin, PaS(0)));
        Refused("length", () => InfusionFill.Line(Glass, Pull, M(0), resin));
        Refused("front", () => InfusionFill.Circle(Glass, Pull, Mm(5), Mm(1), resin));
    }
}
