using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Serialization;
using Recipe.Planning;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Documents.Json;

/// <summary>Values in SI for programs: ten significant digits, so that two machines write the same bytes; null when unknown.</summary>
internal static class Si
{
    public static double? Number(double? value) => value is { } known && double.IsFinite(known)
        ? double.Parse(known.ToString("G10", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        : null;

    public static double? Of(Length? value) => Number(value?.Meters);

    public static double? Of(Area? value) => Number(value?.SquareMeters);

    public static double? Of(Mass? value) => Number(value?.Kilograms);

    public static double? Of(Duration? value) => Number(value?.Seconds);

    public static double? Of(Pressure? value) => Number(value?.Pascals);

    public static double? Of(AreaDensity? value) => Number(value?.KilogramsPerSquareMeter);

    public static double? Of(Computed<Length>? value) => Of(value?.Value);

    public static double? Of(Computed<Area>? value) => Of(value?.Value);

    public static double? Of(Computed<Mass>? value) => Of(value?.Value);

    public static double? Of(Computed<Duration>? value) => Of(value?.Value);

    public static double? Of(Computed<Pressure>? value) => Of(value?.Value);

    public static double? Of(Computed<double>? value) => Number(value?.Value);

    public static TemperatureRecord? Of(Temperature? value) =>
        value is { } known ? new(Number(known.Kelvins), Number(known.DegreesCelsius)) : null;

    public static TemperatureRecord? Of(Computed<Temperature>? value) => Of(value?.Value);

    public static AmountRecord? Of(Amount? amount) => amount is not { } known ? null
        : known.Unit is not { } unit ? new(null, null, null, null, Number(known.Si), null)
        : unit.Dimension == DimensionNames.Area ? new(Number(known.Si), null, null, null, null, unit.Symbol)
        : unit.Dimension == DimensionNames.Mass ? new(null, Number(known.Si), null, null, null, unit.Symbol)
        : unit.Dimension == DimensionNames.Length ? new(null, null, Number(known.Si), null, null, unit.Symbol)
        : new(null, null, null, Number(known.Si), null, unit.Symbol);

    /// <summary>
    /// Which values of an object rest on assumptions: from the key of the value to the keys of the assumptions. Null when none does.
    /// </summary>
    public static ImmutableSortedDictionary<string, ImmutableArray<string>>? RestsOn(params ReadOnlySpan<(string Key, ImmutableArray<string>? Assumptions)> values)
    {
        var map = ImmutableSortedDictionary.CreateBuilder<string, ImmutableArray<string>>(StringComparer.Ordinal);
        foreach (var (key, assumptions) in values)
        {
            if (assumptions is { IsDefaultOrEmpty: false } keys)
            {
                map.Add(key, keys);
            }
        }

        return map.Count == 0 ? null : map.ToImmutable();
    }
}

/// <summary>A temperature in both scales, so that nobody mistakes one for the other.</summary>
internal sealed record TemperatureRecord(
    [property: JsonPropertyName("temperature_K")] double? Kelvin,
    [property: JsonPropertyName("temperature_degC")] double? DegreesCelsius);

/// <summary>An amount of something: exactly one of the first five is given.</summary>
internal sealed record AmountRecord(
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? AreaM2,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? MassKg,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? LengthM,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? VolumeM3,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Pieces,
    string? ShownIn);
