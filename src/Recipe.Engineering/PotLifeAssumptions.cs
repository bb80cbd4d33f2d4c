namespace Recipe.Engineering;

/// <summary>The rules of thumb that an estimate of pot life rests on, to be shown beside it.</summary>
[Flags]
public enum PotLifeAssumptions
{
    /// <summary>None: the conditions are those of the data sheet.</summary>
    None = 0,

    /// <summary>Life halves for each 10 K warmer and doubles for each 10 K colder (common practice).</summary>
    HalvesPerTenKelvin = 1,

    /// <summary>
    /// Above 32.2 degC (90 degF) never more than half the life that the sheet gives for a cooler pot
    /// (US Army TM 1-1500-204-23-11); set when that cap shortened the life.
    /// </summary>
    HalvedWhenHot = 2,

    /// <summary>The temperature lies outside 10 to 40 degC, where the rule of thumb is commonly used.</summary>
    TemperatureBeyondRule = 4,

    /// <summary>A pot larger than 150 g lives shorter, by the batch mass curve (from memory).</summary>
    BatchMassCurve = 8,

    /// <summary>The pot is heavier than the last point of the curve, 1 kg; the curve's last slope was carried on.</summary>
    MassBeyondCurve = 16,

    /// <summary>A tray of at most 10 mm depth lives half as long again as a deep cup (low end of 1.5 to 2.5, from memory).</summary>
    ShallowTray = 32,

    /// <summary>Resin spread in a thin film lives twice the pot life of a small pot (low end of 2 to 3, from memory).</summary>
    ThinFilm = 64,
}
