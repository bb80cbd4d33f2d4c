using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Planning;

/// <summary>Pieces of a plan that may be left out when only some figures are asked for.</summary>
[Flags]
public enum PlanPieces
{
    /// <summary>Conditions, geometry, stack, bag and laminate, which everything rests on.</summary>
    Laminate = 0,

    /// <summary>How stiff the stack is, and what stated loads do to it.</summary>
    Stiffness = 1,

    /// <summary>Resin, vacuum, flow, pots, clock.</summary>
    Resin = 2,

    /// <summary>The cure against the clock.</summary>
    Cure = 4,

    /// <summary>What a cure model makes of the cure.</summary>
    Progress = 8,

    /// <summary>Takeoff and cost.</summary>
    Takeoff = 16,

    /// <summary>What no figure rests on: nests, lives and heat of pots, heat of the laminate, curl, contributions of the plies.</summary>
    Rest = 32,

    /// <summary>Everything.</summary>
    All = Stiffness | Resin | Cure | Progress | Takeoff | Rest,
}

/// <summary>Which pieces figures need.</summary>
public static class FigurePieces
{
    /// <summary>The pieces that a figure is read from.</summary>
    public static PlanPieces Of(PartFigure figure) => figure switch
    {
        PartFigure.Mass or PartFigure.Thickness or PartFigure.ResinContent => PlanPieces.Laminate,
        PartFigure.BendingAlong or PartFigure.BendingAcross or PartFigure.ModulusAlong or PartFigure.ModulusAcross or PartFigure.TimesOver => PlanPieces.Stiffness,
        PartFigure.Resin or PartFigure.Pots or PartFigure.ToVacuum or PartFigure.ClockLeft or PartFigure.Fill => PlanPieces.Resin,
        PartFigure.CureEnd or PartFigure.Hottest => PlanPieces.Cure,
        PartFigure.SoftensAt => PlanPieces.Cure | PlanPieces.Progress,
        PartFigure.Cost => PlanPieces.Resin | PlanPieces.Takeoff,
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "No such figure."),
    };

    /// <summary>The pieces that several figures need.</summary>
    public static PlanPieces Of(ImmutableArray<PartFigure> figures) => figures.Aggregate(PlanPieces.Laminate, (pieces, figure) => pieces | Of(figure));
}
