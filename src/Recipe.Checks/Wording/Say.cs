using System.Globalization;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Quantities in words, for messages: in the author's unit where there is one to follow, else in the trade's usual unit.</summary>
internal static class Say
{
    private const double HoursOfADay = 24;

    /// <summary>A number with at most four significant digits: enough to tell two compared numbers apart, and to read at a bench.</summary>
    public static string Number(double value) => Number(value, 4);

    private static string Number(double value, int significant)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value.ToString(CultureInfo.InvariantCulture);
        }

        var digits = Math.Clamp(significant - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        return Math.Round(value, digits, MidpointRounding.AwayFromZero).ToString("0.#########", CultureInfo.InvariantCulture);
    }

    /// <summary>A share of 0 to 1 as a percentage.</summary>
    public static string Percent(double share) => Number(share * 100) + " %";

    /// <summary>"24.97 inHg", in the unit of a figure as it was written, or else in mbar.</summary>
    public static string Of(Pressure pressure, string? like = null, string otherwise = "mbar") => In(pressure.Pascals, like, otherwise);

    /// <summary>"153 g".</summary>
    public static string Of(Mass mass, string? like = null) => In(mass.Kilograms, like, mass.Kilograms >= 1 ? "kg" : "g");

    /// <summary>"77 g": a mass worked out from many figures, which nobody knows to four digits.</summary>
    public static string About(Mass mass, string? like = null) => In(mass.Kilograms, like, mass.Kilograms >= 1 ? "kg" : "g", 3);

    /// <summary>"229.2 g": a mass that is weighed, as the scale of the shop shows it and the papers print it; in tenths of a gram where no scale is known.</summary>
    public static string Weighed(Mass mass, Shop? shop)
    {
        var scale = ScaleSteps.Of(shop);
        return $"{scale.Shown(mass).ToString(CultureInfo.InvariantCulture)} {scale.Unit}";
    }

    /// <summary>"480 mm": a length worked out from figures that nobody knows to four digits.</summary>
    public static string About(Length length, string? like = null) => In(length.Meters, like, "mm", 2);

    /// <summary>"1270 mm".</summary>
    public static string Of(Length length, string? like = null, string otherwise = "mm") => In(length.Meters, like, otherwise);

    /// <summary>"0.12 m2".</summary>
    public static string Of(Area area, string? like = null) => In(area.SquareMeters, like, "m2");

    /// <summary>"60 degC".</summary>
    public static string Of(Temperature temperature, string? like = null) => In(temperature.Kelvins, like, "degC");

    /// <summary>"15 degC", "27 degF": how far two temperatures lie apart, in whole degrees of the scale that a temperature was written in.</summary>
    public static string Apart(double kelvins, string? like) =>
        UnitLike(like, "degC").Symbol == "degF" ? Number(Math.Round(kelvins * 1.8)) + " degF" : Number(Math.Round(kelvins)) + " degC";

    /// <summary>"95.5 min", "2 h 35 min", "7 d".</summary>
    public static string Of(Duration duration)
    {
        var minutes = duration.Minutes;
        if (minutes < 1)
        {
            return Number(duration.Seconds) + " s";
        }

        if (minutes < 120)
        {
            return Number(Math.Round(minutes, 1)) + " min";
        }

        if (duration.Hours >= 3 * HoursOfADay && Math.Abs(duration.Hours % HoursOfADay) < 0.05)
        {
            return Number(Math.Round(duration.Hours / HoursOfADay)) + " d";
        }

        var whole = (long)Math.Round(minutes);
        return whole % 60 == 0
            ? FormattableString.Invariant($"{whole / 60} h")
            : FormattableString.Invariant($"{whole / 60} h {whole % 60} min");
    }

    /// <summary>As it was written.</summary>
    public static string Of<T>(Figure<T> figure) => figure.Written;

    /// <summary>"peel-ply", "release-film": the word of the language.</summary>
    public static string Of(LayerClass layer) => layer switch
    {
        LayerClass.PeelPly => "peel-ply",
        LayerClass.ReleaseFilm => "release-film",
        LayerClass.Bleeder => "bleeder",
        LayerClass.Breather => "breather",
        LayerClass.BagFilm => "bag-film",
        LayerClass.FlowMedium => "flow-medium",
        _ => "caul",
    };

    /// <summary>"hand-laid", "bagged": a process as a word about a part.</summary>
    public static string Of(Process process) => process switch
    {
        Process.Hand => "hand-laid",
        Process.Bagged => "bagged",
        Process.Infused => "infused",
        _ => "of prepreg",
    };

    /// <summary>"an infused part": a part made by a process.</summary>
    public static string APart(Process process) => process switch
    {
        Process.Hand => "a hand-laid part",
        Process.Bagged => "a bagged part",
        Process.Infused => "an infused part",
        _ => "a prepreg part",
    };

    /// <summary>"structural": the word of the language.</summary>
    public static string Of(PartUse use) => use switch
    {
        PartUse.Cosmetic => "cosmetic",
        PartUse.Structural => "structural",
        _ => "flying",
    };

    /// <summary>Words of the author in quotes, cut where they are long.</summary>
    public static string Quoted(string words)
    {
        const int longest = 60;
        var plain = string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace('"', '\'').TrimEnd('.');
        return plain.Length <= longest ? $"\"{plain}\"" : $"\"{plain[..longest].TrimEnd()} ...\"";
    }

    /// <summary>A date as ISO 8601.</summary>
    public static string Of(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>"; likewise 2 more" when a message names only the worst of several.</summary>
    public static string More(int others) => others > 0 ? FormattableString.Invariant($"; likewise {others} more") : "";

    /// <summary>The unit that a figure was written in when it measures the same kind of thing, else the usual one.</summary>
    public static Unit UnitLike(string? written, string otherwise) => WrittenUnit.Like(written, UnitTable.Get(otherwise));

    private static string In(double si, string? like, string otherwise, int significant = 4)
    {
        var unit = UnitLike(like, otherwise);
        return $"{Number(unit.FromSi(si), significant)} {unit.Symbol}";
    }
}
