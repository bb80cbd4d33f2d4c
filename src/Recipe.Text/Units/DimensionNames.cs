using System.Collections.Frozen;

namespace Recipe.Text.Units;

/// <summary>The dimensions of the trade with the words people use for them.</summary>
public static class DimensionNames
{
    /// <summary>Length, m.</summary>
    public static readonly Dimension Length = new(0, 1, 0);

    /// <summary>Area, m2.</summary>
    public static readonly Dimension Area = new(0, 2, 0);

    /// <summary>Volume, m3.</summary>
    public static readonly Dimension Volume = new(0, 3, 0);

    /// <summary>Mass, kg.</summary>
    public static readonly Dimension Mass = new(1, 0, 0);

    /// <summary>Time, s.</summary>
    public static readonly Dimension Time = new(0, 0, 1);

    /// <summary>Temperature or temperature difference, K.</summary>
    public static readonly Dimension Temperature = new(0, 0, 0, 1);

    /// <summary>Heating or cooling rate, K/s.</summary>
    public static readonly Dimension TemperatureRate = new(0, 0, -1, 1);

    /// <summary>Plane angle, rad.</summary>
    public static readonly Dimension Angle = new(0, 0, 0, 0, 0, 1);

    /// <summary>Mass per area (cloth weight), kg/m2.</summary>
    public static readonly Dimension ArealWeight = new(1, -2, 0);

    /// <summary>Mass per length (fillet, yarn), kg/m.</summary>
    public static readonly Dimension LinearDensity = new(1, -1, 0);

    /// <summary>Density, kg/m3.</summary>
    public static readonly Dimension Density = new(1, -3, 0);

    /// <summary>Pressure, modulus or strength, Pa.</summary>
    public static readonly Dimension Pressure = new(1, -1, -2);

    /// <summary>Force, N.</summary>
    public static readonly Dimension Force = new(1, 1, -2);

    /// <summary>Force per length (a pull per width), N/m.</summary>
    public static readonly Dimension ForcePerLength = new(1, 0, -2);

    /// <summary>Dynamic viscosity, Pa.s.</summary>
    public static readonly Dimension Viscosity = new(1, -1, -1);

    /// <summary>Volume flow, m3/s.</summary>
    public static readonly Dimension VolumeFlow = new(0, 3, -1);

    /// <summary>Power, W.</summary>
    public static readonly Dimension Power = new(1, 2, -3);

    /// <summary>Energy, J.</summary>
    public static readonly Dimension Energy = new(1, 2, -2);

    /// <summary>Specific energy (heat of reaction), J/kg.</summary>
    public static readonly Dimension SpecificEnergy = new(0, 2, -2);

    /// <summary>Thermal expansion, 1/K.</summary>
    public static readonly Dimension Expansion = new(0, 0, 0, -1);

    /// <summary>Working pace, s/m2.</summary>
    public static readonly Dimension Pace = new(0, -2, 1);

    /// <summary>Area covered by a volume, m2/m3.</summary>
    public static readonly Dimension Coverage = new(0, -1, 0);

    /// <summary>Money.</summary>
    public static readonly Dimension Money = new(0, 0, 0, 0, 1);

    private static readonly FrozenDictionary<Dimension, string> Names = new Dictionary<Dimension, string>
    {
        [Dimension.None] = "plain number",
        [Length] = "length",
        [Area] = "area",
        [Volume] = "volume",
        [Mass] = "mass",
        [Time] = "time",
        [Temperature] = "temperature",
        [TemperatureRate] = "heating rate",
        [Angle] = "angle",
        [ArealWeight] = "weight per area",
        [LinearDensity] = "weight per length",
        [Density] = "density",
        [Pressure] = "pressure",
        [Force] = "force",
        [ForcePerLength] = "force per length",
        [Viscosity] = "viscosity",
        [VolumeFlow] = "volume flow",
        [Power] = "power",
        [Energy] = "energy",
        [SpecificEnergy] = "heat per mass",
        [Expansion] = "thermal expansion",
        [Pace] = "time per area",
        [Coverage] = "coverage",
        [Money] = "money",
        [Money / Mass] = "price per mass",
        [Money / Area] = "price per area",
        [Money / Length] = "price per length",
        [Money / Volume] = "price per volume",
        [Power / Area] = "heat flux",
    }.ToFrozenDictionary();

    /// <summary>The word for a dimension, or null.</summary>
    public static string? NameOf(Dimension dimension) => Names.GetValueOrDefault(dimension);
}
