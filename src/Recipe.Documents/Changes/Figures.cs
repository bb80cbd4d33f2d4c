using System.Collections.Immutable;
using Recipe.Documents.Quantities;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Changes;

/// <summary>The figures that two versions of a part are compared by: what it weighs, how stiff it is, what is mixed, whether the job fits the clock, the cure, the cost.</summary>
internal static class Figures
{
    /// <summary>All of them, in the order in which they are read.</summary>
    public static ImmutableArray<Figure> All { get; } =
    [
        new("trimmed_mass_kg", "Mass, trimmed", plan => plan.Laminate?.TrimmedMass.Value.Value.Kilograms, Mass, InShares: true),
        new("thickness_m", "Thickness", plan => plan.Laminate?.Thickness.Value.Meters, (text, m) => text.Thickness(Length.FromMeters(m)).Main, InShares: true),
        new("resin_share", "Resin content, by weight", plan => plan.Laminate?.ResinFraction.Value, (_, share) => QuantityText.Share(share)),
        new("bending_along_nm2_per_m", "Bending stiffness along", plan => plan.Stiffness?.StripAlong.Value.NewtonMeters, Bending, InShares: true),
        new("bending_across_nm2_per_m", "Bending stiffness across", plan => plan.Stiffness?.StripAcross.Value.NewtonMeters, Bending, InShares: true),
        new("modulus_along_pa", "Modulus along", plan => plan.Stiffness?.Along.Value.Pascals, (text, pa) => text.Modulus(Pressure.FromPascals(pa)).Main, InShares: true),
        new("resin_to_mix_kg", "Resin to mix", plan => plan.Resin?.ToMix.Value.Kilograms, Mass, InShares: true),
        new("pots", "Pots", plan => plan.Resin is null ? null : plan.Pots.Length, (_, count) => Numbers.Whole((int)count)),
        new("first_mix_to_full_vacuum_s", "First mix to full vacuum", plan => plan.Clock?.Need.Value.Seconds, Minutes),
        new("left_on_the_clock_s", "Left on the clock", LeftOnTheClock, Minutes),
        new("cure_end_s", "Cure ends after", plan => plan.Cure?.Total.Value.Seconds, (_, s) => QuantityText.Span(Duration.FromSeconds(s))),
        new("hottest_k", "Hottest", plan => plan.Cure?.Peak.Value.Kelvins, (text, k) => text.Temperature(Temperature.FromKelvins(k)).Main),
        new("softens_at_k", "Softens at about", plan => plan.Cure?.Progress?.Transition?.Value.Value.Kelvins, (text, k) => text.Temperature(Temperature.FromKelvins(k)).Main),
    ];

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

    private static double? LeftOnTheClock(Plan plan) => plan.Clock is { FilmLife: { } life } clock ? life.Value.Seconds - clock.Need.Value.Seconds : null;

    private static string Mass(QuantityText text, double kg) => text.About(UnitsNet.Mass.FromKilograms(kg)).Main;

    private static string Bending(QuantityText text, double nm) => Numbers.Significant(nm, 3) + "\u00A0N·m²/m";

    private static string Minutes(QuantityText text, double s) => QuantityText.Minutes(Duration.FromSeconds(s));
}
