using UnitsNet;
using Xunit.Abstractions;

namespace Recipe.Engineering.Tests;

/// <summary>
/// A net started along two great circles of the unit sphere. In the limit of fine threads the angle w between them obeys
/// w_uv = -sin w (P. L. Chebyshev, Sur la coupe des vetements, 1878: a net of constant edges on a surface of curvature K has
/// w_uv = -K sin w); with z = u v it is z w'' + w' + sin w = 0, w(0) = 90 degrees.
/// </summary>
public class SphereNetTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(30, 7.521, 0.36247)]
    [InlineData(45, 16.113, 0.53148)]
    [InlineData(60, 26.946, 0.69007)]
    public void The_oracle_agrees_with_the_values_computed_before(double pole, double shear, double edge)
    {
        (double u, double angle) = Continuum(pole * Math.PI / 180);
        Assert.Equal(shear, angle * 180 / Math.PI, 0.002);
        Assert.Equal(edge, u, 0.00002);
    }

    [Fact]
    public void Shear_along_the_diagonal_tends_to_the_exact_one()
    {
        var mesh = TestMeshes.Cap(1, Math.PI / 2, 60);
        double before = 1;
        foreach (double step in new[] { 2.0, 1.0, 0.5 })
        {
            var clock = System.Diagnostics.Stopwatch.StartNew();
            DrapeNet net = Draping.Over(mesh, new(0, 0, 1), new(1, 0, 0), Length.FromMeters(step * Math.PI / 180));
            output.WriteLine($"{step} {mesh.Triangles.Length} {net.Nodes.Length} {clock.ElapsedMilliseconds} ms gaps {net.Gaps.Length} cov {net.CoveredArea.SquareMeters / 2 / Math.PI} {net.FlatFollowsRim} {net.Flat?.SquareMetres} greatest {net.GreatestShear.Degrees}");
            foreach (double pole in new[] { 30.0, 45, 60 })
            {
                (double u, double exact) = Continuum(pole * Math.PI / 180);
                output.WriteLine($"  {pole} {exact * 180 / Math.PI} {Diagonal(net, pole * Math.PI / 180) * 180 / Math.PI} corner {CornerDiagonal(net, pole * Math.PI / 180) * 180 / Math.PI} u {u}");
            }

            double error = Math.Abs(Diagonal(net, Math.PI / 3) - Continuum(Math.PI / 3).Shear);
            output.WriteLine($"{error}");
            before = error;
        }
    }

    private static double CornerDiagonal(DrapeNet net, double pole)
    {
        var nodes = net.Nodes.ToDictionary(n => (n.I, n.J), n => n.Place);
        double lastPole = 0, lastShear = 0;
        for (int i = 0; nodes.ContainsKey((i + 1, i + 1)); i++)
        {
            double at = Math.Acos(Math.Clamp(nodes[(i, i)].Unit().Z, -1, 1));
            Point3 a = nodes[(i + 1, i)] - nodes[(i, i)];
            Point3 b = nodes[(i, i + 1)] - nodes[(i, i)];
            double shear = (Math.PI / 2) - Math.Acos(Point3.Dot(a.Unit(), b.Unit()));
            if (at >= pole)
            {
                return lastShear + ((shear - lastShear) * (pole - lastPole) / (at - lastPole));
            }

            (lastPole, lastShear) = (at, shear);
        }

        return double.NaN;
    }

    // Shear on the diagonal at an angle from the pole, between the middles of cells.
    private static double Diagonal(DrapeNet net, double pole)
    {
        var nodes = net.Nodes.ToDictionary(n => (n.I, n.J), n => n.Place);
        (double lastPole, double lastShear) = (0, 0);
        foreach (DrapeCell cell in net.Cells.Where(c => c.I == c.J && c.I >= 0))
        {
            int i = cell.I;
            Point3 middle = (nodes[(i, i)] + nodes[(i + 1, i)] + nodes[(i, i + 1)] + nodes[(i + 1, i + 1)]).Unit();
            double at = Math.Acos(middle.Z);
            if (at >= pole)
            {
                return lastShear + ((cell.Shear - lastShear) * (pole - lastPole) / (at - lastPole));
            }

            (lastPole, lastShear) = (at, cell.Shear);
        }

        throw new InvalidOperationException("The net ends before that.");
    }

    // Runge-Kutta of fourth order in z from the series at 0, and the length of the diagonal u = v: ds = 2 cos(w / 2) du.
    private static (double U, double Shear) Continuum(double pole)
    {
        const double Step = 1e-5;
        (double w, double slope, double arc, double u) = ((Math.PI / 2), -1.0, 0, 0);
        // In u: z = u^2, so w_u = 2 u w', w'' = (-w' - sin w) / z.
        while (true)
        {
            double before = arc;
            (double k1, double m1) = Rates(u, w, slope);
            (double k2, double m2) = Rates(u + (Step / 2), w + (Step / 2 * k1), slope + (Step / 2 * m1));
            (double k3, double m3) = Rates(u + (Step / 2), w + (Step / 2 * k2), slope + (Step / 2 * m2));
            (double k4, double m4) = Rates(u + Step, w + (Step * k3), slope + (Step * m3));
            double next = w + (Step / 6 * (k1 + (2 * k2) + (2 * k3) + k4));
            slope += Step / 6 * (m1 + (2 * m2) + (2 * m3) + m4);
            arc += Step * (Math.Cos(w / 2) + Math.Cos(next / 2));
            w = next;
            u += Step;
            if (arc >= pole)
            {
                double back = (arc - pole) / (arc - before) * Step;
                return (u - back, (Math.PI / 2) - w + (back * k4));
            }
        }

        // dw/du = 2 u p and dp/du = 2 u w'' with p = w'; at 0, p = -1 and w'' = -p cos(w) / 2 = 0.
        static (double Dw, double Dp) Rates(double u, double w, double p) => (2 * u * p, u < 1e-9 ? 0 : 2 * (-p - Math.Sin(w)) / u);
    }
}
