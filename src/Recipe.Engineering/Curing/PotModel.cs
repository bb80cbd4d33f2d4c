using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// A mixed pot as one mass at one temperature, which its cure heats and the room cools:
/// <c>(m c + m_c c_c) dT/dt = m H da/dt - A (T - T_room) / (1/h + way/k)</c>.
/// </summary>
/// <remarks>
/// The mean of a real pot follows this; its centre is hotter, and gels and peaks earlier and higher, the more so the larger the pot. The
/// model therefore errs late and low: take a margin, as with any pot life (common practice: plan to use a pot up in two thirds of its
/// life). Heat lost and specific heat are constant, although both grow in a hot pot: a peak above 100 degC is a warning, not a figure.
/// In a runaway the brake of vitrification limits nothing, as the pot is then far above its glass transition. A large pot left
/// standing can smoke and catch fire: spread it out, never leave it. The maker's data sheet wins.
/// Source: the balance of heat of a well-stirred mass; solved by the embedded pair 3(2) of Bogacki and Shampine, Appl. Math. Lett. 2 (1989) 321.
/// </remarks>
public static class PotModel
{
    private const double DegreeTolerance = 1e-7;
    private const double KelvinTolerance = 1e-4;
    private const int MostSteps = 200_000;

    /// <summary>What a pot does for a time.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="pot">The pot.</param>
    /// <param name="lasts">For how long; more than 0, at most 60 days.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or room or start lie outside the range of the kinetics.</exception>
    /// <exception cref="ArgumentException">There is a brake and no glass transition.</exception>
    public static PotCurve Along(ExothermicResin resin, Pot pot, Duration lasts) =>
        Run(resin, pot, HeatGuard.Lasts(lasts, nameof(lasts)), double.PositiveInfinity);

    /// <summary>The highest mean temperature of a pot within a time: that of <see cref="Along"/>, without the hours in which nothing can make it hotter any more.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="pot">The pot.</param>
    /// <param name="lasts">Within how long; more than 0, at most 60 days.</param>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="Along"/>.</exception>
    /// <exception cref="ArgumentException">There is a brake and no glass transition.</exception>
    public static Temperature Peak(ExothermicResin resin, Pot pot, Duration lasts) =>
        Run(resin, pot, HeatGuard.Lasts(lasts, nameof(lasts)), double.PositiveInfinity, untilHottest: true).Peak;

    /// <summary>Time until a pot has a degree of cure; null when it does not within 60 days.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="pot">The pot.</param>
    /// <param name="degree">Degree of cure; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="Along"/>.</exception>
    public static Duration? TimeTo(ExothermicResin resin, Pot pot, Ratio degree) =>
        Run(resin, pot, 60 * 86_400, CureGuard.Degree(degree, nameof(degree))).TimeTo(degree);

    private static PotCurve Run(ExothermicResin resin, Pot pot, double lasts, double stopDegree, bool untilHottest = false)
    {
        ArgumentNullException.ThrowIfNull(resin);
        ArgumentNullException.ThrowIfNull(pot);
        Reaction reaction = new(resin.Kinetics, resin.OptionsOrNone);
        Balance balance = new(resin, pot, reaction);
        List<PotNode> nodes = new(256);
        double start = balance.Kinetics.Inside((pot.Start ?? pot.Room).Kelvins, nameof(pot.Start));
        PotNode now = balance.Node(0, reaction.Start, start);
        nodes.Add(now);
        double hottest = now.Kelvin;
        double h = Math.Min(lasts / 8, 0.001 / Math.Max(now.DegreeRate, 1e-9));
        for (int count = 0; now.Time < lasts && now.Degree < stopDegree; count++)
        {
            if (count == MostSteps)
            {
                throw new ArgumentException("The pot runs away too fast to be followed; check the constants of the model.");
            }

            h = Math.Min(h, lasts - now.Time);
            PotNode next = balance.Step(now, h, out double error);
            bool bad = !double.IsFinite(error) || error > 1 || next.Degree < now.Degree;
            double factor = double.IsFinite(error) ? Math.Clamp(0.9 * Math.Pow(Math.Max(error, 1e-9), -1.0 / 3), 0.2, 4) : 0.1;
            if (bad)
            {
                h *= Math.Min(factor, 0.5);
                continue;
            }

            now = next with { Time = h >= lasts - now.Time ? lasts : next.Time };
            nodes.Add(now);
            h *= factor;
            hottest = Math.Max(hottest, now.Kelvin);
            if (untilHottest && balance.HottestYet(now) < hottest)
            {
                break;
            }
        }

        return new PotCurve(nodes, resin.Kinetics.HighestKelvin);
    }

    /// <summary>The balance of heat of one pot, in SI.</summary>
    private readonly struct Balance
    {
        private readonly Reaction _reaction;
        private readonly double _room;
        private readonly double _hottest;
        private readonly double _risePerDegree;
        private readonly double _lossRate;

        internal Balance(ExothermicResin resin, Pot pot, in Reaction reaction)
        {
            _reaction = reaction;
            Kinetics = resin.Kinetics;
            _hottest = Kinetics.HighestKelvin;
            _room = Kinetics.Inside(pot.Room.Kelvins, nameof(pot.Room));
            double mass = Guard.Between(pot.Mass.Kilograms, 1e-4, 1000, "kg", nameof(pot.Mass));
            double capacity = (mass * HeatGuard.SpecificHeat(resin.SpecificHeat, nameof(resin.SpecificHeat)))
                + (Guard.Between(pot.Container.Kilograms, 0, 1000, "kg", nameof(pot.Container))
                    * HeatGuard.SpecificHeat(pot.ContainerSpecificHeat, nameof(pot.ContainerSpecificHeat)));
            _risePerDegree = mass * HeatGuard.Reaction(resin.HeatOfReaction, nameof(resin.HeatOfReaction)) / capacity;
            (double surface, double way) = pot.Geometry(HeatGuard.Density(resin.Density, nameof(resin.Density)));
            double h = HeatGuard.Transfer(pot.Loss, nameof(pot.Loss));
            double inside = way / HeatGuard.Conductivity(resin.Conductivity, nameof(resin.Conductivity));
            _lossRate = surface * h / (1 + (h * inside)) / capacity;
        }

        internal CureKinetics Kinetics { get; }

        /// <summary>A temperature that it cannot exceed from here on: all that is left to react at once, and nothing lost to the room.</summary>
        internal double HottestYet(in PotNode now) => Math.Max(now.Kelvin, _room) + (_risePerDegree * (1 - now.Degree));

        internal PotNode Node(double time, double degree, double kelvin)
        {
            // Beyond its range the model's last rate holds; the curve says that it went there.
            double rate = _reaction.Rate(degree, Math.Min(kelvin, _hottest), _reaction.StretchAt(degree));
            return new PotNode(time, Math.Min(1, degree), kelvin, rate, (_risePerDegree * rate) - (_lossRate * (kelvin - _room)));
        }

        internal PotNode Step(in PotNode y, double h, out double error)
        {
            PotNode two = Node(0, y.Degree + (h / 2 * y.DegreeRate), y.Kelvin + (h / 2 * y.KelvinRate));
            PotNode three = Node(0, y.Degree + (0.75 * h * two.DegreeRate), y.Kelvin + (0.75 * h * two.KelvinRate));
            PotNode next = Node(
                y.Time + h,
                y.Degree + (h / 9 * ((2 * y.DegreeRate) + (3 * two.DegreeRate) + (4 * three.DegreeRate))),
                y.Kelvin + (h / 9 * ((2 * y.KelvinRate) + (3 * two.KelvinRate) + (4 * three.KelvinRate))));
            double degree = h / 72 * ((-5 * y.DegreeRate) + (6 * two.DegreeRate) + (8 * three.DegreeRate) - (9 * next.DegreeRate));
            double kelvin = h / 72 * ((-5 * y.KelvinRate) + (6 * two.KelvinRate) + (8 * three.KelvinRate) - (9 * next.KelvinRate));
            error = Math.Max(Math.Abs(degree) / DegreeTolerance, Math.Abs(kelvin) / KelvinTolerance);
            return next;
        }
    }
}
