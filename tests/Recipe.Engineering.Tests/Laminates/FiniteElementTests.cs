using UnitsNet;
using Xunit.Abstractions;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

/// <summary>
/// The laminate beside CalculiX (Debian package calculix-ccx), a general-purpose finite element program that knows nothing of
/// lamination theory: layered shells, an elastic solid in each layer.
/// </summary>
public class FiniteElementTests(ITestOutputHelper output)
{
    private const double PlyThickness = 0.0005;

    // A strip bends by 1/d11 and, unlike on its two sides, curls in the cold. The elements shear and have free edges, where plies
    // work at each other within about a thickness: hence the percentage.
    [Theory]
    [InlineData("0 0", 0.005)]
    [InlineData("0 90", 0.005)]
    [InlineData("90 0 0", 0.005)]
    [InlineData("0 90 90 0", 0.005)]
    [InlineData("0 45 -45 90", 0.02)]
    [InlineData("45 -45", 0.02)]
    [InlineData("30 0 90", 0.02)]
    public void A_strip_bends_and_curls_as_finite_elements_do(string stack, double relative)
    {
        if (!IsThere())
        {
            return;
        }

        double[] degrees = [.. stack.Split(' ').Select(word => double.Parse(word))];
        FiniteElementStrip strip = new(Graphite, PlyThickness, degrees);
        Laminate laminate = Of(Graphite, Length.FromMeters(PlyThickness), degrees);

        // The force at the end points to the bag, so the bag side is pressed: the moment is negative.
        double measured = strip.CurvatureUnderLoad();
        double stiffness = -FiniteElementStrip.MomentHalfWay / measured;
        output.WriteLine($"[{stack}] strip stiffness: finite elements {stiffness:G6}, here {laminate.StripStiffness().NewtonMeters:G6} N m");
        Digits.Close(stiffness, laminate.StripStiffness().NewtonMeters, relative);

        double expected = LaminateResponse.FromTemperature(laminate, Kelvin(-75))!.Value.Curvature.X;
        double curl = strip.CurvatureFromTemperature(-75);
        output.WriteLine($"[{stack}] curvature after cooling by 75 K: finite elements {curl:G6}, here {expected:G6} 1/m");
        double scale = 22.5e-6 * 75 / laminate.Thickness.Meters;
        Assert.True(Math.Abs(curl - expected) <= relative * Math.Max(Math.Abs(expected), 0.05 * scale));
    }

    private bool IsThere()
    {
        if (FiniteElementStrip.IsInstalled())
        {
            return true;
        }

        const string absent = "NOT COMPARED: the finite element program ccx is not installed (Debian package calculix-ccx).";
        Assert.False(Environment.GetEnvironmentVariable("CI") == "true", absent);
        output.WriteLine(absent);
        return false;
    }
}
