using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Units;
using UnitsNet;
using UnitSystem = Recipe.Model.UnitSystem;

namespace Recipe.Documents;

/// <summary>
/// Quantities as people read them at the bench: weights to the resolution of the scale, minutes whole, millimetres whole, in the
/// units that the shop asks for. What an author wrote comes back in the author's own units, with the shop's beside them.
/// </summary>
public sealed class QuantityText
{
    private const string Nb = "\u00A0";

    // m/s2, exact (ISO 80000-3).
    internal const double StandardGravity = 9.80665;

    private readonly UnitSystem _units;
    private readonly ScaleSteps _scale;

    /// <summary>For a shop, or for none: then metric and a scale that shows 0.1 g.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="units">Units asked for in place of the shop's, or null.</param>
    public QuantityText(Shop? shop, UnitSystem? units = null)
    {
        _units = units ?? shop?.Units ?? UnitSystem.Metric;
        Currency = shop?.Currency ?? "";
        _scale = ScaleSteps.Of(shop);
    }

    /// <summary>The step of the scale that weights are printed to, in the scale's own unit.</summary>
    public string ScaleStep => Numbers.AtMost(_scale.Step, 6) + Nb + _scale.Unit;

    /// <summary>
    /// Whether the vacuum gauge counts in inches of mercury: the papers are in US units, or the recipe draws its vacuum in them. Then the inches stand first,
    /// with millibars beside where the shop has metric papers.
    /// </summary>
    public bool GaugeInInches { get => field || IsUs; init; }

    /// <summary>Whether US customary units stand first.</summary>
    internal bool IsUs => _units == UnitSystem.Us;

    /// <summary>The shop's currency, an ISO 4217 code; empty when it names none.</summary>
    public string Currency { get; }

    /// <summary>The unit that the scale shows.</summary>
    public string ScaleUnit => _scale.Unit;

    /// <summary>The unit in which somebody writes down a temperature.</summary>
    public string TemperatureUnit => _units == UnitSystem.Us ? "°F" : "°C";

    /// <summary>The unit in which somebody writes down a pressure.</summary>
    public string PressureUnit => GaugeInInches ? "inHg" : "mbar";

    /// <summary>The unit in which somebody writes down a thickness.</summary>
    public string ThicknessUnit => _units == UnitSystem.Us ? "in" : "mm";

    /// <summary>A weight that somebody reads off the scale: first as the scale shows it.</summary>
    public Reading Weight(Mass mass, Rounding rounding = Rounding.Nearest)
    {
        var grams = _scale.InOunces ? Numbers.Significant(mass.Grams, 3, rounding) : Numbers.ToStep(mass.Grams, _scale.Step, rounding);
        var ounces = _scale.InOunces ? Numbers.ToStep(mass.Ounces, _scale.Step, rounding) : Numbers.Significant(mass.Ounces, 3, rounding);
        return (_scale.InOunces, _units) switch
        {
            (false, UnitSystem.Metric) => new(grams + Nb + "g"),
            (false, _) => new(grams + Nb + "g", ounces + Nb + "oz"),
            (true, UnitSystem.Us) => new(ounces + Nb + "oz"),
            (true, _) => new(ounces + Nb + "oz", grams + Nb + "g"),
        };
    }

    /// <summary>The weight that the scale would show, so that sums on a paper are sums of what stands there.</summary>
    public Mass OnScale(Mass mass, Rounding rounding = Rounding.Nearest) => _scale.From(Numbers.Snap(_scale.In(mass), _scale.Step, rounding));

    /// <summary>A mass that is computed, to three figures.</summary>
    public Reading About(Mass mass) => In(
        Math.Abs(mass.Grams) < 1000 ? Numbers.Significant(mass.Grams, 3) + Nb + "g" : Numbers.Significant(mass.Kilograms, 3) + Nb + "kg",
        Math.Abs(mass.Ounces) < 16 ? Numbers.Significant(mass.Ounces, 3) + Nb + "oz" : Numbers.Significant(mass.Pounds, 3) + Nb + "lb");

    /// <summary>A mass to three figures that somebody is about to weigh: first as the scale shows it.</summary>
    public Reading AboutOnScale(Mass mass)
    {
        var (grams, ounces) = (Numbers.Significant(mass.Grams, 3) + Nb + "g", Numbers.Significant(mass.Ounces, 3) + Nb + "oz");
        return (_scale.InOunces, _units) switch
        {
            (false, UnitSystem.Us) => new(grams, ounces),
            (true, UnitSystem.Us) => new(ounces),
            (true, _) => new(ounces, grams),
            _ => About(mass),
        };
    }

    /// <summary>A mass that a model gives, to two figures; whole digits are never dropped.</summary>
    public Reading Roughly(Mass mass) => In(
        Math.Abs(mass.Grams) < 1000 ? Numbers.Significant(mass.Grams, 2) + Nb + "g" : Numbers.Significant(mass.Kilograms, 2) + Nb + "kg",
        Math.Abs(mass.Ounces) < 16 ? Numbers.Significant(mass.Ounces, 2) + Nb + "oz" : Numbers.Significant(mass.Pounds, 2) + Nb + "lb");

    /// <summary>An elastic modulus, to two figures; whole digits are never dropped.</summary>
    public Reading Modulus(Pressure modulus) => In(
        Numbers.Significant(modulus.Gigapascals, 2) + Nb + "GPa", Numbers.Significant(modulus.KilopoundsForcePerSquareInch / 1000, 2) + Nb + "Msi");

    /// <summary>A stress, to two figures; whole digits are never dropped.</summary>
    public Reading Stress(Pressure stress) => In(
        Numbers.Significant(stress.Megapascals, 2) + Nb + "MPa", Numbers.Significant(stress.KilopoundsForcePerSquareInch, 2) + Nb + "ksi");

    /// <summary>A pull for each unit of width.</summary>
    public Reading Pull(ForcePerLength pull) => In(
        Numbers.Significant(pull.NewtonsPerMillimeter, 3) + Nb + "N/mm", Numbers.Significant(pull.PoundsForcePerInch, 3) + Nb + "lbf/in");

    /// <summary>A force as the mass that weighs as much.</summary>
    public Reading AsMass(Force force) => About(Mass.FromKilograms(force.Newtons / StandardGravity));

    /// <summary>How far something goes down or stands off, or a length that is estimated, to two figures.</summary>
    public Reading Deflection(Length length) => In(
        Numbers.Significant(length.Millimeters, 2) + Nb + "mm", Numbers.Significant(length.Inches, 2) + Nb + "in");

    /// <summary>Whole minutes.</summary>
    public static string Minutes(Duration time, Rounding rounding = Rounding.Nearest) => Numbers.ToStep(time.Minutes, 1, rounding) + Nb + "min";

    /// <summary>A time as hours and minutes: "45 min", "12 h", "1 h 30 min".</summary>
    public static string Span(Duration time)
    {
        var minutes = (long)Math.Round(time.Minutes, MidpointRounding.AwayFromZero);
        var (hours, rest) = Math.DivRem(Math.Abs(minutes), 60);
        var sign = minutes < 0 ? "-" : "";
        return sign + ((hours, rest) switch
        {
            (0, _) => Numbers.AtMost(rest, 0) + Nb + "min",
            (_, 0) => Numbers.AtMost(hours, 0) + Nb + "h",
            _ => Numbers.AtMost(hours, 0) + Nb + "h " + Numbers.AtMost(rest, 0) + Nb + "min",
        });
    }

    /// <summary>A size to cut, whole millimetres or sixteenths of an inch: the marks of the tape that is laid on the cloth.</summary>
    public Reading Size(Length length) => In(Numbers.Fixed(length.Millimeters, 0) + Nb + "mm", Numbers.Sixteenths(length.Inches) + Nb + "in");

    /// <summary>Length by width.</summary>
    public Reading Sheet(Length length, Length width) => In(
        $"{Numbers.Fixed(length.Millimeters, 0)}{Nb}× {Numbers.Fixed(width.Millimeters, 0)}{Nb}mm",
        $"{Numbers.Sixteenths(length.Inches)}{Nb}× {Numbers.Sixteenths(width.Inches)}{Nb}in");

    /// <summary>A thickness, hundredths of a millimetre.</summary>
    public Reading Thickness(Length length) => In(Numbers.AtMost(length.Millimeters, 2) + Nb + "mm", Numbers.AtMost(length.Inches, 3) + Nb + "in");

    /// <summary>A length of tape or hose.</summary>
    public Reading Distance(Length length) => In(Numbers.Significant(length.Meters, 3) + Nb + "m", Numbers.Significant(length.Feet, 3) + Nb + "ft");

    /// <summary>An area.</summary>
    public Reading Area(Area area) => In(Numbers.Significant(area.SquareMeters, 3) + Nb + "m²", Numbers.Significant(area.SquareFeet, 3) + Nb + "ft²");

    /// <summary>A mass per area.</summary>
    public Reading ArealWeight(AreaDensity weight) => In(
        Numbers.Significant(weight.GramsPerSquareMeter, 3) + Nb + "g/m²",
        Numbers.Significant(weight.KilogramsPerSquareMeter / UnitTable.Get("oz/yd2").Factor, 3) + Nb + "oz/yd²");

    /// <summary>A temperature, whole degrees unless it was given finer.</summary>
    public Reading Temperature(Temperature temperature) => In(
        Numbers.AtMost(temperature.DegreesCelsius, 1) + Nb + "°C",
        Numbers.Fixed(temperature.DegreesFahrenheit, 0) + Nb + "°F");

    /// <summary>How fast something is heated or cooled: in a minute, or in an hour where it is slow.</summary>
    public Reading Rate(TemperatureChangeRate rate)
    {
        var perMinute = rate.DegreesCelsiusPerMinute;
        var (times, word) = Math.Abs(perMinute) < 0.2 ? (60, "h") : (1, "min");
        return In($"{Numbers.Significant(perMinute * times, 2)}{Nb}°C/{word}", $"{Numbers.Significant(perMinute * times * 9 / 5, 2)}{Nb}°F/{word}");
    }

    /// <summary>A pressure or a difference of pressures.</summary>
    public Reading Pressure(Pressure pressure, Rounding rounding = Rounding.Nearest)
    {
        var metric = Numbers.ToStep(pressure.Millibars, 1, rounding) + Nb + "mbar";
        var us = Numbers.ToStep(pressure.Pascals / UnitTable.Get("inHg").Factor, 0.1, rounding) + Nb + "inHg";
        return GaugeInInches && !IsUs ? new(us, metric) : In(metric, us);
    }

    /// <summary>A share as per cent.</summary>
    public static string Share(double share) => Numbers.AtMost(share * 100, 1) + Nb + "%";

    /// <summary>Money, two decimals.</summary>
    public static string Money(decimal amount, string currency) => Numbers.Fixed((double)amount, 2) + Nb + currency;

    /// <summary>A price: "6.40 EUR/m²"; of a piece "0.80 EUR each".</summary>
    public static string PriceOf(Price price)
    {
        ArgumentNullException.ThrowIfNull(price);
        var money = Money(price.Amount, price.Currency);
        return price.Unit is null ? money + " each" : money + "/" + WrittenText.Symbol(price.Unit.Symbol);
    }

    /// <summary>An amount to take or buy, in the unit it is bought in; three figures.</summary>
    public Reading Amount(Amount amount, Rounding rounding = Rounding.Nearest)
    {
        if (amount.Unit is not { } unit)
        {
            return new(Numbers.Significant(amount.Si, 3, rounding));
        }

        var main = Numbers.Significant(amount.Value, 3, rounding) + Nb + WrittenText.Symbol(unit.Symbol);
        var wantsUs = _units == UnitSystem.Both || (_units == UnitSystem.Us && !WrittenText.IsUs(unit.Symbol));
        return wantsUs && Counterpart(unit) is { } other
            ? new(main, Numbers.Significant(other.FromSi(amount.Si), 3, rounding) + Nb + WrittenText.Symbol(other.Symbol))
            : new(main);
    }

    /// <summary>
    /// What somebody wrote: an author's own units first, with the shop's beside them when they are others; what the book wrote stands
    /// in the shop's units first.
    /// </summary>
    public Reading Written<T>(Figure<T> figure, Func<T, Reading> inShopUnits)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(inShopUnits);
        if (figure.Written.Length == 0)
        {
            return inShopUnits(figure.Value);
        }

        var main = WrittenText.ForReading(figure.Written);
        var isUs = WrittenText.IsUs(figure.Written);
        var computed = inShopUnits(figure.Value);
        if (figure.Basis != Basis.Stated && isUs != (_units == UnitSystem.Us))
        {
            return new(computed.Main, computed.Beside ?? main);
        }

        var beside = (_units, isUs) switch
        {
            (UnitSystem.Metric, true) or (UnitSystem.Us, false) => computed.Main,
            (UnitSystem.Both, true) => computed.Main,
            (UnitSystem.Both, false) => computed.Beside,
            _ => null,
        };
        return new(main, beside);
    }

    /// <summary>What an author wrote, for values that have no other units.</summary>
    public static string Written<T>(Figure<T> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return WrittenText.ForReading(figure.Written);
    }

    private Reading In(string metric, string us) => _units switch
    {
        UnitSystem.Metric => new(metric),
        UnitSystem.Us => new(us),
        _ => new(metric, us),
    };

    private static Unit? Counterpart(Unit unit) => unit.Symbol switch
    {
        "m2" or "cm2" => UnitTable.Get("ft2"),
        "kg" => UnitTable.Get("lb"),
        "g" => UnitTable.Get("oz"),
        "m" => UnitTable.Get("ft"),
        "mm" => UnitTable.Get("in"),
        "L" => UnitTable.Get("qt"),
        "mL" => UnitTable.Get("floz"),
        "ft2" or "yd2" => UnitTable.Get("m2"),
        "lb" => UnitTable.Get("kg"),
        "oz" => UnitTable.Get("g"),
        "ft" or "yd" => UnitTable.Get("m"),
        "in" => UnitTable.Get("mm"),
        "gal" or "qt" => UnitTable.Get("L"),
        "floz" => UnitTable.Get("mL"),
        _ => null,
    };
}
