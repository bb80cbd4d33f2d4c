namespace Recipe.Text.Units;

/// <summary>Whether a unit counts from a zero of its own.</summary>
public enum UnitScale
{
    /// <summary>Proportional: twice the number is twice the thing.</summary>
    Proportional,

    /// <summary>A temperature scale with its own zero (degC, degF). Inside a rate or after "+/-" it stands for a difference.</summary>
    Offset,
}

/// <summary>A unit of measure as people write it.</summary>
/// <param name="Symbol">The one canonical spelling: <c>g/m2</c>.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">SI value of one unit (for an offset scale: of one degree).</param>
/// <param name="Offset">SI value of the scale's zero, in kelvin; 0 for proportional units.</param>
/// <param name="Scale">Proportional or with its own zero.</param>
/// <param name="Currency">ISO 4217 code when money is part of the unit, else null.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0, UnitScale Scale = UnitScale.Proportional, string? Currency = null)
{
    /// <summary>The SI value of a number of these units.</summary>
    public double ToSi(double value) => (value * Factor) + Offset;

    /// <summary>The number of these units that an SI value is.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;

    /// <summary>The SI value of a difference of so many units (a difference of degF is 5/9 K).</summary>
    public double DifferenceToSi(double value) => value * Factor;
}
