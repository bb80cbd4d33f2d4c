using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A long hose between bag and pump: what it passes, and what is left of the pump's speed at the bag.</summary>
/// <remarks>
/// <para>
/// Source: dry air at 20 degC, isothermal, in a smooth straight tube. The flow is the least of three: laminar
/// (Poiseuille, <c>Q = pi d^4/(256 eta l) (p1^2 - p2^2)</c>, the conductance <c>pi d^4/(128 eta l)</c> times the mean pressure), turbulent with
/// Blasius' friction <c>0.3164 Re^-0.25</c>, and the speed of sound, that of a hole as wide as the hose at the bag's pressure.
/// </para>
/// <para>
/// Below about 0.5 mbar times cm of pressure and bore the air slips along the wall and the hose passes more than this; a wet-lay-up bag
/// never comes there. Fittings, valves and resin in the hose pass less: add their length as more hose. Use hose made for vacuum.
/// At 100 mbar an 8 mm hose of 3 m leaves a pump of 6 m3/h nine tenths of its speed, and one of 20 m3/h little more than half.
/// </para>
/// </remarks>
public sealed class VacuumHose
{
    private readonly double _laminar;
    private readonly double _turbulent;
    private readonly double _sonic;

    /// <summary>A hose.</summary>
    /// <param name="bore">Inner diameter; 1e-5 m to 10 m.</param>
    /// <param name="length">Length; 1e-3 m to 1e5 m. One much longer than wide is meant.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public VacuumHose(Length bore, Length length)
    {
        double d = Guard.Between(bore.Meters, 1e-5, 10, "m", nameof(bore));
        double l = Guard.Between(length.Meters, 1e-3, 1e5, "m", nameof(length));
        (Bore, Length) = (bore, length);
        _laminar = Math.PI * d * d * d * d / (256 * Air.Viscosity * l);

        // p1^2 - p2^2 = f (l/d) (m/a)^2 R T with f of Blasius, Re = 4 m/(pi d eta) and the mass flow m = Q/(R T).
        double area = Math.PI * d * d / 4;
        double rt = Air.GasConstant * Air.Kelvins;
        double reynolds = 4 / (Math.PI * d * Air.Viscosity * rt);
        _turbulent = 0.3164 * Math.Pow(reynolds, -0.25) * (l / d) / (area * area * rt);
        _sonic = area * Air.ChokedSpeed;
    }

    /// <summary>Inner diameter.</summary>
    public Length Bore { get; }

    /// <summary>Length.</summary>
    public Length Length { get; }

    /// <summary>Air that the hose passes between two pressures.</summary>
    /// <param name="bag">Absolute pressure at the bag; 0 to 1e8 Pa.</param>
    /// <param name="pump">Absolute pressure at the pump; zero up to that at the bag.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is out of range.</exception>
    public LeakRate Throughput(Pressure bag, Pressure pump)
    {
        double p1 = Level(bag, nameof(bag));
        double p2 = Guard.Between(pump.Pascals, 0, p1, "Pa", nameof(pump));
        double squares = (p1 - p2) * (p1 + p2);
        return LeakRate.FromPascalCubicMetresPerSecond(
            Math.Min(Math.Min(_laminar * squares, Math.Pow(squares / _turbulent, 1 / 1.75)), _sonic * p1));
    }

    /// <summary>Conductance: what the hose passes over the difference of the two pressures.</summary>
    /// <param name="bag">Absolute pressure at the bag; more than that at the pump, at most 1e8 Pa.</param>
    /// <param name="pump">Absolute pressure at the pump; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is out of range, or the two are the same.</exception>
    public VolumeFlow Conductance(Pressure bag, Pressure pump)
    {
        double flow = Throughput(bag, pump).PascalCubicMetresPerSecond;
        double difference = bag.Pascals - pump.Pascals;
        return difference > 0
            ? VolumeFlow.FromCubicMetersPerSecond(flow / difference)
            : throw Guard.Refuse(bag.Pascals, "Pa", nameof(bag), "must be above the pressure at the pump");
    }

    /// <summary>Pressure at the pump's inlet while the pump draws on the bag through the hose.</summary>
    /// <param name="speed">Pumping speed; 1e-9 to 1e6 m3/s.</param>
    /// <param name="bag">Absolute pressure at the bag; 0 to 1e8 Pa.</param>
    /// <param name="ultimate">The pump's ultimate pressure; zero up to that at the bag.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public Pressure PumpInlet(VolumeFlow speed, Pressure bag, Pressure ultimate = default)
    {
        double p = Level(bag, nameof(bag));
        return Pressure.FromPascals(new HosePath(this, Speed(speed), Floor(ultimate, p)).PumpAt(p));
    }

    /// <summary>
    /// Pumping speed that is left at the bag: the air that passes over the bag's pressure. With a pump of no ultimate pressure
    /// <c>1/S = 1/S_pump + 1/C</c>.
    /// </summary>
    /// <param name="speed">Pumping speed at the pump; 1e-9 to 1e6 m3/s.</param>
    /// <param name="bag">Absolute pressure at the bag; 1e-6 to 1e8 Pa.</param>
    /// <param name="ultimate">The pump's ultimate pressure; zero up to that at the bag.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public VolumeFlow EffectiveSpeed(VolumeFlow speed, Pressure bag, Pressure ultimate = default)
    {
        double p = Guard.Between(bag.Pascals, 1e-6, 1e8, "Pa", nameof(bag));
        double floor = Floor(ultimate, p);
        double s = Speed(speed);
        return VolumeFlow.FromCubicMetersPerSecond(s * (new HosePath(this, s, floor).PumpAt(p) - floor) / p);
    }

    /// <summary>The smallest pump that draws so much air through the hose at the bag's pressure.</summary>
    /// <param name="air">Air to draw; at most 1e6 Pa m3/s.</param>
    /// <param name="bag">Absolute pressure at the bag; 0 to 1e8 Pa.</param>
    /// <param name="ultimate">The pump's ultimate pressure; zero or more.</param>
    /// <returns>Its pumping speed, or null when the hose passes less than that to any pump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public VolumeFlow? PumpFor(LeakRate air, Pressure bag, Pressure ultimate = default)
    {
        double flow = Guard.Between(air.PascalCubicMetresPerSecond, 0, 1e6, "Pa m3/s", nameof(air));
        double p = Level(bag, nameof(bag));
        double floor = Floor(ultimate, 1e8);
        double squares = (p * p) - Math.Max(flow / _laminar, _turbulent * Math.Pow(flow, 1.75));
        double head = squares > 0 ? Math.Sqrt(squares) - floor : 0;
        return head > 0 && flow <= _sonic * p ? VolumeFlow.FromCubicMetersPerSecond(flow / head) : null;
    }

    /// <summary>Lowest pressure that the pump holds in the bag through the hose against a leak.</summary>
    /// <param name="speed">Pumping speed; 1e-9 to 1e6 m3/s.</param>
    /// <param name="ultimate">The pump's ultimate pressure; 0 to 1e8 Pa.</param>
    /// <param name="leak">Leak into the bag; at most 1e6 Pa m3/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public Pressure LowestHeld(VolumeFlow speed, Pressure ultimate, LeakRate leak)
    {
        double s = Speed(speed);
        double floor = Floor(ultimate, 1e8);
        double air = Guard.Between(leak.PascalCubicMetresPerSecond, 0, 1e6, "Pa m3/s", nameof(leak));
        return Pressure.FromPascals(BagAt(floor + (air / s), air));
    }

    /// <summary>Time to draw a volume down through the hose; as <see cref="Vacuum.PumpDownTime"/> where the hose is short and wide.</summary>
    /// <param name="volume">Free volume of the bag; the hose's own air is not counted, add it here; 1e-9 to 1e6 m3.</param>
    /// <param name="speed">Pumping speed; 1e-9 to 1e6 m3/s.</param>
    /// <param name="from">Absolute pressure at the start; 1e-6 to 1e8 Pa.</param>
    /// <param name="to">Absolute pressure to reach; 1e-6 to 1e8 Pa.</param>
    /// <param name="ultimate">The pump's ultimate pressure; 0 to 1e8 Pa.</param>
    /// <param name="leak">Leak into the bag, at most 1e6 Pa m3/s; default none.</param>
    /// <returns>The time, zero when the volume is already there, or null when the pump never gets there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Integrated over the pressure at the pump to a relative error of 1e-9 or better.</remarks>
    public Duration? PumpDownTime(
        Volume volume, VolumeFlow speed, Pressure from, Pressure to, Pressure ultimate = default, LeakRate leak = default)
    {
        double v = Guard.Between(volume.CubicMeters, 1e-9, 1e6, "m3", nameof(volume));
        double s = Speed(speed);
        double start = Guard.Between(from.Pascals, 1e-6, 1e8, "Pa", nameof(from));
        double end = Guard.Between(to.Pascals, 1e-6, 1e8, "Pa", nameof(to));
        double floor = Floor(ultimate, 1e8);
        if (end >= start)
        {
            return Duration.Zero;
        }

        return end > LowestHeld(speed, ultimate, leak).Pascals
            && new HosePath(this, s, floor).Time(start, end, leak.PascalCubicMetresPerSecond) is { } time
            ? Duration.FromSeconds(v * time)
            : null;
    }

    /// <summary>Pressure at the bag, Pa, from that at the pump and the air that passes; the greatest of three, as the flow is the least of three.</summary>
    internal double BagAt(double pump, double flow)
    {
        double squares = Math.Max(flow / _laminar, _turbulent * Math.Pow(flow, 1.75));
        return Math.Max(Math.Sqrt((pump * pump) + squares), flow / _sonic);
    }

    /// <summary>How the pressure at the bag changes with that at the pump when the flow goes with it by so many m3/s.</summary>
    internal double BagSlope(double pump, double flow, double speed)
    {
        double smooth = flow / _laminar;
        double rough = _turbulent * Math.Pow(flow, 1.75);
        double bag = Math.Sqrt((pump * pump) + Math.Max(smooth, rough));
        if (flow / _sonic > bag)
        {
            return speed / _sonic;
        }

        double rise = smooth > rough ? speed / _laminar : 1.75 * _turbulent * Math.Pow(flow, 0.75) * speed;
        return (pump + (rise / 2)) / bag;
    }

    private static double Level(Pressure value, string parameter) => Guard.Between(value.Pascals, 0, 1e8, "Pa", parameter);

    private static double Floor(Pressure ultimate, double most) => Guard.Between(ultimate.Pascals, 0, most, "Pa", nameof(ultimate));

    private static double Speed(VolumeFlow speed) => Guard.Between(speed.CubicMetersPerSecond, 1e-9, 1e6, "m3/s", nameof(speed));
}
