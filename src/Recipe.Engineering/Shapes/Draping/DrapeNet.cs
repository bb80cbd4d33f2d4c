using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A woven cloth laid on a surface as a net of threads: see <see cref="Draping"/>.</summary>
public sealed class DrapeNet
{
    private readonly DrapeCells _cells;

    internal DrapeNet(MeshTopology surface, DrapeGrowth growth, DrapeCells cells, DrapeFlat flat, double step)
    {
        (Surface, Step, _cells) = (surface, Length.FromMeters(step), cells);
        Nodes =
        [
            .. Enumerable.Range(0, growth.Nodes.Count)
                .Select(index => growth.Nodes[index])
                .OrderBy(node => node.I).ThenBy(node => node.J)
                .Select(node => new DrapeNode(node.I, node.J, node.Place, node.Kind == DrapeNodeKind.OnSurface)),
        ];
        Cells = cells.Cells;
        Gaps = [.. growth.Gaps];
        (Flat, FlatHoles, FlatFollowsRim) = (flat.Outer, flat.Holes, flat.FollowsRim);
        double covered = Cells.Sum(cell => cell.SquareMetres);
        CoveredArea = Area.FromSquareMeters(covered);
        SurfaceArea = Area.FromSquareMeters(surface.Area);
        var judged = Cells.Where(cell => cell.IsWhole).DefaultIfEmpty(Cells.IsEmpty ? default : Cells.MinBy(cell => Math.Abs(cell.Shear)));
        GreatestShear = Angle.FromRadians(judged.Max(cell => Math.Abs(cell.Shear)));
    }

    /// <summary>Distance between its threads.</summary>
    public Length Step { get; }

    /// <summary>The crossings by rising I, then J, those past the rim included.</summary>
    public ImmutableArray<DrapeNode> Nodes { get; }

    /// <summary>The cells that lie on the surface in whole or in part, by rising I, then J.</summary>
    public ImmutableArray<DrapeCell> Cells { get; }

    /// <summary>The crossings that were not found: there the cloth wrinkles or gapes, or the surface is too sharp for the step.</summary>
    public ImmutableArray<DrapeGap> Gaps { get; }

    /// <summary>Rim of the covered region in the cloth's plane, X along the warp, origin at the start; null when there is no cell.</summary>
    public Outline? Flat { get; }

    /// <summary>Holes of the surface in the cloth's plane.</summary>
    public ImmutableArray<Outline> FlatHoles { get; }

    /// <summary>Whether <see cref="Flat"/> is the rim of the surface; otherwise the cloth does not reach all of it, or meets itself, and it is drawn in steps round whole cells.</summary>
    public bool FlatFollowsRim { get; }

    /// <summary>Area of the surface that the net covers. Cells at the rim are counted to about a thirtieth of a cell; where threads close and cloth laps itself, up to a few hundredths too much.</summary>
    public Area CoveredArea { get; }

    /// <summary>Area of the connected part of the surface on which the cloth starts.</summary>
    public Area SurfaceArea { get; }

    /// <summary>Greatest angle by which the threads of a cell that lies wholly on the surface leave the right angle; 0 to 90 degrees.</summary>
    public Angle GreatestShear { get; }

    internal MeshTopology Surface { get; }

    /// <summary>The part of the cloth that shears more than an angle.</summary>
    /// <param name="locking">Locking angle of the cloth, from its data sheet or a trial; 0 to 90 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not from 0 to 90 degrees.</exception>
    public ShearShare ShearBeyond(Angle locking)
    {
        double limit = Guard.Between(locking.Degrees, 0, 90, "degrees", nameof(locking)) * Math.PI / 180;
        ImmutableArray<DrapeCell> beyond = [.. Cells.Where(cell => Math.Abs(cell.Shear) > limit)];
        double covered = CoveredArea.SquareMeters;
        return new ShearShare(Ratio.FromDecimalFractions(covered > 0 ? Math.Min(1, beyond.Sum(cell => cell.SquareMetres) / covered) : 0), beyond);
    }

    /// <summary>Darts that open the cloth where it locks: see <see cref="DartAdvice"/>.</summary>
    /// <param name="locking">Locking angle of the cloth, from its data sheet or a trial; 0 to 90 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not from 0 to 90 degrees.</exception>
    public DartAdvice Darts(Angle locking) => DartSearch.Search(this, Guard.Between(locking.Degrees, 0, 90, "degrees", nameof(locking)) * Math.PI / 180);

    /// <summary>Where a point of the cloth lies on the surface, or on its continuation past the rim; null where there is no cell.</summary>
    /// <param name="flat">Point in the cloth's plane, m.</param>
    public Point3? PlaceOf(Point2 flat) => _cells.Place(flat * (1 / Step.Meters));

    /// <summary>Where a point of the surface lies in the cloth's plane, m; null when no cell lies within half a step.</summary>
    /// <param name="place">Point on the surface, m.</param>
    public Point2? FlatOf(Point3 place) => _cells.Flat(place, near: null) is { } flat ? flat * Step.Meters : null;
}
