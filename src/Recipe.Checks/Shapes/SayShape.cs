using Recipe.Engineering;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Says what is wrong with the file of a shape.</summary>
internal static class SayShape
{
    /// <summary>Why a file gives no mesh.</summary>
    public static string Of(MeshRefusal refusal)
    {
        var word = refusal.Word is { Length: > 0 } name ? $" ({name})" : "";
        var reason = refusal.Reason switch
        {
            MeshRefusalReason.Empty => "the file is empty",
            MeshRefusalReason.NotAMesh => "it is no STL, OBJ, PLY or 3MF file",
            MeshRefusalReason.Truncated => "it ends before what it announces" + Counts(refusal),
            MeshRefusalReason.Malformed => "a word or figure stands where none belongs" + word,
            MeshRefusalReason.NotSupported => "it holds something that is not read here" + word,
            MeshRefusalReason.NotANumber => "a coordinate is not a number" + word,
            MeshRefusalReason.NoSuchCorner => "a face names a corner that is not there" + word,
            MeshRefusalReason.NoTriangles => "no triangle in it has an area",
            MeshRefusalReason.TooManyTriangles => "it has more triangles than are read" + Counts(refusal),
            MeshRefusalReason.TooMuchInside => "it unpacks to more than is read",
            MeshRefusalReason.UnitNotSaid => "its numbers have no unit",
            MeshRefusalReason.TooLarge => $"it is {Say.Of(Length.FromMeters(refusal.Found ?? 0), otherwise: "m")} from end to end; is the unit right?",
            MeshRefusalReason.TooSmall => $"it is {Say.Of(Length.FromMeters(refusal.Found ?? 0))} from end to end; is the unit right?",
            _ => throw new ArgumentOutOfRangeException(nameof(refusal), refusal.Reason, "No such reason."),
        };
        return refusal switch
        {
            { Line: { } line } => FormattableString.Invariant($"{reason}, line {line}"),
            { Offset: { } offset } => FormattableString.Invariant($"{reason}, byte {offset}"),
            _ => reason,
        };
    }

    private static string Counts(MeshRefusal refusal) =>
        refusal is { Found: { } found, Limit: { } limit } ? FormattableString.Invariant($": {found:F0} against {limit:F0}") : "";
}
