using Recipe.Model;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// The steps in which the scale of a shop shows a weight. Papers and findings print what is weighed in them, so that both say what will stand on the scale.
/// </summary>
public sealed class ScaleSteps
{
    // Common practice: a shop that mixes resin by weight has a scale that shows tenths of a gram.
    private const double AssumedGrams = 0.1;

    // Finer than any scale in a shop; what is printed has no more decimals.
    private const double Finest = 1e-6;

    private readonly Unit _unit;

    private ScaleSteps(Unit unit, double step)
    {
        _unit = unit;
        Step = step;
    }

    /// <summary>The steps of a shop's scale; 0.1 g where no shop or no scale is known.</summary>
    public static ScaleSteps Of(Shop? shop)
    {
        var grams = UnitTable.Get("g");
        if (shop?.ScaleResolution is not { Value.Kilograms: > 0 } scale)
        {
            return new(grams, AssumedGrams);
        }

        // A scale that somebody describes in pounds shows ounces: hundredths of a pound are no step that pots can be weighed in.
        var unit = WrittenUnit.Like(scale.Written, grams).Symbol is "oz" or "lb" ? UnitTable.Get("oz") : grams;
        return new(unit, Math.Max(Finest, Math.Round(unit.FromSi(scale.Value.Kilograms), 6)));
    }

    /// <summary>Whether it shows ounces; else grams.</summary>
    public bool InOunces => _unit.Symbol == "oz";

    /// <summary>The symbol of what it shows: "g" or "oz".</summary>
    public string Unit => _unit.Symbol;

    /// <summary>The step, in <see cref="Unit"/>; more than zero.</summary>
    public double Step { get; }

    /// <summary>A mass in <see cref="Unit"/>, not yet rounded.</summary>
    public double In(Mass mass) => _unit.FromSi(mass.Kilograms);

    /// <summary>So many of <see cref="Unit"/> as a mass.</summary>
    public Mass From(double shown) => Mass.FromKilograms(_unit.ToSi(shown));

    /// <summary>The multiple of the step that is nearest to a mass, in <see cref="Unit"/>, with the decimals of the step.</summary>
    /// <exception cref="OverflowException">The mass is beyond 10^22 kg.</exception>
    public decimal Shown(Mass mass) => (decimal)Math.Round(In(mass) / Step, MidpointRounding.AwayFromZero) * (decimal)Step;
}
