using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>What the checks of pots and clocks share: where a pot stands in the recipe, and how a line of the wet-out is set.</summary>
internal static class WetOutWords
{
    /// <summary>More pairs of hands than this get into each other's way over one mould.</summary>
    public const int MostHands = 6;

    /// <summary>Where the recipe plans a pot: its own line, else the wet-out, else the resin.</summary>
    public static SourceSpan PotWhere(Part part, int number) =>
        part.WetOut is { } wetOut && number >= 1 && number <= wetOut.PotMasses.Length && wetOut.PotMasses[number - 1].Where is { } own
            ? own
            : part.WetOut?.Pots?.Where ?? part.WetOut?.Where ?? part.ResinWhere ?? part.Where;

    /// <summary>Sets a line of the wet-out: rewrites the figure, or adds the line, or the block.</summary>
    public static TextEdit? Set<T>(Part part, string word, Figure<T>? now, string text) =>
        now is { Basis: Basis.Stated } ? FigureEdits.Rewrite(now, text)
        : part.WetOut is { } wetOut ? Edits.Last(wetOut.Where, $"{word} {text}")
        : Edits.Last(part.Where, "wet-out {", $"  {word} {text}", "}");
}
