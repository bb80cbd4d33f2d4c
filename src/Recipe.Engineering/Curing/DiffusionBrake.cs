using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// What slows a cure down once its glass transition overtakes its temperature: <c>1/r = 1/r_chemical + 1/r_diffusion</c>, with
/// <c>r_diffusion = rg exp(C1 (T - Tg)/(C2 + T - Tg))</c> above the glass transition and, below it, an Arrhenius law of the same value
/// and slope at Tg, <c>rg exp(-(C1/C2) Tg (Tg - T)/T)</c>. Immutable.
/// </summary>
/// <remarks>
/// Source: Rabinowitch, Trans. Faraday Soc. 33 (1937) 1225, for the sum of the two times; the mobility by the equation of Williams, Landel
/// and Ferry, carried on by Arrhenius in the glass, as Wise, Cook and Goodwin, Polymer 38 (1997) 3251, do it (from memory).
/// C2 is the universal 51.6 K; C1 is assumed 20, half the universal 40.2, as fits to amine cures give less than that (from memory);
/// rg, 1/s, is assumed so that an epoxy cured a day at 20 degC ends 30 to 35 K above that. Common practice has 15 to 30 K above the
/// cure's temperature: where a data sheet gives a glass transition, fit rg to it with <see cref="Through"/>.
/// </remarks>
public sealed class DiffusionBrake
{
    /// <summary>Temperature difference of the mobility law, C2, in K.</summary>
    public const double C2 = 51.6;

    /// <summary>Strength of the mobility law, C1.</summary>
    public const double C1 = 20;

    private readonly double _atTransition;

    /// <summary>A brake from the rate that diffusion allows at the glass transition.</summary>
    /// <param name="rateAtTransition">rg, 1/s; 1e-12 to 1e12. Smaller brakes more; a tenth ends a cold cure about 5 K lower.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is out of range.</exception>
    public DiffusionBrake(Frequency rateAtTransition) =>
        _atTransition = Guard.Between(rateAtTransition.Hertz, 1e-12, 1e12, "1/s", nameof(rateAtTransition));

    /// <summary>The brake where nobody gives one: 1/s at the glass transition (assumed).</summary>
    public static DiffusionBrake Usual { get; } = new(Frequency.FromHertz(1));

    /// <summary>Rate that diffusion allows at the glass transition, rg.</summary>
    public Frequency RateAtTransition => Frequency.FromHertz(_atTransition);

    /// <summary>The rate of cure that is left of a chemical rate.</summary>
    /// <param name="chemical">Rate without the brake, 1/s; zero or more.</param>
    /// <param name="temperature">Temperature of the resin; -150 to 500 degC.</param>
    /// <param name="glassTransition">Its glass transition now; -150 to 500 degC.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public Frequency Slow(Frequency chemical, Temperature temperature, Temperature glassTransition) =>
        Frequency.FromHertz(Slow(
            Guard.NotNegative(chemical.Hertz, "1/s", nameof(chemical)),
            CureGuard.Kelvin(temperature, nameof(temperature)),
            CureGuard.Kelvin(glassTransition, nameof(glassTransition))));

    /// <summary>
    /// The brake that makes the cure along a soak end at the data sheet's glass transition, the uncured one being known or assumed.
    /// In at most 16 cures.
    /// </summary>
    /// <param name="kinetics">Cure of the resin.</param>
    /// <param name="soak">The cure that the data sheet names, such as 24 h at 20 degC.</param>
    /// <param name="glassTransition">Glass transition after that, from the data sheet.</param>
    /// <param name="limit">TgInf, from the data sheet.</param>
    /// <param name="uncured">Tg0; <see cref="DiBenedetto.UsualUncured"/> when it is not given.</param>
    /// <param name="lambda">The constant L of the curve.</param>
    /// <returns>The brake and the curve, or the nearest, and whether the cure ends there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the sheet's Tg is not below its limit.</exception>
    public static GlassTransitionFit Through(
        CureKinetics kinetics,
        CureSchedule soak,
        Temperature glassTransition,
        Temperature limit,
        Temperature? uncured = null,
        double lambda = DiBenedetto.UsualLambda) =>
        GlassTransitionFit.OfBrake(kinetics, soak, glassTransition, limit, uncured ?? DiBenedetto.UsualUncured, lambda);

    internal double Slow(double chemical, double kelvin, double transitionKelvin)
    {
        double above = kelvin - transitionKelvin;
        double exponent = above >= 0
            ? C1 * above / (C2 + above)
            : C1 / C2 * above * transitionKelvin / kelvin;
        double diffusion = _atTransition * Math.Exp(exponent);
        return diffusion <= 0 ? 0 : chemical * (diffusion / (chemical + diffusion));
    }
}
