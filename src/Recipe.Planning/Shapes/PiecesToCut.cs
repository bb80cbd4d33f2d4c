using System.Collections.Immutable;
using System.Globalization;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Planners;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>Works out the outlines of the pieces of a plan, with trim, steps, joins, notches and marks.</summary>
public static class PiecesToCut
{
    // A cloth that reaches less of the surface than this is cut as the rectangle round it.
    private const double Enough = 0.98;

    private static readonly Length Fine = Length.FromMillimeters(0.2);
    private static readonly Length FarFromTexts = Length.FromMillimeters(18);
    // A dart is cut as a slit; its edges are lapped on the mould.
    private static readonly Length Slit = Length.FromMillimeters(2);
    private static readonly Length DeepestNotch = Length.FromMillimeters(5);
    private static readonly Length LeastTrimForNotches = Length.FromMillimeters(8);

    /// <summary>Every piece of cloth of one part, in the order of the cut list. Draping a deep surface takes a while.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<PieceToCut> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var pieces = ImmutableArray.CreateBuilder<PieceToCut>();
        foreach (var nest in plan.Nests)
        {
            foreach (var size in nest.Sizes)
            {
                if (size.StackLine is { } line && plan.Stack[line].Item is PlyItem ply)
                {
                    pieces.AddRange(Cut(plan, nest, size, line, ply));
                }
            }
        }

        return pieces.ToImmutable();
    }

    private static IEnumerable<PieceToCut> Cut(Plan plan, NestPlan nest, NestSize size, int line, PlyItem ply)
    {
        var count = size.Count / Math.Max(1, size.Strips);
        foreach (var (outline, origin, trim, uncovered, part) in Whole(plan, size, ply))
        {
            // The roll lies on the table with its right side up. Where that side goes to the mould, the piece is cut as the mould sees it.
            var faceDown = ply.Face == PlyFace.Down;
            var simple = PieceOutlines.Simplified(faceDown ? outline.Mirrored() : outline, Fine);
            var strips = nest.UsableWidth is { } width && size.Turn != NestTurn.Quarter && simple.Across > width.Value.Meters * (1 + 1e-9)
                ? Strips(plan, ply, line, simple, width.Value)
                : [simple];
            for (var i = 0; i < strips.Length; i++)
            {
                var piece = strips[i];
                var place = LabelPlace.In(piece);
                var label = place.At;
                ImmutableArray<PieceNotch> notches = trim >= LeastTrimForNotches && strips.Length == 1 ? PieceOutlines.AxisNotches(piece, label) : [];
                var depth = UnitMath.Min(DeepestNotch, trim / 2);
                yield return new PieceToCut
                {
                    Mark = size.Letter + (part is { } p ? "." + p.ToString(CultureInfo.InvariantCulture) : "") + (strips.Length > 1 ? (i + 1).ToString(CultureInfo.InvariantCulture) : ""),
                    StackLine = line,
                    Ply = ply.Name,
                    Cloth = ply.Material,
                    Outline = notches.IsEmpty ? piece : PieceOutlines.WithNotches(piece, notches, depth),
                    Origin = origin,
                    Count = count,
                    MirrorImages = size.Mirrored ? count / 2 : 0,
                    Turn = size.Turn,
                    Notches = notches,
                    Warp = ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil ? null : Beside(PieceOutlines.WarpArrow(piece, Angle.Zero), place),
                    Label = label,
                    Uncovered = uncovered,
                    MouldSideUp = faceDown,
                };
            }
        }
    }

    // The arrow lies beside the texts and not under them, and is shorter for it, since the piece is narrower there.
    private static (Point2 Tail, Point2 Head) Beside((Point2 Tail, Point2 Head) arrow, LabelPlace label)
    {
        const double shorter = 0.35;
        var (middle, half) = ((arrow.Tail + arrow.Head) * 0.5, (arrow.Head - arrow.Tail) * shorter);
        var aside = new Point2(middle.X, middle.Y - Math.Min(FarFromTexts.Meters, label.Clearance.Meters * 0.4));
        return (aside - half, aside + half);
    }

    private static ImmutableArray<Outline> Strips(Plan plan, PlyItem ply, int line, Outline outline, Length width)
    {
        var usual = ply.Overlap?.Value ?? Defaults.Overlap.Value;
        var overlap = PieceCutter.IsButted(ply, plan.Part) ? Length.Zero : usual;
        if (overlap >= width)
        {
            return [outline];
        }

        // Twice a lap unless the part says otherwise, and edges that butt too: the joins of two plies never lie over each other.
        var stagger = plan.Part.Stagger?.Value ?? usual * 2;
        return [.. OutlineStrips.Cut(outline, width, overlap, stagger, line).Strips.Select(strip => strip.Outline)];
    }

    private static IEnumerable<Found> Whole(Plan plan, NestSize size, PlyItem ply)
    {
        var own = size.Angle;
        var rectangle = new Found(PieceOutlines.Patch(size.Length, size.Width, Length.Zero).Turned(-own), OutlineOrigin.Exact, Length.Zero, 0, null);
        if (size.Corner > Length.Zero)
        {
            return [rectangle with { Outline = PieceOutlines.Cross(size.Length, size.Width, size.Corner).Turned(-own) }];
        }

        if (ply.SizeLength is not null || plan.Geometry is not { } geometry || geometry.Shape is GivenAreaShape || (plan.Shape is null && geometry.Shape is not DiscShape))
        {
            return [ply.SizeLength is null && plan.Geometry?.Shape is null or GivenAreaShape ? rectangle with { Origin = OutlineOrigin.Surrounded } : rectangle];
        }

        var isWhole = ply.CoversArea is null && ply.CoversShare is null && ply.Step is null;
        var trim = isWhole ? ply.Trim?.Value ?? Defaults.Trim.Value : Length.Zero;
        if (geometry.Shape is DiscShape)
        {
            return [new(PieceOutlines.Patch(size.Length, size.Length, size.Length / 2), OutlineOrigin.Exact, trim, 0, null)];
        }

        var net = Net(plan, size, ply, geometry.Area.SquareMeters);
        if (net.IsDefaultOrEmpty)
        {
            return [rectangle with { Origin = OutlineOrigin.Surrounded }];
        }

        return [.. net.SelectMany(found => Sized(found, ply, geometry, size, trim))];
    }

    // The outline of the whole surface, without trim.
    private static ImmutableArray<Found> Net(Plan plan, NestSize size, PlyItem ply, double area)
    {
        var shape = plan.Shape!;
        var isLoose = ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil || ply.Orientation?.Value.Kind == OrientationKind.Random;
        if (!isLoose && shape.Drape(size.Angle) is { Flat: { } flat, FlatFollowsRim: true } net && net.CoveredArea.SquareMeters >= Enough * area)
        {
            var darts = ply.CutsDarts ? net.Darts(shape.Cloths.FirstOrDefault(cloth => cloth.Cloth == ply.Material)?.Locking.Value ?? Defaults.LockingAngle.Value).Darts : [];
            return [new(flat, OutlineOrigin.Draped, Length.Zero, Math.Max(0, 1 - (net.CoveredArea.SquareMeters / area)), null) { Darts = darts }];
        }

        if (isLoose && shape.Model?.Pattern is { FoldOvers: 0 } pattern)
        {
            var several = pattern.Outlines.Length > 1;
            return [.. pattern.Outlines.Select((outline, i) => new Found(outline, OutlineOrigin.Flattened, Length.Zero, 0, several ? i + 1 : null))];
        }

        return [];
    }

    private static IEnumerable<Found> Sized(Found net, PlyItem ply, GeometryPlan geometry, NestSize size, Length trim)
    {
        var outline = net.Outline;
        if (ply.CoversArea is not null || ply.CoversShare is not null)
        {
            var share = ply.CoversShare?.Value ?? (ply.CoversArea!.Value / geometry.Area);
            var scale = Math.Sqrt(Math.Clamp(share, 1e-6, 1));
            outline = new Outline([.. outline.Points.Select(point => point * scale)]);
        }

        if (ply.Step is null)
        {
            var whole = trim > Length.Zero ? PieceOutlines.WithTrim(outline, trim) : outline;
            return [net with { Outline = net.Darts.IsDefaultOrEmpty ? whole : net.Darts.Aggregate(whole, (piece, dart) => PieceOutlines.WithDart(piece, dart.Mouth, dart.Tip, Slit)), Trim = trim }];
        }

        // How far inside it ends follows from its size: steps of several lines add up.
        var inside = (geometry.DevelopedLength - size.Length) / 2;
        return inside <= Length.Zero ? [net] : PieceOutlines.SteppedIn(outline, inside).Select(stepped => net with { Outline = stepped });
    }

    private readonly record struct Found(Outline Outline, OutlineOrigin Origin, Length Trim, double Uncovered, int? Part)
    {
        public ImmutableArray<Dart> Darts { get; init; }
    }
}
