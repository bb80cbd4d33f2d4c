using Recipe.Documents.Changes;
using Recipe.Documents.Drawings;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Comparing;

/// <summary>One axis of a picture of points: a figure, which way is better, and where its values lie.</summary>
internal sealed class ScatterAxis
{
    private const int MostSteps = 9;

    private readonly Axis _axis;
    private readonly AxisUnit _unit;

    /// <summary>Lays an axis out over values.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="leastIsBetter">Whether less of it is better.</param>
    /// <param name="text">How quantities are written.</param>
    /// <param name="values">The values that it has to hold, SI; at least one.</param>
    /// <param name="start">Where its low end lies, mm.</param>
    /// <param name="end">Where its high end lies, mm.</param>
    public ScatterAxis(Figure figure, bool leastIsBetter, QuantityText text, IReadOnlyCollection<double> values, double start, double end)
    {
        (Figure, LeastIsBetter) = (figure, leastIsBetter);
        _unit = figure.Scale(text, values.Max());
        var (low, high) = (_unit.FromSi(values.Min()), _unit.FromSi(values.Max()));

        // Room at both ends, so that no point lies on the frame; a single value lies in the middle.
        var margin = high > low ? (high - low) * 0.06 : Math.Max(Math.Abs(high) * 0.1, 0.5);
        var step = Chart.NiceStep(high - low + (2 * margin), MostSteps);
        var first = Math.Floor((low - margin) / step) * step;
        if (low >= 0)
        {
            first = Math.Max(first, 0);
        }

        var steps = Math.Max(1, (int)Math.Ceiling((high + margin - first) / step - 1e-9));
        _axis = new Axis(first, first + (steps * step), start, end, step);
    }

    /// <summary>The figure.</summary>
    public Figure Figure { get; }

    /// <summary>Whether less of it is better.</summary>
    public bool LeastIsBetter { get; }

    /// <summary>What stands along it.</summary>
    public string Title => _unit.Name.Length == 0 ? Figure.Label : $"{Figure.Label} ({_unit.Name})";

    /// <summary>The axis itself, in its unit.</summary>
    public Axis Axis => _axis;

    /// <summary>Where an SI value lies, mm.</summary>
    public double At(double si) => _axis.At(_unit.FromSi(si));

    /// <summary>A value of the axis as its tick says it.</summary>
    public string Tick(double value) => Numbers.ToStep(value, _axis.Step);
}
