using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Resin of one viscosity that fills a flat dry stack in a growing circle from a port.</summary>
/// <remarks>
/// Source: Darcy's law with a sharp round front under constant pressure, textbook form (for example Rudd, Long, Kendall and Mangin, Liquid
/// Moulding Technologies, 1997, from memory). The permeability is the same in all directions. Where it is not, take the root of the product of the
/// two; the front is then an oval. <see cref="InfusionFill"/>, which plans ask, is held to these closed forms.
/// </remarks>
public static class RadialFlow
{
    /// <summary>Time to fill a circle: <c>phi mu/(2 K dP) [rf^2 ln(rf/r0) - (rf^2 - r0^2)/2]</c>.</summary>
    /// <param name="medium">The stack.</param>
    /// <param name="viscosity">Viscosity of the resin; 1e-6 to 1e9 Pa s.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="port">Radius r0 of the port; 1e-9 m to 1e5 m.</param>
    /// <param name="front">Radius rf to reach; at least the port's, at most 1e5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Duration FillTime(PorousMedium medium, DynamicViscosity viscosity, Pressure drop, Length port, Length front)
    {
        double mu = FlowGuard.Viscosity(viscosity, nameof(viscosity));
        return Duration.FromSeconds(mu * FluidityForCircle(medium, drop, port, front));
    }

    /// <summary>Radius of the front after a time: the inverse of <see cref="FillTime"/>.</summary>
    /// <param name="medium">The stack.</param>
    /// <param name="viscosity">Viscosity of the resin; 1e-6 to 1e9 Pa s.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="port">Radius of the port; 1e-9 m to 1e5 m.</param>
    /// <param name="time">Time since the feed was opened; 0 to 1e12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Length FrontAfter(PorousMedium medium, DynamicViscosity viscosity, Pressure drop, Length port, Duration time)
    {
        double mu = FlowGuard.Viscosity(viscosity, nameof(viscosity));
        return Length.FromMeters(CircleFront(medium, drop, port, FlowGuard.Time(time, nameof(time)) / mu));
    }

    /// <summary>Integral of time over viscosity that takes the front to a radius, 1/Pa.</summary>
    internal static double FluidityForCircle(PorousMedium medium, Pressure drop, Length port, Length front)
    {
        ArgumentNullException.ThrowIfNull(medium);
        double r0 = FlowGuard.Distance(port, nameof(port));
        double rf = Guard.Between(front.Meters, r0, 1e5, "m", nameof(front));
        return Scale(medium, drop, r0) * Bracket(2 * LogRatio(r0, rf));
    }

    /// <summary>Radius in m of the front after an integral of time over viscosity.</summary>
    internal static double CircleFront(PorousMedium medium, Pressure drop, Length port, double fluidity)
    {
        ArgumentNullException.ThrowIfNull(medium);
        double r0 = FlowGuard.Distance(port, nameof(port));
        return r0 * Math.Exp(InverseBracket(fluidity / Scale(medium, drop, r0)) / 2);
    }

    private static double Scale(PorousMedium medium, Pressure drop, double port) =>
        medium.Pores * port * port / (2 * medium.SquareMetres * FlowGuard.Drop(drop, nameof(drop)));

    // Accurate too where the front has hardly left the port.
    private static double LogRatio(double port, double front) =>
        front < 2 * port ? SmallNumbers.LogP1((front - port) / port) : Math.Log(front / port);

    /// <summary>The bracket of the formula over r0^2 with u = 2 ln(rf/r0): <c>(u e^u - e^u + 1)/2</c>.</summary>
    private static double Bracket(double u)
    {
        if (u > 0.5)
        {
            return ((u * Math.Exp(u)) - SmallNumbers.ExpM1(u)) / 2;
        }

        // The closed form cancels near 0; its series is sum (n - 1) u^n / n!.
        double term = u;
        double sum = 0;
        for (int n = 2; n <= 16; n++)
        {
            term *= u / n;
            sum += (n - 1) * term;
        }

        return sum / 2;
    }

    // The bracket is convex and rises from 0, so Newton's steps from above come down to the root and never pass it.
    private static double InverseBracket(double value)
    {
        // Bracket(u) is at least u^2/4, and at least e^u/2 from u = 2 on.
        double u = Math.Min(2 * Math.Sqrt(value), Math.Max(2, Math.Log(2 * value)));
        for (int step = 0; step < 100 && u > 0; step++)
        {
            double next = u - ((Bracket(u) - value) / (u * Math.Exp(u) / 2));
            if (!(next < u))
            {
                break;
            }

            u = Math.Max(0, next);
        }

        return u;
    }
}
