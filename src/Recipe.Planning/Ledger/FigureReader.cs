using System.Globalization;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning.Ledger;

/// <summary>
/// Reads figures of the model. A figure that nobody gave is null; one that no calculation can use (negative, not a number, beyond
/// belief) is null too, and is named among the gaps; an unmeasured one becomes an assumption.
/// </summary>
internal sealed class FigureReader(PlanLedger ledger)
{
    // No length, mass, time or pressure of this trade comes near it in SI units, and products of several still fit a double.
    // A modulus would; none is read here.
    private const double BeyondBelief = 1e9;

    // And nothing but 0 comes near this: a quotient by it is no number any more.
    private const double TooSmall = 1e-12;

    public Num? Length(Figure<Length>? figure, Owner owner, string word, bool zero = false) =>
        Read(figure, static v => v.Meters, owner, word, zero);

    public Num? Area(Figure<Area>? figure, Owner owner, string word) =>
        Read(figure, static v => v.SquareMeters, owner, word, zero: false);

    public Num? Volume(Figure<Volume>? figure, Owner owner, string word) =>
        Read(figure, static v => v.CubicMeters, owner, word, zero: false);

    public Num? Mass(Figure<Mass>? figure, Owner owner, string word, bool zero = false) =>
        Read(figure, static v => v.Kilograms, owner, word, zero);

    public Num? ArealWeight(Figure<AreaDensity>? figure, Owner owner, string word, bool zero = false) =>
        Read(figure, static v => v.KilogramsPerSquareMeter, owner, word, zero);

    public Num? LinearDensity(Figure<LinearDensity>? figure, Owner owner, string word) =>
        Read(figure, static v => v.KilogramsPerMeter, owner, word, zero: true);

    public Num? Density(Figure<Density>? figure, Owner owner, string word) =>
        Read(figure, static v => v.KilogramsPerCubicMeter, owner, word, zero: false);

    public Num? Time(Figure<Duration>? figure, Owner owner, string word) =>
        Read(figure, static v => v.Seconds, owner, word, zero: true);

    public Num? Pace(Figure<Pace>? figure, Owner owner, string word) =>
        Read(figure, static v => v.PerSquareMetre.Seconds, owner, word, zero: true);

    public Num? Pressure(Figure<Pressure>? figure, Owner owner, string word) =>
        Read(figure, static v => v.Pascals, owner, word, zero: true);

    /// <summary>A modulus. Thousands of millions of pascals are beyond what other figures may be; the laminate looks at the range itself.</summary>
    public Num? Modulus(Figure<Pressure>? figure, Owner owner, string word) =>
        Any(figure, owner, word) is { } known ? new Num(known.Value.Pascals, known.On) : null;

    public Num? Force(Figure<Force>? figure, Owner owner, string word) =>
        Read(figure, static v => v.Newtons, owner, word, zero: false);

    public Num? Pull(Figure<ForcePerLength>? figure, Owner owner, string word) =>
        Read(figure, static v => v.NewtonsPerMeter, owner, word, zero: false);

    /// <summary>A strain that something is taken to bear, as a share: from a thousandth of a per cent to 100 %.</summary>
    public Num? Strain(Figure<double>? figure, Owner owner, string word)
    {
        if (figure is null || figure.Value is >= 1e-5 and <= 1)
        {
            return Read(figure, static v => v, owner, word, zero: false);
        }

        Refuse(figure.Written, owner, word);
        return null;
    }

    /// <summary>Thermal expansion per kelvin, either sign, at most 1 % for each kelvin.</summary>
    public Num? Expansion(Figure<CoefficientOfThermalExpansion>? figure, Owner owner, string word)
    {
        if (figure is null)
        {
            return null;
        }

        if (figure.Value.PerKelvin is >= -0.01 and <= 0.01)
        {
            return new Num(figure.Value.PerKelvin, Basis(figure, owner, word));
        }

        Refuse(figure.Written, owner, word);
        return null;
    }

    public Num? Flow(Figure<VolumeFlow>? figure, Owner owner, string word) =>
        Read(figure, static v => v.CubicMetersPerSecond, owner, word, zero: false);

    public Num? Rate(Figure<TemperatureChangeRate>? figure, Owner owner, string word) =>
        Read(figure, static v => v.DegreesCelsiusPerSecond, owner, word, zero: false);

    public Num? Number(Figure<double>? figure, Owner owner, string word, bool zero = true) =>
        Read(figure, static v => v, owner, word, zero);

    /// <summary>A whole number from 1, or from 0 where none makes sense.</summary>
    public Known<int>? Count(Figure<int>? figure, Owner owner, string word, int least = 1)
    {
        if (figure is null)
        {
            return null;
        }

        if (figure.Value >= least && figure.Value < BeyondBelief)
        {
            return new Known<int>(figure.Value, Basis(figure, owner, word));
        }

        Refuse(figure.Written, owner, word);
        return null;
    }

    /// <summary>A temperature above absolute zero.</summary>
    public Known<Temperature>? Temperature(Figure<Temperature>? figure, Owner owner, string word)
    {
        if (figure is null)
        {
            return null;
        }

        // Not a "between" test, so that not-a-number is refused too.
        if (figure.Value.DegreesCelsius > -273.15 && figure.Value.DegreesCelsius < 10000)
        {
            return new Known<Temperature>(figure.Value, Basis(figure, owner, word));
        }

        Refuse(figure.Written, owner, word);
        return null;
    }

    /// <summary>Any other figure as it stands.</summary>
    public Known<T>? Any<T>(Figure<T>? figure, Owner owner, string word) =>
        figure is null ? null : new Known<T>(figure.Value, Basis(figure, owner, word));

    /// <summary>What a figure rests on: nothing, unless it is marked as unmeasured.</summary>
    public Rests Basis<T>(Figure<T> figure, Owner owner, string word) =>
        figure.IsAssumed ? ledger.Assume(owner.Figure(word, figure.Written, figure.Source)) : Rests.None;

    private Num? Read<T>(Figure<T>? figure, Func<T, double> si, Owner owner, string word, bool zero)
    {
        if (figure is null)
        {
            return null;
        }

        var value = si(figure.Value);
        if (value < BeyondBelief && (value > TooSmall || (zero && value == 0)))
        {
            return new Num(value, Basis(figure, owner, word));
        }

        Refuse(figure.Written, owner, word);
        return null;
    }

    private void Refuse(string written, Owner owner, string word) => ledger.Miss(
        string.Create(CultureInfo.InvariantCulture, $"{word} of {owner.Label}"),
        $"'{written}' cannot be used");
}
