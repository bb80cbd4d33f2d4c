using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Figures of a resin's sheet as they stand in the recipe.</summary>
internal static class SheetFigures
{
    /// <summary>Where a figure of the resin stands when that is in the file of the part, else where the part names the resin.</summary>
    public static SourceSpan FigureWhere<T>(this Part part, Figure<T>? figure) => part.Here(figure, part.ResinWhere ?? part.Where);

    /// <summary>The place where the part names the resin, as a second place of a story.</summary>
    public static IEnumerable<FindingLabel> ResinNamed(this Part part) =>
        part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [];

    /// <summary>A time as written with its first unit exchanged; null when it is not written in that unit.</summary>
    public static string? Exchanged(string written, string from, string to)
    {
        var words = written.Split(' ');
        if (words.Length < 2 || words[1] != from)
        {
            return null;
        }

        words[1] = to;
        return string.Join(' ', words);
    }

    /// <summary>Parts by weight of hardener to a hundred of resin; by volume where the ratio is one of volumes.</summary>
    public static double PerHundred(this MixRatio mix) => mix.Resin > 0 ? 100 * mix.Hardener / mix.Resin : 0;

    /// <summary>A mix ratio as it is written.</summary>
    public static string Words(this MixRatio mix) =>
        $"{Say.Number(mix.Resin)}:{Say.Number(mix.Hardener)}{mix.Basis switch { MixBasis.Weight => " by weight", MixBasis.Volume => " by volume", _ => "" }}";
}
