using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Short questions about cloth and how it lies.</summary>
internal static class PlyFacts
{
    private const double StraightAngle = 180;
    private const double LightestPly = 45;

    /// <summary>The plies, patches too, mould side first.</summary>
    public static IEnumerable<PlyItem> Plies(this Part part) => part.Stack.OfType<PlyItem>();

    /// <summary>The plies that cover the whole surface.</summary>
    public static IEnumerable<PlyItem> FullPlies(this Part part) => part.Plies().Where(CoversAll);

    /// <summary>Whether a line covers the whole surface.</summary>
    public static bool CoversAll(this StackItem item) =>
        item is { SizeLength: null, SizeWidth: null, CoversShare: null, CoversArea: null } and not PlyItem { IsPatch: true };

    /// <summary>Whether a cloth is of a fibre, by the fibre's name or else by its own.</summary>
    public static bool IsOf(this Reinforcement cloth, string fibre) =>
        (cloth.Fibre?.Name ?? cloth.Name).Contains(fibre, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a cloth is woven: not stitched, no mat, no veil, no unidirectional tape.</summary>
    public static bool IsWoven(this Reinforcement cloth) =>
        cloth is { Form: ReinforcementForm.Fabric, FibreAngles: null } && cloth.Weave != "stitched";

    /// <summary>Dry weight in g/m2; 0 when none is given.</summary>
    public static double Grams(this Reinforcement cloth) => (cloth.ArealWeight?.Value.KilogramsPerSquareMeter ?? 0) * 1000;

    /// <summary>
    /// The directions in which the fibres of a ply run, with the weight in each (g/m2, repeats counted); none for a mat, and for a ply
    /// whose direction is not said. Angles are more than -90 and at most 90 degrees.
    /// </summary>
    public static IEnumerable<(double Angle, double Weight)> Directions(this PlyItem ply)
    {
        var weight = ply.Material.Grams() * ply.Count;
        if (ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil
            || ply.Orientation?.Value is not { Kind: not OrientationKind.Random } lies)
        {
            return [];
        }

        if (ply.Material.Form == ReinforcementForm.Unidirectional)
        {
            return [(Turned(lies.First), weight)];
        }

        var warp = ply.Material.WarpShare?.Value ?? 0.5;
        var (one, other) = lies.Kind == OrientationKind.Pair ? (lies.First, lies.Second)
            : ply.Material.FibreAngles?.Value is { Kind: OrientationKind.Pair } strands ? (lies.First + strands.First, lies.First + strands.Second)
            : (lies.First, lies.First + 90);
        return [(Turned(one), weight * warp), (Turned(other), weight * (1 - warp))];
    }

    /// <summary>An angle as a direction without head or tail: more than -90 and at most 90 degrees.</summary>
    public static double Turned(double degrees)
    {
        if (!double.IsFinite(degrees))
        {
            return 0;
        }

        var angle = degrees % StraightAngle;
        return angle > 90 ? angle - StraightAngle : angle <= -90 ? angle + StraightAngle : angle;
    }

    /// <summary>Share of resin by weight that a line is left with, 0 to 1; 0 where it is not known.</summary>
    public static double ResinShare(this StackPlan line) =>
        line is { NetResin.Value.Kilograms: > 0 and var resin, NetMass.Value.Kilograms: var dry } ? resin / (resin + dry) : 0;

    /// <summary>A weight per area in the unit of a figure as it was written.</summary>
    public static string Weight(double grams, string? like)
    {
        var unit = Say.UnitLike(like, "g/m2");
        return $"{Say.Number(unit.FromSi(grams / 1000))} {unit.Symbol}";
    }

    /// <summary>A name that no line of the stack has yet.</summary>
    public static string FreeName(this Part part, string wanted)
    {
        var name = wanted;
        for (var i = 2; part.Stack.Any(s => s.Name == name); i++)
        {
            name = FormattableString.Invariant($"{wanted}-{i}");
        }

        return name;
    }

    /// <summary>The lightest woven glass cloth that still makes a ply of its own, by name where two are as light; null when there is none.</summary>
    public static Reinforcement? LightGlass(this RecipeModel model) => model.Materials.Values
        .OfType<Reinforcement>()
        .Where(m => m.IsWoven() && m.IsOf("glass") && m.PrepregContent is null && m.Grams() >= LightestPly
            && !(m.Width is { } width && width.Value < Length.FromMillimeters(300)))
        .OrderBy(m => m.Grams())
        .ThenBy(m => m.Name, StringComparer.Ordinal)
        .FirstOrDefault();

    /// <summary>Writes another value for a figure that stands in the text of the part itself; null when it stands in another file.</summary>
    public static TextEdit? Rewrite<T>(this Part part, Figure<T>? figure, string text) =>
        figure?.Where is { } where && ReferenceEquals(where.Source, part.Where.Source) ? FigureEdits.Rewrite(figure, text) : null;

    /// <summary>Where a figure of a material stands when that is in the text of the part, else another place.</summary>
    public static Text.SourceSpan Here<T>(this Part part, Figure<T>? figure, Text.SourceSpan otherwise) =>
        figure?.Where is { } where && ReferenceEquals(where.Source, part.Where.Source) ? where : otherwise;
}
