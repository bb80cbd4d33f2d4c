using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text.Units;

namespace Recipe.Semantics.Schema;

/// <summary>A figure as the language calls it.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Doc">What it is, in a few words.</param>
/// <param name="Kind">What a limit of it takes.</param>
/// <param name="Example">A limit of it: <c>at-most 150 g</c>.</param>
internal sealed record FigureWord(PartFigure Figure, string Doc, ValueKind Kind, string Example)
{
    /// <summary>Its word.</summary>
    public string Word => Figure.Word();
}

/// <summary>The figures that may be limited and wanted.</summary>
internal static class FigureWords
{
    private static readonly QuantityKind Bending = new("a bending stiffness for each width", DimensionNames.Energy, ["N.m2/m", "N.m"]) { AtLeast = 0 };

    /// <summary>All of them, in the order in which they are read.</summary>
    public static ImmutableArray<FigureWord> All { get; } =
    [
        new(PartFigure.Mass, "mass of the trimmed part", Kinds.Mass, "at-most 150 g"),
        new(PartFigure.Thickness, "thickness of the full-cover stack", Kinds.Length, "at-most 1.2 mm"),
        new(PartFigure.ResinContent, "resin in the cured plies, by weight", Kinds.Share, "at-most 45 %"),
        new(PartFigure.BendingAlong, "bending stiffness of a strip along the part", Bending, "at-least 0.6 N.m2/m"),
        new(PartFigure.BendingAcross, "bending stiffness of a strip across it", Bending, "at-least 0.6 N.m2/m"),
        new(PartFigure.ModulusAlong, "modulus for a pull along the part", Kinds.Modulus, "at-least 12 GPa"),
        new(PartFigure.ModulusAcross, "modulus for a pull across it", Kinds.Modulus, "at-least 12 GPa"),
        new(PartFigure.TimesOver, "how many times over the stack bears its stated loads", new NumberKind("a plain number", 0, 1e6), "at-least 2"),
        new(PartFigure.Resin, "resin to mix, all pots", Kinds.Mass, "at-most 120 g"),
        new(PartFigure.Pots, "number of pots", Kinds.CountFromZero, "at-most 2"),
        new(PartFigure.ToVacuum, "time from the first mix to full vacuum", Kinds.Time, "at-most 90 min"),
        new(PartFigure.ClockLeft, "what the resin on the part allows, less the time to full vacuum", Kinds.Time, "at-least 20 min"),
        new(PartFigure.Fill, "time that an infusion takes to fill", Kinds.Time, "at-most 30 min"),
        new(PartFigure.CureEnd, "time from the start of the cure to its end", Kinds.Time, "at-most 24 h"),
        new(PartFigure.Hottest, "the hottest it gets in the cure", Kinds.Temperature, "at-most 60 degC"),
        new(PartFigure.SoftensAt, "glass transition at the end of the cure", Kinds.Temperature, "at-least 65 degC"),
        new(PartFigure.Cost, "what the materials of all parts cost", new PriceKind(), "at-most 60 EUR"),
    ];

    /// <summary>The figure of a word of the schema.</summary>
    public static FigureWord Of(string word) => All.First(figure => figure.Word == word);
}
