using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Temperatures as they were read over time, straight in between: a thermocouple's log, or a room that cools at night.</summary>
public sealed class TemperatureReadings
{
    private readonly double[] _seconds;
    private readonly double[] _kelvins;

    /// <summary>Takes the readings. The first one also holds from time zero to its own time.</summary>
    /// <param name="readings">At least one; times zero or more, each later than the one before; -150 to 500 degC.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time or a temperature is out of range or order.</exception>
    public TemperatureReadings(IReadOnlyList<TemperatureReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count == 0)
        {
            throw new ArgumentException("There must be at least one reading.", nameof(readings));
        }

        _seconds = new double[readings.Count];
        _kelvins = new double[readings.Count];
        for (int i = 0; i < readings.Count; i++)
        {
            _seconds[i] = Guard.NotNegative(readings[i].Time.Seconds, "s", nameof(readings));
            _kelvins[i] = CureGuard.Kelvin(readings[i].Temperature, nameof(readings));
            if (i > 0 && _seconds[i] <= _seconds[i - 1])
            {
                throw Guard.Refuse(_seconds[i], "s", nameof(readings), "must be later than the reading before it");
            }
        }
    }

    /// <summary>Time of the last reading.</summary>
    public Duration Total => Duration.FromSeconds(_seconds[^1]);

    internal IReadOnlyList<double> Seconds => _seconds;

    internal IReadOnlyList<double> Kelvins => _kelvins;
}
