using System.Collections.Immutable;
using Recipe.Documents.Quantities;
using Recipe.Documents.Travellers;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Changes;

/// <summary>The figures that parts and versions of a part are compared by: what it weighs, how stiff it is, what is mixed, whether the job fits the clock, the cure, the cost.</summary>
internal static class Figures
{
    /// <summary>All of them, in the order in which they are read.</summary>
    public static ImmutableArray<Figure> All { get; } =
    [
        new(PartFigure.Mass, "trimmed_mass_kg", "Mass, trimmed", Mass, FigureScales.Mass, InShares: true),
        new(PartFigure.Thickness, "thickness_m", "Thickness", (text, m) => text.Thickness(Length.FromMeters(m)).Main, FigureScales.Thickness, InShares: true),
        new(PartFigure.ResinContent, "resin_fraction", "Resin content, by weight", (_, share) => QuantityText.Share(share), FigureScales.Share),
        new(PartFigure.BendingAlong, "bending_along_N_m2_per_m", "Bending stiffness along", Bending, FigureScales.Bending, InShares: true),
        new(PartFigure.BendingAcross, "bending_across_N_m2_per_m", "Bending stiffness across", Bending, FigureScales.Bending, InShares: true),
        new(PartFigure.ModulusAlong, "modulus_along_Pa", "Modulus along", Modulus, FigureScales.Modulus, InShares: true),
        new(PartFigure.ModulusAcross, "modulus_across_Pa", "Modulus across", Modulus, FigureScales.Modulus, InShares: true),
        new(PartFigure.TimesOver, "loads_borne_times_over", "Stated loads borne", (_, times) => Numbers.Significant(times, 3) + "\u00A0times", FigureScales.Times, InShares: true),
        new(PartFigure.Resin, "resin_to_mix_kg", "Resin to mix", Mass, FigureScales.Mass, InShares: true),
        new(PartFigure.Pots, "pots", "Pots", (_, count) => Numbers.Whole((int)count), FigureScales.Plain),
        new(PartFigure.ToVacuum, "first_mix_to_full_vacuum_s", "First mix to full vacuum", (_, s) => QuantityText.Minutes(Duration.FromSeconds(s), Rounding.Up), FigureScales.Minutes),
        new(PartFigure.ClockLeft, "left_on_the_clock_s", "Left on the clock", Minutes, FigureScales.Minutes),
        new(PartFigure.Fill, "fill_s", "Infusion fills in", (_, s) => StartStation.Short(Duration.FromSeconds(s)), FigureScales.Minutes),
        new(PartFigure.CureEnd, "cure_end_s", "Cure ends after", (_, s) => QuantityText.Span(Duration.FromSeconds(s)), FigureScales.Hours),
        new(PartFigure.Hottest, "hottest_K", "Hottest", Heat, FigureScales.Temperature),
        new(PartFigure.SoftensAt, "softens_at_K", "Softens at about", Heat, FigureScales.Temperature),
        new(PartFigure.Cost, "materials_cost", "Materials, all parts", (text, amount) => QuantityText.Money((decimal)amount, text.Currency), FigureScales.Money, InShares: true),
    ];

    /// <summary>How a figure is said.</summary>
    public static Figure Of(PartFigure kind) => All.First(figure => figure.Kind == kind);

    /// <summary>
    /// The difference of two figures as they are printed, so that the three of them add up; of kelvins it is a difference, not a
    /// reading. Empty when there is none.
    /// </summary>
    public static string Difference(Figure figure, QuantityText text, double was, double now)
    {
        var by = now - was;
        if (by == 0)
        {
            return "";
        }

        var sign = by > 0 ? "+" : "-";
        var size = Printed(figure.Text(text, was), figure.Text(text, now)) ?? figure.Text(text, Math.Abs(by));
        return figure.InShares && was > 0 ? $"{sign}{size} ({sign}{Numbers.Significant(Math.Abs(by) / was * 100, 2)}\u00A0%)" : sign + size;
    }

    // Null when the two are not each one number with the same unit: hours and minutes, grams and kilograms.
    private static string? Printed(string was, string now)
    {
        var (a, b) = (was.Split('\u00A0'), now.Split('\u00A0'));
        if (a.Length > 2 || a.Length != b.Length || (a.Length == 2 && a[1] != b[1]) || !Number(a[0], out var from) || !Number(b[0], out var to))
        {
            return null;
        }

        var difference = Numbers.Fixed((double)Math.Abs(to - from), Math.Max(from.Scale, to.Scale));
        return a.Length == 2 ? $"{difference}\u00A0{a[1]}" : difference;
    }

    private static bool Number(string text, out decimal number) => decimal.TryParse(
        text.Replace("\u2009", "", StringComparison.Ordinal), System.Globalization.NumberStyles.AllowDecimalPoint | System.Globalization.NumberStyles.AllowLeadingSign, System.Globalization.CultureInfo.InvariantCulture, out number);

    private static string Mass(QuantityText text, double kg) => text.About(UnitsNet.Mass.FromKilograms(kg)).Main;

    private static string Bending(QuantityText text, double nm) => Numbers.Significant(nm, 3) + "\u00A0N·m²/m";

    private static string Modulus(QuantityText text, double pa) => text.Modulus(Pressure.FromPascals(pa)).Main;

    private static string Heat(QuantityText text, double k) => text.Temperature(Temperature.FromKelvins(k)).Main;

    private static string Minutes(QuantityText text, double s) => QuantityText.Minutes(Duration.FromSeconds(s));
}
