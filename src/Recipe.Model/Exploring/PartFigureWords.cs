namespace Recipe.Model;

/// <summary>The words by which the language calls figures.</summary>
public static class PartFigureWords
{
    /// <summary>The word of a figure: <c>bending-along</c>.</summary>
    public static string Word(this PartFigure figure) => figure switch
    {
        PartFigure.Mass => "mass",
        PartFigure.Thickness => "thickness",
        PartFigure.ResinContent => "resin-content",
        PartFigure.BendingAlong => "bending-along",
        PartFigure.BendingAcross => "bending-across",
        PartFigure.ModulusAlong => "modulus-along",
        PartFigure.ModulusAcross => "modulus-across",
        PartFigure.TimesOver => "times-over",
        PartFigure.Resin => "resin",
        PartFigure.Pots => "pots",
        PartFigure.ToVacuum => "to-vacuum",
        PartFigure.ClockLeft => "clock-left",
        PartFigure.Fill => "fill",
        PartFigure.CureEnd => "cure-end",
        PartFigure.Hottest => "hottest",
        PartFigure.SoftensAt => "softens-at",
        PartFigure.Cost => "cost",
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "No such figure."),
    };
}
