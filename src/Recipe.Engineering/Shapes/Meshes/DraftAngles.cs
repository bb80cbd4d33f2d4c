using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Angles of faces to a pull, and what hides what.</summary>
internal static class DraftAngles
{
    /// <summary>Faces turned away by less are walls along the pull, rad: 0.01 degrees.</summary>
    private const double Upright = 1e-2 * Math.PI / 180;

    /// <summary>Triangles smaller than this share of the area say nothing of draft: their normals are rounding.</summary>
    private const double LeastShare = 1e-10;

    internal static MeshDraft Of(MeshFaces faces, Point3 pull)
    {
        (double smallest, int at, double away) = (double.PositiveInfinity, 0, 0);
        bool[] looksUp = new bool[faces.Count];
        for (int i = 0; i < faces.Count; i++)
        {
            if (faces.Areas[i] <= LeastShare * faces.Area)
            {
                continue;
            }

            double angle = Math.Asin(Math.Clamp(Point3.Dot(faces.Normals[i], pull), -1, 1));
            (smallest, at) = angle < smallest ? (angle, i) : (smallest, at);
            if (angle < -Upright)
            {
                away += faces.Areas[i];
            }
            else
            {
                looksUp[i] = angle > Upright;
            }
        }

        double? shadowed = Shadows.Area(faces, pull, looksUp);
        return new MeshDraft(
            pull,
            Angle.FromRadians(smallest),
            faces.Middle(at),
            Area.FromSquareMeters(away),
            shadowed is { } area ? Area.FromSquareMeters(area) : null);
    }
}
