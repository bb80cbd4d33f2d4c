using UnitsNet;

namespace Recipe.Engineering.Tests;

/// <summary>Resins and shorthand that the tests of cure share.</summary>
internal static class Cures
{
    /// <summary>Test constants, not a material: 8.0e4 1/min and 50 kJ/mol, 4.0e6 1/min and 48 kJ/mol, m 1, n 2.</summary>
    internal static CureKinetics Test { get; } = Kamal(8.0e4 / 60, 50_000 / 8.314, 4.0e6 / 60, 48_000 / 8.314, 1, 2);

    /// <summary>The slow laminating epoxy of the book that ships with the language; <see cref="ShippedResinTests"/> holds these figures against the book.</summary>
    internal static CureKinetics Slow { get; } = Kamal(7.24e5 / 60, 6014, 3.58e6 / 60, 5773, 1, 2);

    /// <summary>Its data sheet: 24 h at 20 degC.</summary>
    internal static CureSchedule Day { get; } = Hold(20, 24 * 60);

    /// <summary>Its glass transition, 45 degC after that day, 85 degC at most.</summary>
    internal static GlassTransitionFit SlowFit { get; } = DiffusionBrake.Through(Slow, Day, C(45), C(85));

    internal static CureOptions SlowOptions { get; } = new() { GlassTransition = SlowFit.Curve, Brake = SlowFit.Brake };

    internal static CureKinetics Kamal(double a1, double e1, double a2, double e2, double m, double n) =>
        new KamalSourour(Frequency.FromHertz(a1), K(e1), Frequency.FromHertz(a2), K(e2), m, n);

    internal static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    internal static TemperatureDelta K(double kelvins) => TemperatureDelta.FromKelvins(kelvins);

    internal static Duration Min(double minutes) => Duration.FromMinutes(minutes);

    internal static Ratio Part(double fraction) => Ratio.FromDecimalFractions(fraction);

    internal static TemperatureChangeRate PerMinute(double kelvins) => TemperatureChangeRate.FromDegreesCelsiusPerMinute(kelvins);

    internal static CureSchedule Hold(double celsius, double minutes) =>
        CureSchedule.Create(C(celsius), [new HoldStep(C(celsius), Min(minutes))]);

    /// <summary>Up, hold and down, with a step at the start.</summary>
    internal static CureSchedule Oven(double low, double high, double perMinute, double holdMinutes) =>
        CureSchedule.Create(
            C(low),
            [
                new HoldStep(C(low), Min(60)),
                new RampStep(C(high), PerMinute(perMinute)),
                new HoldStep(C(high), Min(holdMinutes)),
                new CoolStep(C(low), PerMinute(perMinute)),
            ]);

    internal static double At(this CureCurve cure, double minutes) => cure.DegreeAt(Min(minutes)).DecimalFractions;

    internal static void Within(double expected, double actual, double absolute) =>
        Assert.True(
            Math.Abs(expected - actual) <= absolute,
            FormattableString.Invariant($"expected {expected:R} within {absolute:R}, computed {actual:R}"));
}
