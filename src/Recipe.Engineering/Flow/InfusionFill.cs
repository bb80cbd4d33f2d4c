using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Resin that thickens while it fills a dry stack under constant pressure.</summary>
/// <remarks>
/// Source: Darcy's law with a sharp front; all resin in the stack and in the pot has the same age, so the integral of <c>dt/mu(t)</c>
/// takes the place of <c>t/mu</c>. Resin that warms in a deep pot thickens sooner than the curve of a thin film says.
/// </remarks>
public static class InfusionFill
{
    /// <summary>Fill from a line across the stack.</summary>
    /// <param name="medium">The stack.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="length">Distance from the feed line to the far end; 1e-9 m to 1e5 m.</param>
    /// <param name="resin">The resin's viscosity since mixing.</param>
    /// <param name="opened">Time since mixing at which the feed is opened; default 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static FillOutcome Line(
        PorousMedium medium, Pressure drop, Length length, ViscosityCurve resin, Duration opened = default)
    {
        double needed = Darcy.FluidityForLine(medium, drop, FlowGuard.Distance(length, nameof(length)));
        return Run(needed, length, resin, opened, given => Darcy.LineFront(medium, drop, given));
    }

    /// <summary>Fill in a growing circle from a port.</summary>
    /// <param name="medium">The stack.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="port">Radius of the port; 1e-9 m to 1e5 m.</param>
    /// <param name="front">Radius to reach; at least the port's, at most 1e5 m.</param>
    /// <param name="resin">The resin's viscosity since mixing.</param>
    /// <param name="opened">Time since mixing at which the feed is opened; default 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static FillOutcome Circle(
        PorousMedium medium, Pressure drop, Length port, Length front, ViscosityCurve resin, Duration opened = default)
    {
        double needed = RadialFlow.FluidityForCircle(medium, drop, port, front);
        return Run(needed, front, resin, opened, given => RadialFlow.CircleFront(medium, drop, port, given));
    }

    private static FillOutcome Run(double needed, Length asked, ViscosityCurve resin, Duration opened, Func<double, double> front)
    {
        ArgumentNullException.ThrowIfNull(resin);
        ViscosityCurve aged = resin.Aged(opened, nameof(opened));
        double end = aged.TimeAtFluidity(needed);
        return double.IsFinite(end)
            ? new FillOutcome(Duration.FromSeconds(end), asked)
            : new FillOutcome(null, Length.FromMeters(front(aged.WholeFluidity)));
    }
}
