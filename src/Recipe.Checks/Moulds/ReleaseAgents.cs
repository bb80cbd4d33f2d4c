using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Checks;

/// <summary>Release agents that a fix can offer, and what goes on each face of a mould.</summary>
internal static class ReleaseAgents
{
    /// <summary>The lines of the release, for a check that misses or counts one: the mould's where it has no release block.</summary>
    public static LinesRead? ReleaseLines(this Part part) =>
        part.Mould is { } mould ? new LinesRead(mould.ReleaseWhere ?? mould.Where, AllOfTheLine: mould.ReleaseWhere is not null) : null;

    /// <summary>The lines of the mould itself, for a check that misses one.</summary>
    public static LinesRead? MouldLines(this Part part) => part.Mould is { } mould ? new LinesRead(mould.Where, AllOfTheLine: true) : null;

    /// <summary>The faces of a mould with what goes on each: one, or two where a line goes on one half only.</summary>
    public static IEnumerable<MouldFace> Faces(this Mould mould) => mould.Halves.IsEmpty || mould.Release.All(r => r.On is null)
        ? [new MouldFace(mould.Name, mould.Release)]
        : mould.Halves.Select(half => new MouldFace($"{half} of {mould.Name}", [.. mould.Release.Where(r => r.On is null || r.On == half)]));

    /// <summary>The half that a line goes on, as words behind another line that goes there too.</summary>
    public static string OnTheSame(this ReleaseCoat coat) => coat.On is { } half ? $" on {half}" : "";

    /// <summary>The agent of a kind that comes first by name and holds no silicone; null when there is none in scope.</summary>
    public static ReleaseAgent? First(RecipeModel model, ReleaseKind kind) => model.Materials.Values
        .OfType<ReleaseAgent>()
        .Where(a => a.Kind == kind && a.HoldsSilicone != true)
        .MinBy(a => a.Name, StringComparer.Ordinal);
}

/// <summary>A face of a mould.</summary>
/// <param name="Name">What a message calls it: the mould, or a half of it.</param>
/// <param name="Release">The lines of the release that go on it, in order.</param>
internal sealed record MouldFace(string Name, ImmutableArray<ReleaseCoat> Release);
