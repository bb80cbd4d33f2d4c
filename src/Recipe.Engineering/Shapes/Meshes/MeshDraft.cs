using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How the faces of a mesh lie to the direction in which the part is pulled out.</summary>
/// <param name="Pull">Direction of the pull, length 1.</param>
/// <param name="Smallest">
/// Smallest angle between a face and the pull: 90 degrees for a floor, 0 for a wall along the pull, below 0 for an undercut.
/// </param>
/// <param name="SmallestAt">Middle of the face with the smallest angle, m.</param>
/// <param name="FacingAway">Area of the faces that look away from the pull by more than 0.01 degrees.</param>
/// <param name="Shadowed">
/// Area of the other faces above whose middle, along the pull, lies another face: they cannot be reached or drawn either. None when
/// so many faces lie above one another that it would take too long.
/// </param>
public sealed record MeshDraft(Point3 Pull, Angle Smallest, Point3 SmallestAt, Area FacingAway, Area? Shadowed)
{
    /// <summary>The area that keeps a stiff part in the mould, or hides under what does: the sum of both.</summary>
    public Area Undercut => FacingAway + (Shadowed ?? Area.Zero);
}
