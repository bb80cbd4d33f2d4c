using Recipe.Documents.Layout;

namespace Recipe.Documents.Shapes;

/// <summary>Bands of shear as a drawing shows them: the darker the nearer to the angle at which the cloth wrinkles, crossed beyond it.</summary>
internal static class ShearBands
{
    /// <summary>The band of a shear.</summary>
    /// <param name="shear">Shear, degrees, either sense.</param>
    /// <param name="locking">Angle at which the cloth begins to wrinkle, degrees.</param>
    public static Fill Of(double shear, double locking) => (Math.Abs(shear) / locking) switch
    {
        < 1.0 / 3 => Fill.White,
        < 2.0 / 3 => Fill.Pale,
        < 1 => Fill.Mid,
        _ => Fill.CrossHatched,
    };
}
