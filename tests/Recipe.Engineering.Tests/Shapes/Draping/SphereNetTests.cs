using UnitsNet;

namespace Recipe.Engineering.Tests;

/// <summary>
/// A net started along two great circles of the unit sphere. In the limit of fine threads the angle w between them obeys
/// w_uv = -sin w (P. L. Chebyshev, Sur la coupe des vetements, 1878: a net of constant edges on a surface of curvature K has
/// w_uv = -K sin w); with z = u v it is z w'' + w' + sin w = 0, w(0) = 90 degrees.
/// </summary>
public class SphereNetTests
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
    public void Shear_along_the_diagonal_is_the_exact_one_in_the_middles_of_cells()
    {
        var net = Net(2);
        foreach (double pole in new[] { 30.0, 45, 60 })
        {
            (_, double exact) = Continuum(pole * Math.PI / 180);
            Assert.Equal(exact * 180 / Math.PI, Diagonal(net, pole * Math.PI / 180) * 180 / Math.PI, 0.03);
        }
    }

    [Fact]
    public void Shear_at_the_corners_tends_to_the_exact_one_with_first_order()
    {
        // Half a degree gives 7.70, 16.38 and 27.28 degrees on a sphere without facets.
        (DrapeNet two, DrapeNet one) = (Net(2), Net(1));
        foreach (double pole in new[] { 30.0, 45, 60 })
        {
            (_, double exact) = Continuum(pole * Math.PI / 180);
            double coarse = CornerDiagonal(two, pole * Math.PI / 180) - exact;
            double fine = CornerDiagonal(one, pole * Math.PI / 180) - exact;
            Assert.InRange(coarse / fine, 1.85, 2.15);
        }

        Assert.Equal(7.70, Halved(one, two, 30), 0.06);
        Assert.Equal(16.38, Halved(one, two, 45), 0.06);
        Assert.Equal(27.28, Halved(one, two, 60), 0.06);
    }

    [Fact]
    public void Threads_reach_the_points_that_the_continuum_says()
    {
        var net = Net(1);
        foreach (double pole in new[] { 30.0, 45, 60 })
        {
            (double u, _) = Continuum(pole * Math.PI / 180);
            (double sine, double cosine) = Math.SinCos(pole * Math.PI / 180);
            Point2 flat = Assert.NotNull(net.FlatOf(new Point3(sine * Math.Sqrt(0.5), sine * Math.Sqrt(0.5), cosine)));
            Assert.Equal(u, flat.X, 0.0005);
            Assert.Equal(u, flat.Y, 0.0005);
        }
    }

    [Fact]
    public void Shear_is_the_area_between_the_threads_from_the_start()
    {
        // The integral of w_uv = -K sin w over a block of the net (J. N. Hazzidakis, 1879): shear = integral of K = area, for K = 1.
        var net = Net(2);
        double step = net.Step.Meters;
        var shear = net.Cells.ToDictionary(cell => (cell.I, cell.J), cell => cell.Shear);
        var area = net.Cells.ToDictionary(cell => (cell.I, cell.J), cell => cell.SquareMetres);
        foreach ((int i, int j) in new[] { (5, 5), (20, 5), (12, 18), (25, 10) })
        {
            double sum = 0;
            for (int k = 0; k <= i; k++)
            {
                for (int l = 0; l <= j; l++)
                {
                    sum += area[(k, l)] * (k == i ? 0.5 : 1) * (l == j ? 0.5 : 1);
                }
            }

            Assert.Equal(sum, shear[(i, j)], step * step);
        }
    }

    [Fact]
    public void A_cell_obeys_the_picture_frame()
    {
        // Frame of arm L opened by d along its diagonal: shear = 90 - 2 acos((sqrt 2 L + d) / 2 L) degrees.
        Assert.Equal(17.628, Frame(0.2) * 180 / Math.PI, 0.0005);
        Assert.Equal(8.4196, Frame(0.1) * 180 / Math.PI, 0.00005);
        var net = Net(1);
        var nodes = net.Nodes.ToDictionary(n => (n.I, n.J), n => n.Place);
        foreach (DrapeCell cell in net.Cells.Where(cell => cell.IsWhole && cell.I * cell.J > 0))
        {
            double diagonal = (nodes[(cell.I + 1, cell.J + 1)] - nodes[(cell.I, cell.J)]).Norm;
            Assert.Equal(Frame((diagonal / net.Step.Meters) - Math.Sqrt(2)), cell.Shear, 0.002);
        }

        static double Frame(double share) => (Math.PI / 2) - (2 * Math.Acos((Math.Sqrt(2) + share) / 2));
    }

    [Fact]
    public void The_whole_hemisphere_is_covered_and_its_four_quarters_are_alike()
    {
        var net = Net(2);
        Assert.Empty(net.Gaps);
        Assert.True(net.FlatFollowsRim);
        Digits.Close(2 * Math.PI, net.CoveredArea.SquareMeters, 0.003);
        Outline flat = Assert.IsType<Outline>(net.Flat);

        // Along the threads of the start the cloth keeps the length of a quarter circle.
        Assert.Equal(Math.PI / 2, flat.Most.X, 0.002);
        Assert.Equal(-Math.PI / 2, flat.Least.Y, 0.002);
        Assert.InRange(flat.SquareMetres, 2 * Math.PI, Math.PI * Math.PI);
        var shear = net.Cells.ToDictionary(cell => (cell.I, cell.J), cell => cell.Shear);
        foreach (((int i, int j), double angle) in shear.Where(cell => cell.Key.I >= 0 && cell.Key.J >= 0 && cell.Key.I + cell.Key.J < 50))
        {
            Assert.Equal(-angle, shear[(-1 - i, j)], 0.004);
            Assert.Equal(angle, shear[(-1 - i, -1 - j)], 0.004);
            Assert.Equal(angle, shear[(j, i)], 0.004);
        }
    }

    private static readonly Lazy<DrapeNet> One = new(() => Laid(1));
    private static readonly Lazy<DrapeNet> Two = new(() => Laid(2));

    private static DrapeNet Net(double degrees) => degrees == 1 ? One.Value : Two.Value;

    private static DrapeNet Laid(double degrees) =>
        Draping.Over(TestMeshes.Cap(1, Math.PI / 2, 45), new(0, 0, 1), new(1, 0, 0), Length.FromMeters(degrees * Math.PI / 180));

    // What half the step gives, when the error is of first order.
    private static double Halved(DrapeNet one, DrapeNet two, double pole) =>
        180 / Math.PI * ((1.5 * CornerDiagonal(one, pole * Math.PI / 180)) - (0.5 * CornerDiagonal(two, pole * Math.PI / 180)));

    private static double CornerDiagonal(DrapeNet net, double pole)
    {
        var nodes = net.Nodes.ToDictionary(n => (n.I, n.J), n => n.Place);
        (double lastPole, double lastShear) = (0, 0);
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
        const double du = 1e-5;
        (double w, double slope, double arc, double u) = (Math.PI / 2, -1.0, 0, 0);
        // In u: z = u^2, so w_u = 2 u w', w'' = (-w' - sin w) / z.
        while (true)
        {
            double before = arc;
            (double k1, double m1) = Rates(u, w, slope);
            (double k2, double m2) = Rates(u + (du / 2), w + (du / 2 * k1), slope + (du / 2 * m1));
            (double k3, double m3) = Rates(u + (du / 2), w + (du / 2 * k2), slope + (du / 2 * m2));
            (double k4, double m4) = Rates(u + du, w + (du * k3), slope + (du * m3));
            double next = w + (du / 6 * (k1 + (2 * k2) + (2 * k3) + k4));
            slope += du / 6 * (m1 + (2 * m2) + (2 * m3) + m4);
            arc += du * (Math.Cos(w / 2) + Math.Cos(next / 2));
            w = next;
            u += du;
            if (arc >= pole)
            {
                double back = (arc - pole) / (arc - before) * du;
                return (u - back, (Math.PI / 2) - w + (back * k4));
            }
        }

        // dw/du = 2 u p and dp/du = 2 u w'' with p = w'; at 0, p = -1 and w'' = -p cos(w) / 2 = 0.
        static (double Dw, double Dp) Rates(double u, double w, double p) => (2 * u * p, u < 1e-9 ? 0 : 2 * (-p - Math.Sin(w)) / u);
    }
}
