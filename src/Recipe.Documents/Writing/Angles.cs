using Recipe.Model;

namespace Recipe.Documents.Writing;

/// <summary>Ply directions as text and as drawn lines.</summary>
internal static class Angles
{
    /// <summary>As the trade writes them: "0/90°", "±45°", "-30°", "random".</summary>
    public static string Text(Orientation orientation) =>
        orientation.Kind == OrientationKind.Random
            ? "random"
            : orientation.ToString().Replace("+/-", "±", StringComparison.Ordinal) + "°";

    /// <summary>The directions to draw, degrees, positive counter-clockwise; empty when there is none.</summary>
    public static IEnumerable<double> Lines(Orientation orientation) => orientation.Kind switch
    {
        OrientationKind.Random => [],
        OrientationKind.Single => [orientation.First],
        _ => [orientation.First, orientation.Second],
    };

    /// <summary>The same ply in the mirror image of the mould: every angle changes its sign.</summary>
    public static Orientation Mirrored(Orientation orientation) => orientation.Kind switch
    {
        OrientationKind.Single => orientation with { First = Mirror(orientation.First) },
        OrientationKind.Pair => orientation with { First = Mirror(orientation.First), Second = Mirror(orientation.Second) },
        _ => orientation,
    };

    // -90 and 90 are the same direction; the positive one is written.
    private static double Mirror(double angle) => Math.Abs(angle) is 90 or 0 ? angle : -angle;
}
