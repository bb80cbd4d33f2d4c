namespace Recipe.Engineering.Tests;

/// <summary>
/// An infusion with flow medium solved step by step on a row of cells, from the first moment on: pressure along the medium and the wet laminate
/// under it, resin sinking straight down with a sharp front, cell after cell of the medium filling up. SI units.
/// </summary>
internal sealed record FrontSimulation(double H1, double K1, double Phi1, double H2, double Along, double Kz, double Phi2)
{
    private const int Sweeps = 6;

    /// <summary>Time until the laminate is wet through at a distance from the feed line; the medium is taken to go on so far beyond it.</summary>
    internal double FillTime(double viscosity, double pull, double length, double beyond, int cells)
    {
        double dx = (length + beyond) / cells;
        double[] depth = new double[cells];
        double[] pressure = new double[cells];
        Array.Fill(pressure, pull);
        int watched = (int)(length / dx);
        (int wet, double part, double time) = (1, 0, 0);
        double speed = K1 * pull / (viscosity * Phi1 * dx);
        while (depth[watched] < H2)
        {
            Assert.True(wet < cells, "the front left the cells");
            double step = 0.4 * dx / speed;
            double sink = 2 * Kz * step / (Phi2 * viscosity);
            double last = 0;
            for (int sweep = 0; sweep < Sweeps; sweep++)
            {
                last = Solve(viscosity, pull, dx, depth.AsSpan(0, wet), part, pressure.AsSpan(0, wet), sink, step);
            }

            for (int i = 0; i < wet; i++)
            {
                depth[i] = Deeper(depth[i], sink * pressure[i]);
            }

            speed = last * pressure[wet - 1] / (Phi1 * H1);
            part += speed * step / dx;
            time += step;
            for (; part >= 1; part--)
            {
                pressure[wet] = pressure[wet - 1] / 3;
                wet++;
            }
        }

        return time;
    }

    private double Deeper(double depth, double sunk) => Math.Min(H2, Math.Sqrt((depth * depth) + sunk));

    // One sweep: what sinks in is taken at the last pressures, then the row of equations is solved. Returns the conductance to the front.
    private double Solve(
        double viscosity, double pull, double dx, ReadOnlySpan<double> depth, double part, Span<double> pressure, double sink, double step)
    {
        int n = depth.Length;
        double[] link = new double[n + 1];
        double before = 0;
        for (int i = 0; i < n; i++)
        {
            double here = ((K1 * H1) + (Along * depth[i])) / (viscosity * dx);
            link[i] = i == 0 ? 2 * here : 2 * before * here / (before + here);
            before = here;
        }

        link[n] = K1 * H1 / (viscosity * dx) / (0.5 + part);
        double[] diagonal = new double[n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++)
        {
            double sinks = Phi2 * (Deeper(depth[i], sink * pressure[i]) - depth[i]) / step / pressure[i] * dx;
            diagonal[i] = link[i] + link[i + 1] + sinks;
            right[i] = i == 0 ? link[0] * pull : 0;
            if (i > 0)
            {
                double share = link[i] / diagonal[i - 1];
                diagonal[i] -= share * link[i];
                right[i] += share * right[i - 1];
            }
        }

        for (int i = n - 1; i >= 0; i--)
        {
            pressure[i] = (right[i] + (i < n - 1 ? link[i + 1] * pressure[i + 1] : 0)) / diagonal[i];
        }

        return link[n];
    }
}
