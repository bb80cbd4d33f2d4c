using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Pot life of mixed resin at another temperature and mass than the data sheet's, and film life of resin spread on the part.
/// </summary>
/// <remarks>
/// Rules of thumb with the assumptions named in the result; they do not replace the maker's figures. Where kinetic data are known,
/// <see cref="SheetPot"/> follows the pot's own heat: take the shorter of the two.
/// A large pot left standing can smoke or catch fire: spread it out, never leave it.
/// </remarks>
public static class PotLife
{
    /// <summary>Film life over the life of a small pot: low end of 2 to 3 (from memory).</summary>
    public const double ThinFilmFactor = 2;

    /// <summary>Life in a tray of at most 10 mm over life in a deep cup: low end of 1.5 to 2.5 (from memory).</summary>
    public const double ShallowTrayFactor = 1.5;

    private const double HotKelvin = 305.37222222222222;
    private const double RuleLowKelvin = 283.15;
    private const double RuleHighKelvin = 313.15;

    /// <summary>Lowest temperature accepted, 0 degC.</summary>
    public static Temperature LowestTemperature { get; } = Temperature.FromDegreesCelsius(0);

    /// <summary>Highest temperature accepted, 60 degC.</summary>
    public static Temperature HighestTemperature { get; } = Temperature.FromDegreesCelsius(60);

    /// <summary>Largest pot that still counts as small, so that its mass does not shorten its life: 150 g.</summary>
    public static Mass SmallPot { get; } = Mass.FromKilograms(BatchMassCurve.FirstPoint);

    /// <summary>
    /// Pot life of a pot: <c>t_ref * 2^((T_ref - T)/10 K) * F(m)/F(m_ref) * shape</c>, where F is the batch mass curve
    /// (1 up to 150 g; 0.75 at 300 g; 0.60 at 500 g; 0.42 at 1 kg; log-log in between and beyond).
    /// Above 32.2 degC the temperature factor is at most one half when the sheet's own temperature is not above that.
    /// </summary>
    /// <param name="reference">What the data sheet says.</param>
    /// <param name="temperature">Temperature of resin and shop; 0 to 60 degC.</param>
    /// <param name="batch">Mass of the mixed pot; greater than zero.</param>
    /// <param name="shape">Deep cup or shallow tray.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature or the mass is out of range.</exception>
    /// <remarks>
    /// Source: halving per 10 K, common practice (an Arrhenius rate of 55 kJ/mol gives 2.06 between 25 and 35 degC);
    /// the cap, US Army TM 1-1500-204-23-11; mass and tray, from memory.
    /// </remarks>
    public static PotLifeEstimate At(
        PotLifeReference reference, Temperature temperature, Mass batch, PotShape shape = PotShape.DeepCup)
    {
        PotLifeAssumptions used = PotLifeAssumptions.None;
        double heat = TemperatureFactor(reference, temperature, ref used);
        double mass = MassFactor(reference, Guard.Positive(batch.Kilograms, "kg", nameof(batch)), ref used);
        double tray = 1;
        if (shape == PotShape.ShallowTray)
        {
            tray = ShallowTrayFactor;
            used |= PotLifeAssumptions.ShallowTray;
        }

        return Estimate(reference, heat, mass, tray, used);
    }

    /// <summary>
    /// Film life: how long resin stays workable once spread thin on the part, twice the life of a small pot at that temperature,
    /// whatever the mass of the pot it came from.
    /// </summary>
    /// <param name="reference">What the data sheet says of pot life.</param>
    /// <param name="temperature">Temperature of the part; 0 to 60 degC.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    /// <remarks>Source: common practice, 2 to 3 times, from memory; the low end is used.</remarks>
    public static PotLifeEstimate InFilm(PotLifeReference reference, Temperature temperature)
    {
        PotLifeAssumptions used = PotLifeAssumptions.ThinFilm;
        double heat = TemperatureFactor(reference, temperature, ref used);
        double mass = MassFactor(reference, BatchMassCurve.FirstPoint, ref used);
        return Estimate(reference, heat, mass, ThinFilmFactor, used);
    }

    /// <summary>Film life where the data sheet gives it: the sheet's, carried to another temperature; mass plays no part.</summary>
    /// <param name="filmLife">Film life on the data sheet; greater than zero.</param>
    /// <param name="at">Temperature it is given at; 0 to 60 degC.</param>
    /// <param name="temperature">Temperature of the part; 0 to 60 degC.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: as for <see cref="At"/>.</remarks>
    public static PotLifeEstimate InFilm(Duration filmLife, Temperature at, Temperature temperature)
    {
        PotLifeReference reference = new(filmLife, at, SmallPot);
        PotLifeAssumptions used = PotLifeAssumptions.None;
        double heat = TemperatureFactor(reference, temperature, ref used);
        return Estimate(reference, heat, 1, 1, used);
    }

    internal static double CheckTemperature(Temperature temperature, string parameter) =>
        273.15 + Guard.Between(
            temperature.DegreesCelsius,
            LowestTemperature.DegreesCelsius - 1e-9,
            HighestTemperature.DegreesCelsius + 1e-9,
            "degC",
            parameter);

    private static double TemperatureFactor(
        PotLifeReference reference, Temperature temperature, ref PotLifeAssumptions used)
    {
        double kelvin = CheckTemperature(temperature, nameof(temperature));
        double difference = temperature.DegreesCelsius - reference.At.DegreesCelsius;
        double factor = Math.Pow(2, -difference / 10);
        if (Math.Abs(difference) > 1e-9)
        {
            used |= PotLifeAssumptions.HalvesPerTenKelvin;
        }

        if (kelvin is < RuleLowKelvin - 1e-9 or > RuleHighKelvin + 1e-9)
        {
            used |= PotLifeAssumptions.TemperatureBeyondRule;
        }

        bool sheetIsCooler = reference.At.Kelvins <= HotKelvin + 1e-9;
        if (kelvin > HotKelvin + 1e-9 && sheetIsCooler && factor > 0.5)
        {
            factor = 0.5;
            used |= PotLifeAssumptions.HalvedWhenHot;
        }

        return factor;
    }

    private static double MassFactor(PotLifeReference reference, double mass, ref PotLifeAssumptions used)
    {
        double sheet = reference.Batch.Kilograms;
        if (mass == sheet)
        {
            return 1;
        }

        if (Math.Max(mass, sheet) > BatchMassCurve.FirstPoint)
        {
            used |= PotLifeAssumptions.BatchMassCurve;
        }

        if (Math.Max(mass, sheet) > BatchMassCurve.LastPoint)
        {
            used |= PotLifeAssumptions.MassBeyondCurve;
        }

        return BatchMassCurve.Factor(mass) / BatchMassCurve.Factor(sheet);
    }

    private static PotLifeEstimate Estimate(
        PotLifeReference reference, double heat, double mass, double shape, PotLifeAssumptions used) =>
        new(Duration.FromSeconds(reference.Life.Seconds * heat * mass * shape), heat, mass, shape, used);
}
