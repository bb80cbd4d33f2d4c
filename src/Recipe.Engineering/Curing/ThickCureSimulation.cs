using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Heat through a thick laminate that cures: <c>rho c dT/dt = k d2T/dz2 + rho_r (1 - Vf) H da/dt</c>, with a film of heat transfer at either face.
/// </summary>
/// <remarks>
/// Source: Loos and Springer, J. Compos. Mater. 17 (1983) 135, for the balance. Finite volumes through the thickness; in time conduction
/// by the implicit Euler method and the cure's heat by the explicit one, halved and extrapolated, which also tells the error of the step.
/// The resin neither flows nor bleeds, and the properties stay constant. Thermocouples in the laminate win.
/// </remarks>
public static class ThickCureSimulation
{
    private const double DegreeTolerance = 2e-5;
    private const double KelvinTolerance = 5e-3;
    private const int MostSteps = 500_000;

    /// <summary>The cure between two faces, to the end of the longer of their schedules.</summary>
    /// <param name="laminate">The laminate.</param>
    /// <param name="mould">What lies beyond the mould's face.</param>
    /// <param name="bag">What lies beyond the bag's face.</param>
    /// <param name="start">Temperature of the laminate at the start.</param>
    /// <param name="cells">Cells through the thickness; 3 to 500. Twenty is plenty for most.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or a temperature of start or schedules leaves the range of the kinetics.</exception>
    /// <exception cref="ArgumentException">Both schedules are empty, or the rates are too high to be followed.</exception>
    public static ThickCure Along(
        ThickLaminate laminate, LaminateFaceHeat mould, LaminateFaceHeat bag, Temperature start, int cells = 20)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        ArgumentNullException.ThrowIfNull(mould);
        ArgumentNullException.ThrowIfNull(bag);
        ThroughThickness heat = new(laminate, mould, bag, start, (int)Guard.Between(cells, 3, 500, string.Empty, nameof(cells)));
        if (heat.End <= 0)
        {
            throw new ArgumentException("At least one of the schedules must last some time.", nameof(mould));
        }

        double t = 0;
        double h = 1;
        int corner = 0;
        for (int count = 0; t < heat.End; count++)
        {
            if (count == MostSteps)
            {
                throw new ArgumentException("The cure runs too fast to be followed; check the constants of the model.");
            }

            // Land on the corners of the schedules, where the surroundings may jump.
            while (heat.Corners[corner] <= t)
            {
                corner++;
            }

            double left = heat.Corners[corner] - t;
            bool last = h * 1.01 >= left;
            double step = last ? left : h;
            double error = heat.Try(t, step, DegreeTolerance, KelvinTolerance);
            double factor = Math.Clamp(0.9 / Math.Sqrt(Math.Max(error, 1e-9)), 0.2, 3);
            if (!double.IsFinite(error) || error > 1)
            {
                h = step * (double.IsFinite(error) ? Math.Min(0.7, factor) : 0.1);
                continue;
            }

            t = last ? heat.Corners[corner] : t + step;
            heat.Accept(t);
            h = last ? Math.Max(h, step) : step * factor;
        }

        return heat.Result();
    }
}
