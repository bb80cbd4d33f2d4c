using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How far the front in a flow medium runs ahead of the front on the mould, and what that adds to the fill time.</summary>
/// <remarks>
/// <para>
/// Source: our own solution of Darcy's law for a steady front, not a printed formula. Resin runs along the medium (thickness h1, permeability
/// K1, porosity phi1) and sinks straight through the laminate under it (h2, phi2, through-thickness permeability Kz) with a sharp
/// front. Flow along the laminate between the two fronts is left out, as fits a medium many times more permeable. The shape of the
/// front is then the same at every speed and viscosity:
/// <c>lead = 3 sqrt(K1 h1/(phi2 Kz)) [sqrt(phi1 h1 + 2 phi2 h2/3) - sqrt(phi1 h1)]</c>.
/// </para>
/// <para>
/// Through-thickness permeability is 10 to 100 times less than that along the cloth (from memory) and seldom known better than
/// within a factor of two or three: the lead goes with the inverse root of it.
/// </para>
/// </remarks>
public static class LeadLag
{
    /// <summary>Distance from the front on the mould to the front in the flow medium, once the fill is well under way.</summary>
    /// <param name="flowMedium">The flow medium.</param>
    /// <param name="laminate">The laminate under it; its permeability along the cloth is not used here.</param>
    /// <param name="throughThickness">Permeability of the laminate through its thickness; 1e-20 to 1e-3 m2.</param>
    /// <exception cref="ArgumentOutOfRangeException">The permeability is out of range.</exception>
    public static Length Lead(PorousLayer flowMedium, PorousLayer laminate, Area throughThickness)
    {
        ArgumentNullException.ThrowIfNull(flowMedium);
        ArgumentNullException.ThrowIfNull(laminate);
        double kz = FlowGuard.Permeability(throughThickness, nameof(throughThickness));
        double medium = flowMedium.Medium.Pores * flowMedium.Metres;
        double under = laminate.Medium.Pores * laminate.Metres * 2 / 3;

        // The difference of the two roots, without the cancellation of a thin laminate.
        double roots = under / (Math.Sqrt(medium + under) + Math.Sqrt(medium));
        return Length.FromMeters(
            3 * Math.Sqrt(flowMedium.Medium.SquareMetres * flowMedium.Metres / (laminate.Medium.Pores * kz)) * roots);
    }

    /// <summary>
    /// Estimate of the time until the mould side is wet to a distance: that of <see cref="PorousStack.Layered"/>, and the time
    /// that the resin takes to sink in, at the feed line (<c>phi2 mu h2^2/(2 Kz dP)</c>) and against the pressure that the lead uses up.
    /// </summary>
    /// <param name="flowMedium">The flow medium.</param>
    /// <param name="laminate">The laminate under it.</param>
    /// <param name="throughThickness">Permeability of the laminate through its thickness; 1e-20 to 1e-3 m2.</param>
    /// <param name="viscosity">Viscosity of the resin; 1e-6 to 1e9 Pa s.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="length">Distance from the feed line; 1e-9 m to 1e5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>
    /// It takes the lead to be fully grown when the laminate is wet through at the feed line, and the medium to go on beyond the
    /// distance; one that ends there fills a little sooner. The same equations solved step by step from the first moment agree within a
    /// few per cent, even at less than one lead from the feed line. Never less than the layered time. Plans add the lead to the path and take the
    /// layered time over both, which errs on the long side; this is what that is held against.
    /// </remarks>
    public static Duration FillTime(
        PorousLayer flowMedium, PorousLayer laminate, Area throughThickness, DynamicViscosity viscosity, Pressure drop, Length length)
    {
        ArgumentNullException.ThrowIfNull(flowMedium);
        ArgumentNullException.ThrowIfNull(laminate);
        double kz = FlowGuard.Permeability(throughThickness, nameof(throughThickness));
        double mu = FlowGuard.Viscosity(viscosity, nameof(viscosity));
        double head = FlowGuard.Drop(drop, nameof(drop));
        double l = FlowGuard.Distance(length, nameof(length));
        double layered = Darcy.FluidityForLine(PorousStack.Layered([flowMedium, laminate]), drop, l);
        (double pores, double thickness) = (laminate.Medium.Pores, laminate.Metres);
        double start = pores * thickness * thickness / (2 * kz * head);

        // The pressure at the back of the lead is mu v times this, with v the speed of the front.
        double medium = flowMedium.Medium.Pores * flowMedium.Metres;
        double back = thickness * Math.Sqrt(
            pores / (flowMedium.Medium.SquareMetres * flowMedium.Metres * kz) * (medium + (pores * thickness * 2 / 3)));
        return Duration.FromSeconds(mu * (start + (back * l / head) + layered));
    }
}
