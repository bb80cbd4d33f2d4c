using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The first layout: the rectangles round the pieces.</summary>
internal static class OutlineBoxes
{
    /// <summary>
    /// On the first long roll, by <see cref="RollNesting"/>. Where what has a length comes first, or a piece fits no long roll, nothing lies yet.
    /// </summary>
    internal static OutlineLayout Lay(OutlineWork work, double gap)
    {
        var layout = new OutlineLayout(work.Items.Count);
        if (work.Rolls.Length == 0 || !double.IsInfinity(work.Rolls[0].Length) || work.Items.Allowed.Exists(poses => !Array.Exists(poses, pose => work.Rolls[0].Holds(pose.Position))))
        {
            return layout;
        }

        ImmutableArray<NestPiece> boxes = [.. work.Items.Allowed.Select(poses => new NestPiece(
            Length.FromMeters(poses[0].Position.Along), Length.FromMeters(poses[0].Position.Across), 1, Quarter(poses) is null ? NestTurn.None : NestTurn.Quarter))];
        foreach (NestPlacement box in RollNesting.Pack(boxes, Length.FromMeters(work.Rolls[0].Width), Length.FromMeters(gap)).Placements)
        {
            int pose = box.IsTurned ? Quarter(work.Items.Allowed[box.Piece])!.Value : 0;
            layout.Place(box.Piece, pose, 0, box.AlongAt.Meters, box.AcrossAt.Meters);
        }

        return layout;
    }

    private static int? Quarter(OutlinePose[] poses)
    {
        int index = Array.FindIndex(poses, pose => pose.Degrees is 90 or 270);
        return index < 0 ? null : index;
    }
}
