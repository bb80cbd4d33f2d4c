using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Temperature and degree of cure of one pot over time. Immutable.</summary>
public sealed class PotCurve
{
    private readonly List<PotNode> _nodes;

    internal PotCurve(List<PotNode> nodes, double hottestKelvin)
    {
        _nodes = nodes;
        (double kelvin, double at) = Highest();
        Peak = Temperature.FromKelvins(kelvin);
        PeakAt = Duration.FromSeconds(at);
        BeyondModel = kelvin > hottestKelvin;
    }

    /// <summary>Time from the start to the end.</summary>
    public Duration Total => Duration.FromSeconds(_nodes[^1].Time);

    /// <summary>Degree of cure at the end.</summary>
    public Ratio FinalDegree => Ratio.FromDecimalFractions(_nodes[^1].Degree);

    /// <summary>The highest mean temperature of the pot.</summary>
    public Temperature Peak { get; }

    /// <summary>When it has that.</summary>
    public Duration PeakAt { get; }

    /// <summary>Whether the pot grew hotter than the range of its kinetics; then times up to there hold and the peak is only a sign.</summary>
    public bool BeyondModel { get; }

    /// <summary>Degree of cure at a time.</summary>
    /// <param name="time">Time from the start; zero to <see cref="Total"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside.</exception>
    public Ratio DegreeAt(Duration time)
    {
        double t = Inside(time, nameof(time));
        int i = IndexOf(t);
        return Ratio.FromDecimalFractions(_nodes[i].DegreeAt(_nodes[i + 1], t));
    }

    /// <summary>Mean temperature at a time.</summary>
    /// <param name="time">As for the degree.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside.</exception>
    public Temperature TemperatureAt(Duration time)
    {
        double t = Inside(time, nameof(time));
        int i = IndexOf(t);
        return Temperature.FromKelvins(_nodes[i].KelvinAt(_nodes[i + 1], t));
    }

    /// <summary>First time at which a degree of cure is reached; null when the curve ends before it.</summary>
    /// <param name="degree">Degree of cure; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The degree is out of range.</exception>
    public Duration? TimeTo(Ratio degree)
    {
        double a = CureGuard.Degree(degree, nameof(degree));
        int i = _nodes.FindIndex(node => node.Degree >= a);
        if (i <= 0)
        {
            return i == 0 ? Duration.Zero : null;
        }

        double low = _nodes[i - 1].Time;
        double high = _nodes[i].Time;
        for (int k = 0; k < 60 && high - low > 1e-6; k++)
        {
            double middle = (low + high) / 2;
            (low, high) = _nodes[i - 1].DegreeAt(_nodes[i], middle) < a ? (middle, high) : (low, middle);
        }

        return Duration.FromSeconds(high);
    }

    private double Inside(Duration time, string parameter) =>
        Math.Min(Guard.Between(time.Seconds, 0, _nodes[^1].Time + 1e-6, "s", parameter), _nodes[^1].Time);

    private int IndexOf(double time)
    {
        int low = 0;
        int high = _nodes.Count - 2;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _nodes[middle + 1].Time < time ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private (double Kelvin, double At) Highest()
    {
        (double Kelvin, double At) best = (_nodes[0].Kelvin, 0);
        for (int i = 0; i < _nodes.Count - 1; i++)
        {
            // Between two nodes only where the slope turns down.
            int looks = _nodes[i].KelvinRate > 0 && _nodes[i + 1].KelvinRate < 0 ? 64 : 1;
            for (int k = 1; k <= looks; k++)
            {
                double time = _nodes[i].Time + ((_nodes[i + 1].Time - _nodes[i].Time) * k / looks);
                double kelvin = _nodes[i].KelvinAt(_nodes[i + 1], time);
                best = kelvin > best.Kelvin ? (kelvin, time) : best;
            }
        }

        return best;
    }
}
