using Recipe.Model;

namespace Recipe.Checks;

/// <summary>Where traces of release are still on the face that a line of the finish works on.</summary>
internal static class ReleaseTraces
{
    /// <summary>
    /// The first line that sands, fills or covers a face before anything has washed it; null when the face is clean, when it cannot have
    /// been on the release, or when the part has a peel ply and the line may mean that face.
    /// </summary>
    public static FinishStep? FirstOn(Part part)
    {
        if (part.Mould is not { IsMandrel: false, StaysInPart: false } mould
            || !part.IsWetted()
            || !mould.Release.Any(r => r.Agent.Kind is ReleaseKind.Wax or ReleaseKind.LiquidFilm))
        {
            return null;
        }

        var before = part.Finish.TakeWhile(f => !f.Washes()).ToList();
        var works = before.FirstOrDefault(FinishWords.WorksTheFace);
        var maySpareTheFace = part.Bag?.Layers.Any(l => l.Class == LayerClass.PeelPly) == true;
        return works is null || (maySpareTheFace && !TradeWords.Says(works.Words(), "mould side", "mould face", "mold side", "outer", "outside", "gel coat", "show")) ? null : works;
    }

    /// <summary>What was on the mould, in words.</summary>
    public static string Of(Part part) => part.Mould!.Release.Last(r => r.Agent.Kind is ReleaseKind.Wax or ReleaseKind.LiquidFilm).Agent.Name;
}
