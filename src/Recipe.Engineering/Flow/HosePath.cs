namespace Recipe.Engineering;

/// <summary>Pump and hose in line, followed by the pressure at the pump: from it all else is a closed form.</summary>
/// <param name="hose">The hose.</param>
/// <param name="speed">Pumping speed, m3/s.</param>
/// <param name="ultimate">The pump's ultimate pressure, Pa.</param>
internal sealed class HosePath(VacuumHose hose, double speed, double ultimate)
{
    private const double Tolerance = 1e-10;
    private const int Panels = 16;
    private const int Deepest = 30;

    /// <summary>Pressure at the pump, Pa, while the bag stands at a pressure not below the ultimate one.</summary>
    internal double PumpAt(double bag)
    {
        (double low, double high) = (ultimate, bag);
        while (true)
        {
            double middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                return high;
            }

            bool above = hose.BagAt(middle, speed * (middle - ultimate)) > bag;
            (low, high) = above ? (low, middle) : (middle, high);
        }
    }

    /// <summary>
    /// Time to draw down one m3 from a bag pressure to another, s, or null when rounding leaves no way there: <c>V dp1/(Q - leak)</c> with
    /// <c>Q - leak = S (p2 - p_inf)</c>, so over x = ln(p2 - p_inf) it is the integral of <c>(dp1/dp2)/S</c>.
    /// </summary>
    internal double? Time(double from, double to, double leak)
    {
        double held = ultimate + (leak / speed);
        double first = PumpAt(to) - held;
        double last = PumpAt(from) - held;
        if (!(first > 0) || !(last > first))
        {
            return null;
        }

        double Slope(double x)
        {
            double pump = held + Math.Exp(x);
            return hose.BagSlope(pump, speed * (pump - ultimate), speed);
        }

        (double low, double high) = (Math.Log(first), Math.Log(last));
        double step = (high - low) / Panels;
        double sum = 0;
        double left = Slope(low);
        for (int i = 0; i < Panels; i++)
        {
            double a = low + (i * step);
            double middle = Slope(a + (step / 2));
            double right = Slope(a + step);
            sum += Simpson(Slope, a, step, left, middle, right, 0);
            left = right;
        }

        return sum / speed;
    }

    // Adaptive Simpson; the slope has a kink where one kind of flow gives way to another.
    private static double Simpson(Func<double, double> f, double a, double width, double left, double middle, double right, int depth)
    {
        double whole = width / 6 * (left + (4 * middle) + right);
        double firstMiddle = f(a + (width / 4));
        double secondMiddle = f(a + (width * 3 / 4));
        double halves = width / 12 * (left + (4 * firstMiddle) + (2 * middle) + (4 * secondMiddle) + right);
        if (depth == Deepest || Math.Abs(halves - whole) <= 15 * Tolerance * Math.Abs(halves))
        {
            return halves + ((halves - whole) / 15);
        }

        return Simpson(f, a, width / 2, left, firstMiddle, middle, depth + 1)
            + Simpson(f, a + (width / 2), width / 2, middle, secondMiddle, right, depth + 1);
    }
}
