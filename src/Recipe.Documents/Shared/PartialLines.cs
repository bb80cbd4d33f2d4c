using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Documents.Shared;

/// <summary>What is said beside a stiffness of the lines that it leaves out: whoever makes a small core thicker waits for a figure that never moves.</summary>
internal static class PartialLines
{
    /// <summary>The sentence; null when nothing is left out.</summary>
    public static string? Say(ImmutableArray<string> lines) => lines.IsDefaultOrEmpty
        ? null
        : $"No stiffness here counts {string.Join(", ", lines)}: {(lines.Length == 1 ? "it covers" : "they cover")} only part of the surface.";

    /// <summary>Whether a figure is a stiffness, or rests on one.</summary>
    public static bool IsStiffness(PartFigure figure) =>
        figure is PartFigure.BendingAlong or PartFigure.BendingAcross or PartFigure.ModulusAlong or PartFigure.ModulusAcross or PartFigure.TimesOver;
}
