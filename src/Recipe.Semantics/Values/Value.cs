using Recipe.Text.Units;

namespace Recipe.Semantics.Values;

/// <summary>What an expression is worth.</summary>
/// <param name="Si">SI value; for a temperature of a scale with its own zero, kelvin.</param>
/// <param name="Dimension">What it measures.</param>
internal readonly record struct Value(double Si, Dimension Dimension)
{
    /// <summary>Whether it is a temperature and not a difference of two.</summary>
    public bool IsAbsoluteTemperature { get; init; }

    /// <summary>The unit it was written in, or that of its first operand; null for a number without any.</summary>
    public Unit? Unit { get; init; }

    /// <summary>ISO 4217 code when money is part of it.</summary>
    public string? Currency { get; init; }

    /// <summary>Whether it is a number that nobody gave a unit.</summary>
    public bool IsBare => Unit is null && Dimension == Dimension.None;

    /// <summary>A number with or without a unit.</summary>
    public static Value Of(double number, Unit? unit) => unit is null
        ? new Value(number, Dimension.None)
        : new Value(unit.ToSi(number), unit.Dimension)
        {
            IsAbsoluteTemperature = unit.Scale == UnitScale.Offset,
            Unit = unit,
            Currency = unit.Currency,
        };
}
