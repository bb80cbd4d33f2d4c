using UnitsNet;

namespace Recipe.Engineering;

/// <summary>State and one step of the heat through a laminate; arrays are made once and used again.</summary>
internal sealed class ThroughThickness
{
    private readonly Reaction _reaction;
    private readonly double _hottest;
    private readonly double _idleBelow;
    private readonly int _cells;
    private readonly double _dz;
    private readonly double _rise;
    private readonly double _between;
    private readonly double _atMould;
    private readonly double _atBag;
    private readonly ThermalPath _mould;
    private readonly ThermalPath _bag;

    private readonly State _now;
    private readonly State _whole;
    private readonly State _half;
    private readonly double[] _upper;

    private double _peak;
    private double _peakAt;
    private int _peakCell;

    internal ThroughThickness(ThickLaminate laminate, LaminateFaceHeat mould, LaminateFaceHeat bag, Temperature start, int cells)
    {
        ExothermicResin resin = laminate.Resin;
        _reaction = new Reaction(resin.Kinetics, resin.OptionsOrNone);
        _hottest = resin.Kinetics.HighestKelvin;
        _cells = cells;
        double thickness = Guard.Between(laminate.Thickness.Meters, 1e-5, 1, "m", nameof(laminate.Thickness));
        _dz = thickness / cells;
        double vf = Guard.FractionBelowOne(laminate.FibreVolumeFraction, nameof(laminate.FibreVolumeFraction));
        double resinMass = (1 - vf) * HeatGuard.Density(resin.Density, nameof(resin.Density));
        double capacity = (resinMass * HeatGuard.SpecificHeat(resin.SpecificHeat, nameof(resin.SpecificHeat)))
            + (vf * HeatGuard.Density(laminate.FibreDensity, nameof(laminate.FibreDensity))
                * HeatGuard.SpecificHeat(laminate.FibreSpecificHeat, nameof(laminate.FibreSpecificHeat)));
        _rise = resinMass * HeatGuard.Reaction(resin.HeatOfReaction, nameof(resin.HeatOfReaction)) / capacity;
        double k = HeatGuard.Conductivity(laminate.Conductivity, nameof(laminate.Conductivity));
        _between = k / (_dz * _dz * capacity);
        _atMould = AtFace(mould, k, capacity);
        _atBag = AtFace(bag, k, capacity);
        _mould = ThermalPath.Of(mould.Around, resin.Kinetics, resin.OptionsOrNone.IdleBelowRange);
        _bag = ThermalPath.Of(bag.Around, resin.Kinetics, resin.OptionsOrNone.IdleBelowRange);
        _idleBelow = resin.OptionsOrNone.IdleBelowRange ? resin.Kinetics.LowestKelvin - 1e-6 : double.NegativeInfinity;
        End = Math.Max(_mould.End, _bag.End);
        Corners = [.. _mould.Pieces.Concat(_bag.Pieces).Select(piece => piece.End).Distinct().Order()];

        double kelvin = start.Kelvins;
        if (!(kelvin < _idleBelow))
        {
            resin.Kinetics.Inside(kelvin, nameof(start));
        }

        (_now, _whole, _half) = (new State(cells), new State(cells), new State(cells));
        _upper = new double[cells];
        Array.Fill(_now.Kelvin, kelvin);
        Array.Fill(_now.Degree, _reaction.Start);
        _peak = kelvin;
    }

    /// <summary>End of the longer schedule, s.</summary>
    internal double End { get; }

    /// <summary>Times at which a schedule turns or jumps, s, rising, the end the last.</summary>
    internal IReadOnlyList<double> Corners { get; }

    /// <summary>Makes a step without taking it, and tells its error over the allowed one.</summary>
    internal double Try(double t, double h, double degreeTolerance, double kelvinTolerance)
    {
        Euler(_now, _whole, t, h);
        Euler(_now, _half, t, h / 2);
        Euler(_half, _half, t + (h / 2), h / 2);
        double error = 0;
        for (int i = 0; i < _cells; i++)
        {
            double degree = _half.Degree[i] - _whole.Degree[i];
            double kelvin = _half.Kelvin[i] - _whole.Kelvin[i];
            error = Math.Max(error, Math.Max(Math.Abs(degree) / degreeTolerance, Math.Abs(kelvin) / kelvinTolerance));
            _half.Degree[i] = Math.Min(1, _half.Degree[i] + degree);
            _half.Kelvin[i] += kelvin;
        }

        return error;
    }

    /// <summary>Takes the step that was tried.</summary>
    internal void Accept(double time)
    {
        Array.Copy(_half.Degree, _now.Degree, _cells);
        Array.Copy(_half.Kelvin, _now.Kelvin, _cells);
        for (int i = 0; i < _cells; i++)
        {
            if (_now.Kelvin[i] > _peak)
            {
                (_peak, _peakAt, _peakCell) = (_now.Kelvin[i], time, i);
            }
        }
    }

    internal ThickCure Result() => new(
        Temperature.FromKelvins(_peak),
        Duration.FromSeconds(_peakAt),
        DepthOf(_peakCell),
        Ratio.FromDecimalFractions(_now.Degree.Min()),
        Ratio.FromDecimalFractions(_now.Degree.Max()),
        [.. Enumerable.Range(0, _cells).Select(i => new ThicknessPoint(
            DepthOf(i), Temperature.FromKelvins(_now.Kelvin[i]), Ratio.FromDecimalFractions(_now.Degree[i])))]);

    private Length DepthOf(int cell) => Length.FromMeters((cell + 0.5) * _dz);

    // The film of heat transfer and half a cell of laminate, one after the other.
    private double AtFace(LaminateFaceHeat face, double conductivity, double capacity)
    {
        ArgumentNullException.ThrowIfNull(face.Around);
        double h = HeatGuard.Transfer(face.Transfer, nameof(face.Transfer));
        return h / (1 + (h * _dz / (2 * conductivity))) / (_dz * capacity);
    }

    // Cure explicit, conduction implicit; the tridiagonal system by elimination.
    private void Euler(State from, State to, double t, double h)
    {
        double mould = _mould.At(t + h);
        double bag = _bag.At(t + h);
        for (int i = 0; i < _cells; i++)
        {
            double a = from.Degree[i];
            double kelvin = from.Kelvin[i];
            double rate = kelvin < _idleBelow ? 0 : _reaction.Rate(a, Math.Min(kelvin, _hottest), _reaction.StretchAt(a));
            double next = Math.Min(1, a + (h * rate));
            to.Degree[i] = next;
            to.Kelvin[i] = kelvin + (_rise * (next - a));
        }

        double side = h * _between;
        double before = 0;
        for (int i = 0; i < _cells; i++)
        {
            double own = 1;
            double right = to.Kelvin[i];
            if (i == 0)
            {
                own += h * _atMould;
                right += h * _atMould * mould;
            }
            else
            {
                own += side;
            }

            if (i == _cells - 1)
            {
                own += h * _atBag;
                right += h * _atBag * bag;
            }
            else
            {
                own += side;
            }

            double pivot = i == 0 ? own : own - (side * before);
            before = i == _cells - 1 ? 0 : side / pivot;
            _upper[i] = before;
            to.Kelvin[i] = (right + (i == 0 ? 0 : side * to.Kelvin[i - 1])) / pivot;
        }

        for (int i = _cells - 2; i >= 0; i--)
        {
            to.Kelvin[i] += _upper[i] * to.Kelvin[i + 1];
        }
    }

    private sealed class State(int cells)
    {
        internal double[] Degree { get; } = new double[cells];

        internal double[] Kelvin { get; } = new double[cells];
    }
}
