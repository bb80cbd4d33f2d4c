using Recipe.Model;

namespace Recipe.Planning;

/// <summary>Reads the figures that parts are compared by out of their plans.</summary>
public static class PlanFigures
{
    /// <summary>
    /// A figure in SI (money in the currency of the plan); null when the plan does not have it. What it means and in which unit, see
    /// <see cref="PartFigure"/>.
    /// </summary>
    public static double? Of(PartFigure figure, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return figure switch
        {
            PartFigure.Mass => plan.TrimmedMass?.Value.Value.Kilograms,
            PartFigure.Thickness => plan.Laminate?.Thickness.Value.Meters,
            PartFigure.ResinContent => plan.Laminate?.ResinFraction.Value,
            PartFigure.BendingAlong => plan.Stiffness?.StripAlong.Value.NewtonMeters,
            PartFigure.BendingAcross => plan.Stiffness?.StripAcross.Value.NewtonMeters,
            PartFigure.ModulusAlong => plan.Stiffness?.Along.Value.Pascals,
            PartFigure.ModulusAcross => plan.Stiffness?.Across.Value.Pascals,
            PartFigure.TimesOver => TimesOver(plan),
            PartFigure.Resin => plan.Resin?.ToMix.Value.Kilograms,
            PartFigure.Pots => plan.Resin is null ? null : plan.Pots.Length,
            PartFigure.ToVacuum => plan.Clock?.Need.Value.Seconds,
            PartFigure.ClockLeft => plan.Clock is { FilmLife: { } life } clock ? WholeMinutes.Left(life.Value, clock.Need.Value).Seconds : null,
            PartFigure.Fill => plan.Flow?.Fill?.Value.Seconds,
            PartFigure.CureEnd => plan.Cure?.Total.Value.Seconds,
            PartFigure.Hottest => plan.Cure?.Peak.Value.Kelvins,
            PartFigure.SoftensAt => plan.Cure?.Progress?.Transition?.Value.Value.Kelvins,
            PartFigure.Cost => plan.Cost is { WithoutPrice: 0 } cost ? (double)cost.Total : null,
            _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "No such figure."),
        };
    }

    // Every stated load has to be judged whole: one that is not may be the one that breaks the part.
    private static double? TimesOver(Plan plan)
    {
        double? least = null;
        foreach (var load in plan.Stiffness?.Loads ?? [])
        {
            if (!load.IsComplete || load.First is not { } first)
            {
                return null;
            }

            least = Math.Min(least ?? double.PositiveInfinity, first.Factor.Value);
        }

        return least;
    }
}
