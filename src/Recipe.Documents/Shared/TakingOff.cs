using Recipe.Documents.Layout;

namespace Recipe.Documents.Shared;

/// <summary>How the part comes off its mould.</summary>
internal static class TakingOff
{
    /// <summary>The step: out of or off a mould with wedges; off a mandrel along it, with what frees it underneath; and the aid that the recipe names.</summary>
    /// <remarks>Source: common practice. A mandrel that shrinks more than the part is freed by cold; a push on one spot of the end splits it.</remarks>
    public static CellRow Step(BenchContext context, Cell? target = null)
    {
        var what = context.IsLeftOn && !context.IsWrapped ? context.Say("Leave it where it lies: the recipe takes it off nowhere.")
            : !context.IsWrapped ? context.Say("Take the part off the mould. Wedges of plastic or wood.")
            : context.Part.Mould!.StaysInPart ? context.Say("The mandrel stays in the part.")
            : context.Paper.Tube is { Taper: not 0 } ? context.Say("Draw the part off over the thin end.")
            : context.Say("Draw the part straight off the mandrel.");
        var note = context.IsWrapped && !context.Part.Mould!.StaysInPart
            ? context.Say("stuck? chill the mandrel if it shrinks more than the part; push with a ring bearing on the whole end")
            : null;
        return BenchContext.Tick(context.Part.Mould?.PullAid is { } aid && !context.IsLeftOn ? $"{what} {context.Say($"Use the {aid}.")}" : what, target, note);
    }
}
