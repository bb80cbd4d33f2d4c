using System.Collections.Immutable;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Engineering;

namespace Recipe.Documents.Shapes;

/// <summary>Says what was mended in a mesh, and what was seen and left as it was.</summary>
internal static class Mended
{
    /// <summary>A sentence for each; none for what every file of its kind has.</summary>
    /// <param name="say">The language.</param>
    /// <param name="repairs">What was done and seen.</param>
    public static ImmutableArray<Phrase> Of(Wording say, ImmutableArray<MeshRepair> repairs) =>
        [.. repairs.Select(repair => Sentence(say, repair.Kind, Numbers.Whole(repair.Count))).OfType<string>().Select(sentence => (Phrase)sentence)];

    private static string? Sentence(Wording say, MeshRepairKind kind, string count) => kind switch
    {
        MeshRepairKind.PointsWelded => say.Say($"Mended: {count} points on open edges were put together, within the rounding of the file."),
        MeshRepairKind.GapsClosed => say.Say($"Mended: {count} points were put together across small gaps."),
        MeshRepairKind.ZeroAreaDropped => say.Say($"Mended: {count} triangles without area were left out."),
        MeshRepairKind.DuplicatesDropped => say.Say($"Mended: {count} triangles that stood twice were left out once."),
        MeshRepairKind.TrianglesTurned => say.Say($"Mended: {count} triangles were turned to face as their neighbours do. Look whether cloth lies on the right side."),
        MeshRepairKind.TrailingBytesIgnored => say.Say($"{count} bytes behind the last triangle were not read."),
        MeshRepairKind.NonManifoldEdgesLeft => say.Say($"Not mended: at {count} edges more than two triangles meet. Areas there are counted more than once."),
        MeshRepairKind.OpposedEdgesLeft => say.Say($"Not mended: at {count} edges the sides of the surface change."),
        _ => null,
    };
}
