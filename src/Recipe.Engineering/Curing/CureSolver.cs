namespace Recipe.Engineering;

/// <summary>
/// Integrates the degree of cure along straight pieces of temperature: the embedded Runge-Kutta pair 5(4) of Dormand and Prince with its
/// own interpolant, landing on the ends of the pieces and on the degrees where the rate jumps.
/// </summary>
/// <remarks>Source: Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, 2nd ed., II.4 to II.6.</remarks>
internal static class CureSolver
{
    /// <summary>Error allowed in one step; some eighty steps make up a cure, so that its degree is good to 1e-6.</summary>
    private const double Tolerance = 5e-9;

    private const int MostSteps = 500_000;

    // A step that the error estimate likes may still leap over what a ramp does.
    private const double MostKelvins = 15;
    private const double MostDegree = 0.1;

    /// <summary>The end of the cure; the steps are added to the list when there is one.</summary>
    internal static double Run(in Reaction reaction, ThermalPath path, List<CureStep>? steps)
    {
        double a = reaction.Start;
        int stretch = reaction.StretchAt(a);
        double h = double.PositiveInfinity;
        int count = 0;
        foreach (ThermalPath.Piece piece in path.Pieces)
        {
            if (piece.Idle)
            {
                steps?.Add(CureStep.Still(piece, piece.Start, a));
                continue;
            }

            double t = piece.Start;
            double lasts = piece.End - piece.Start;
            double most = piece.Slope == 0 ? lasts : Math.Min(lasts, MostKelvins / Math.Abs(piece.Slope));
            double k1 = reaction.Rate(a, piece.From, stretch);
            h = Math.Min(h, FirstStep(k1, lasts));
            while (t < piece.End)
            {
                if (a >= 1 - 1e-10)
                {
                    steps?.Add(CureStep.Still(piece, t, a));
                    break;
                }

                if (++count > MostSteps)
                {
                    throw new ArgumentException("The cure runs too fast to be followed along this schedule; check the constants of the model.");
                }

                h = Math.Min(h, most);
                bool last = t + (h * 1.01) >= piece.End;
                double step = last ? piece.End - t : h;
                CureStep made = Step(reaction, piece, t, step, a, k1, stretch, out double k7, out double error);
                double factor = error == 0 ? 5 : Math.Clamp(0.9 * Math.Pow(Tolerance / error, 0.2), 0.2, 5);

                // A cure never runs backwards: where the numbers do, the step was at the end of its stability.
                bool wrong = made.ToDegree < a || made.ToDegree - a > MostDegree || made.Fall() > Tolerance / 2;
                if (error > Tolerance || wrong || !double.IsFinite(error))
                {
                    h = step * (double.IsFinite(error) ? Math.Min(factor, 0.7) : 0.1);
                    continue;
                }

                if (stretch < reaction.Jumps.Count && made.ToDegree >= reaction.Jumps[stretch])
                {
                    made = made.CutAt(reaction.Jumps[stretch]);
                    steps?.Add(made);
                    stretch++;
                    (t, a) = (made.End, made.ToDegree);
                    k1 = reaction.Rate(a, piece.At(t), stretch);
                    h = Math.Min(h, FirstStep(k1, lasts));
                    continue;
                }

                steps?.Add(made);
                a = made.ToDegree;
                t = last ? piece.End : t + step;
                k1 = k7;
                h = last ? Math.Max(h, step) : step * factor;
            }
        }

        return a;
    }

    private static double FirstStep(double rate, double lasts) => Math.Min(lasts / 8, 0.02 / Math.Max(rate, 1e-300));

    private static CureStep Step(
        in Reaction reaction, in ThermalPath.Piece piece, double t, double h, double a, double k1, int stretch, out double k7, out double error)
    {
        double k2 = reaction.Rate(a + (h * k1 / 5), piece.At(t + (h / 5)), stretch);
        double k3 = reaction.Rate(a + (h * ((3.0 / 40 * k1) + (9.0 / 40 * k2))), piece.At(t + (0.3 * h)), stretch);
        double k4 = reaction.Rate(
            a + (h * ((44.0 / 45 * k1) - (56.0 / 15 * k2) + (32.0 / 9 * k3))), piece.At(t + (0.8 * h)), stretch);
        double k5 = reaction.Rate(
            a + (h * ((19372.0 / 6561 * k1) - (25360.0 / 2187 * k2) + (64448.0 / 6561 * k3) - (212.0 / 729 * k4))),
            piece.At(t + (8.0 / 9 * h)),
            stretch);
        double k6 = reaction.Rate(
            a + (h * ((9017.0 / 3168 * k1) - (355.0 / 33 * k2) + (46732.0 / 5247 * k3) + (49.0 / 176 * k4) - (5103.0 / 18656 * k5))),
            piece.At(t + h),
            stretch);
        double rise = h * ((35.0 / 384 * k1) + (500.0 / 1113 * k3) + (125.0 / 192 * k4) - (2187.0 / 6784 * k5) + (11.0 / 84 * k6));
        k7 = reaction.Rate(a + rise, piece.At(t + h), stretch);
        error = Math.Abs(h * ((71.0 / 57600 * k1) - (71.0 / 16695 * k3) + (71.0 / 1920 * k4)
            - (17253.0 / 339200 * k5) + (22.0 / 525 * k6) - (1.0 / 40 * k7)));
        double bend = (h * k1) - rise;
        double fifth = h * ((-12715105075.0 / 11282082432 * k1) + (87487479700.0 / 32700410799 * k3)
            - (10690763975.0 / 1880347072 * k4) + (701980252875.0 / 199316789632 * k5)
            - (1453857185.0 / 822651844 * k6) + (69997945.0 / 29380423 * k7));
        return new CureStep(piece, t, t + h, h, a, Math.Min(1, a + rise), rise, bend, rise - (h * k7) - bend, fifth);
    }
}
