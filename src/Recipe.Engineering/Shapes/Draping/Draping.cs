using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Lays a woven cloth on a surface.</summary>
/// <remarks>
/// <para>
/// The cloth is a net of two sets of threads that keep their length and turn about their crossings like pins. Two threads run straight
/// over the surface from the start, along the warp and square to it; each further crossing is the point of the surface one step away from
/// its two neighbours. Source: the kinematic (fishnet) model; C. Mack and H. M. Taylor, The fitting of woven cloth to surfaces, Journal of
/// the Textile Institute 47 (1956) T477; R. E. Robertson et al., Fiber rearrangements during the molding of continuous fiber composites,
/// Polymer Composites 2 (1981) 126.
/// </para>
/// <para>
/// Past the rim the surface is continued without curvature, so that cells at the rim are whole and can be cut off: their shear is off by up to
/// about the square of step over radius of curvature. Over a crease the net is as true as its step is short beside the crease's radius.
/// </para>
/// <para>
/// It holds for woven cloth laid from the start outwards. It knows nothing of friction, of the hand that pushes threads aside, or of
/// cloth that bridges a hollow. Cloth of one direction, tape, stitched cloth of one direction and mat do not behave as such a net: use
/// a flattening of least distortion for mats.
/// </para>
/// </remarks>
public static class Draping
{
    /// <summary>Greatest number of steps squared that the surface may have.</summary>
    private const double MostSteps = 500_000;

    /// <summary>Lays a cloth.</summary>
    /// <param name="mesh">The surface. The cloth covers the connected part on which it starts, and runs on a little past its rim.</param>
    /// <param name="start">Where the cloth is laid on first; the nearest point of the surface is taken, m.</param>
    /// <param name="warpDirection">Direction of the warp at the start; its part along the surface is taken. Any length.</param>
    /// <param name="step">Distance between the threads of the net, above 0. A finer net is truer: the error of the shear falls with the step.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above 0 or too fine for the surface (more than 500,000 cells), or the start lies more than a step and more than 1 % of the surface's size from it.</exception>
    /// <exception cref="ArgumentException">The mesh has no area, a coordinate is not a number, or the warp direction is square to the surface.</exception>
    public static DrapeNet Over(TriangleMesh mesh, Point3 start, Point3 warpDirection, Length step) => Over(mesh, start, warpDirection, Angle.Zero, step);

    /// <summary>Lays a cloth whose warp lies at an angle to a direction.</summary>
    /// <param name="mesh">The surface, as above.</param>
    /// <param name="start">Where the cloth is laid on first, as above, m.</param>
    /// <param name="zeroDirection">Which way 0 degrees runs at the start; its part along the surface is taken. Any length.</param>
    /// <param name="warp">Angle of the warp to it, counter-clockwise looking at the side that cloth is laid on.</param>
    /// <param name="step">Distance between the threads of the net, as above.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step or the start is out of its range, as above.</exception>
    /// <exception cref="ArgumentException">The mesh has no area, a coordinate is not a number, or the direction is square to the surface.</exception>
    public static DrapeNet Over(TriangleMesh mesh, Point3 start, Point3 zeroDirection, Angle warp, Length step) =>
        Over(new ClothGround(mesh), start, zeroDirection, warp, step);

    /// <summary>Lays a cloth on a surface that was made ready for several.</summary>
    /// <param name="ground">The surface. The cloth covers the connected part on which it starts, and runs on a little past its rim.</param>
    /// <param name="start">Where the cloth is laid on first, as above, m.</param>
    /// <param name="zeroDirection">Which way 0 degrees runs at the start, as above.</param>
    /// <param name="warp">Angle of the warp to it, as above.</param>
    /// <param name="step">Distance between the threads of the net, as above.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step or the start is out of its range, as above.</exception>
    /// <exception cref="ArgumentException">A coordinate is not a number, or the direction is square to the surface.</exception>
    public static DrapeNet Over(ClothGround ground, Point3 start, Point3 zeroDirection, Angle warp, Length step)
    {
        ArgumentNullException.ThrowIfNull(ground);
        double metres = Guard.Positive(step.Meters, "m", nameof(step));
        if (!start.IsFinite)
        {
            throw new ArgumentException("A coordinate is not a number.", nameof(start));
        }

        return Over(ground, start, zeroDirection, warp.Radians, metres);
    }

    internal static DrapeNet Over(ClothGround ground, Point3 start, Point3 zeroDirection, double warp, double step)
    {
        SurfacePlace place = ground.Tree.Nearest(start);
        double off = (place.Foot - start).Norm;
        if (off > Math.Max(step, 0.01 * Math.Sqrt(ground.Surface.Area)))
        {
            throw Guard.Refuse(off, "m", nameof(start), "must lie on the surface, no farther from it than a step or 1 % of its size: the distance from it may not be that many");
        }

        ClothGround part = ground.PartOf(place.Triangle);
        (MeshTopology surface, TriangleTree tree) = (part.Surface, part.Tree);
        if (surface.Area / (step * step) > MostSteps)
        {
            throw Guard.Refuse(step, "m", nameof(step), "must not be so fine that the surface has more than 500,000 cells: it must be at least " + FormattableString.Invariant($"{Math.Sqrt(surface.Area / MostSteps):G3}"));
        }

        place = tree.Nearest(place.Foot);
        Point3 zero = zeroDirection.Unit();
        zero -= place.Normal * Point3.Dot(zero, place.Normal);
        if (!zeroDirection.IsFinite || zero.Norm < 1e-6)
        {
            throw new ArgumentException("The direction has a part along the surface.", nameof(zeroDirection));
        }

        (double sine, double cosine) = Math.SinCos(warp);
        Point3 along = (zero * cosine) + (Point3.Cross(place.Normal, zero) * sine);

        int most = (int)(4 * surface.Area / (step * step)) + (int)Math.Min(200_000, 40 * Math.Sqrt(surface.Area) / step) + 10_000;
        DrapeGrowth growth = new(surface, tree, step, most);
        growth.Grow(place, along);
        DrapeCells cells = new(growth.Nodes, tree, step);
        return new DrapeNet(surface, growth, cells, new DrapeFlat(surface, cells, step), step);
    }
}
