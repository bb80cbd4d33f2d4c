using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text.Units;

namespace Recipe.Semantics.Schema;

/// <summary>A figure as the language calls it.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Word">Its word.</param>
/// <param name="Doc">What it is, in a few words.</param>
/// <param name="Kind">What a limit of it takes.</param>
/// <param name="Example">A limit of it: <c>at-most 150 g</c>.</param>
internal sealed record FigureWord(PartFigure Figure, string Word, string Doc, ValueKind Kind, string Example);

/// <summary>The figures that may be limited and wanted.</summary>
internal static class FigureWords
{
    private static readonly QuantityKind Bending = new("a bending stiffness for each width", DimensionNames.Energy, ["N.m2/m", "N.m"]) { AtLeast = 0 };

    public static readonly ImmutableArray<FigureWord> All =
    [
        new(PartFigure.Mass, "mass", "mass of the trimmed part", Kinds.Mass, "at-most 150 g"),
        new(PartFigure.Thickness, "thickness", "thickness of the full-cover stack", Kinds.Length, "at-most 1.2 mm"),
        new(PartFigure.ResinContent, "resin-content", "resin in the cured plies, by weight", Kinds.Share, "at-most 45 %"),
        new(PartFigure.BendingAlong, "bending-along", "bending stiffness of a strip along the part", Bending, "at-least 0.6 N.m2/m"),
        new(PartFigure.BendingAcross, "bending-across", "bending stiffness of a strip across it", Bending, "at-least 0.6 N.m2/m"),
        new(PartFigure.ModulusAlong, "modulus-along", "modulus for a pull along the part", Kinds.Modulus, "at-least 12 GPa"),
        new(PartFigure.ModulusAcross, "modulus-across", "modulus for a pull across it", Kinds.Modulus, "at-least 12 GPa"),
        new(PartFigure.TimesOver, "times-over", "how many times over the stack bears its stated loads", new NumberKind("a plain number", 0, 1e6), "at-least 2"),
        new(PartFigure.Resin, "resin", "resin to mix, all pots", Kinds.Mass, "at-most 120 g"),
        new(PartFigure.Pots, "pots", "number of pots", Kinds.CountFromZero, "at-most 2"),
        new(PartFigure.ToVacuum, "to-vacuum", "time from the first mix to full vacuum", Kinds.Time, "at-most 90 min"),
        new(PartFigure.ClockLeft, "clock-left", "what the resin on the part allows, less the time to full vacuum", Kinds.Time, "at-least 20 min"),
        new(PartFigure.Fill, "fill", "time that an infusion takes to fill", Kinds.Time, "at-most 30 min"),
        new(PartFigure.CureEnd, "cure-end", "time from the start of the cure to its end", Kinds.Time, "at-most 24 h"),
        new(PartFigure.Hottest, "hottest", "the hottest it gets in the cure", Kinds.Temperature, "at-most 60 degC"),
        new(PartFigure.SoftensAt, "softens-at", "glass transition at the end of the cure", Kinds.Temperature, "at-least 65 degC"),
        new(PartFigure.Cost, "cost", "what the materials of all parts cost", new PriceKind(), "at-most 60 EUR"),
    ];

    /// <summary>The figure of a word of the schema.</summary>
    public static FigureWord Of(string word) => All.First(figure => figure.Word == word);
}
