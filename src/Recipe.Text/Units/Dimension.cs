using System.Globalization;
using System.Text;

namespace Recipe.Text.Units;

/// <summary>
/// What kind of thing a quantity is: the exponents of mass, length, time, temperature, money and plane angle.
/// Ratios and counts have none.
/// </summary>
public readonly record struct Dimension(sbyte Mass, sbyte Length, sbyte Time, sbyte Temperature = 0, sbyte Money = 0, sbyte Angle = 0)
{
    /// <summary>A ratio or a count.</summary>
    public static Dimension None => default;

    /// <summary>The dimension of a product.</summary>
    public static Dimension operator *(Dimension a, Dimension b) => new(
        (sbyte)(a.Mass + b.Mass), (sbyte)(a.Length + b.Length), (sbyte)(a.Time + b.Time),
        (sbyte)(a.Temperature + b.Temperature), (sbyte)(a.Money + b.Money), (sbyte)(a.Angle + b.Angle));

    /// <summary>The dimension of a quotient.</summary>
    public static Dimension operator /(Dimension a, Dimension b) => new(
        (sbyte)(a.Mass - b.Mass), (sbyte)(a.Length - b.Length), (sbyte)(a.Time - b.Time),
        (sbyte)(a.Temperature - b.Temperature), (sbyte)(a.Money - b.Money), (sbyte)(a.Angle - b.Angle));

    /// <summary>The dimension of a product, for languages without operators.</summary>
    public static Dimension Multiply(Dimension left, Dimension right) => left * right;

    /// <summary>The dimension of a quotient, for languages without operators.</summary>
    public static Dimension Divide(Dimension left, Dimension right) => left / right;

    /// <summary>The word people use for it, or the exponents where there is no word.</summary>
    public string Name => DimensionNames.NameOf(this) ?? Exponents();

    private string Exponents()
    {
        var text = new StringBuilder();
        Add(Mass, "kg");
        Add(Length, "m");
        Add(Time, "s");
        Add(Temperature, "K");
        Add(Money, "money");
        Add(Angle, "deg");
        return text.Length == 0 ? "plain number" : text.ToString();

        void Add(sbyte exponent, string symbol)
        {
            if (exponent == 0)
            {
                return;
            }

            if (text.Length > 0)
            {
                text.Append('.');
            }

            text.Append(symbol);
            if (exponent != 1)
            {
                text.Append(exponent.ToString(CultureInfo.InvariantCulture));
            }
        }
    }
}
