using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Makes plies of a laminate from cloth, fibre and resin: thickness by <see cref="FibreContent"/>, constants by
/// <see cref="Micromechanics"/>. Angles run counter-clockwise looking at the tool face.
/// </summary>
public static class Plies
{
    /// <summary>A cloth with all its fibre in one direction.</summary>
    /// <param name="cloth">The cloth and its resin.</param>
    /// <param name="angle">Direction of the fibre; at most 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static LaminatePly Unidirectional(WetCloth cloth, Angle angle)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return new LaminatePly([new Layer(Straight(cloth), Thickness(cloth), angle, cloth.Limits)], Mass(cloth));
    }

    /// <summary>
    /// A woven cloth as straight yarns: five layers, weft, warp, weft, warp, weft, symmetric about the ply's middle. Their heights are
    /// such that stretching and bending stiffness are both those of yarns spread evenly through the ply: no false coupling of
    /// stretch and bend, and no false preference for the yarn that happens to lie outermost.
    /// </summary>
    /// <param name="cloth">The cloth and its resin.</param>
    /// <param name="warpShare">Share of the dry weight in the warp; 1 % to 99 %; 50 % for a balanced cloth.</param>
    /// <param name="warp">Direction of the warp; at most 360 degrees either way. The weft lies across it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    /// <remarks>
    /// Source: cross-ply of straight yarns (common practice). Crimp makes the real cloth softer, by up to some 15 %, and a satin's
    /// two faces differ, which this does not show. Heights, as fractions s of the half thickness: warp from s1 to s2 with
    /// <c>s2 - s1 = w</c> (same area) and <c>s2^3 - s1^3 = w</c> (same second moment), so <c>s1 = (sqrt(12 - 3 w^2) - 3 w)/6</c>.
    /// </remarks>
    public static LaminatePly Woven(WetCloth cloth, Ratio warpShare, Angle warp)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Woven(Straight(cloth), Thickness(cloth), warpShare, warp, Mass(cloth), cloth.Limits);
    }

    /// <summary>A woven cloth whose straight yarns have constants of their own, measured or from a table.</summary>
    /// <param name="yarns">Constants of a layer of parallel yarns at the cloth's fibre volume.</param>
    /// <param name="thickness">Cured thickness of the whole cloth; 1e-12 m to 10 m.</param>
    /// <param name="warpShare">Share of the dry weight in the warp; 1 % to 99 %.</param>
    /// <param name="warp">Direction of the warp; at most 360 degrees either way.</param>
    /// <param name="mass">Cured mass per area; zero when mass is not asked.</param>
    /// <param name="limits">Strain limits of the yarns, or null when there are none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    /// <remarks>Layers and source as for the woven cloth made from fibre and resin.</remarks>
    public static LaminatePly Woven(
        Lamina yarns, Length thickness, Ratio warpShare, Angle warp, AreaDensity mass = default, StrainLimits? limits = null)
    {
        double w = Guard.Between(warpShare.DecimalFractions, 0.01, 0.99, string.Empty, nameof(warpShare));
        double h = LaminateGuard.Thickness(thickness, nameof(thickness));
        double inner = (Math.Sqrt(12 - (3 * w * w)) - (3 * w)) / 6;
        Layer middle = new(yarns, Length.FromMeters(h * inner), Across(warp), limits);
        Layer lengthwise = new(yarns, Length.FromMeters(h * w / 2), warp, limits);
        Layer outer = new(yarns, Length.FromMeters(h * (1 - w - inner) / 2), Across(warp), limits);
        return new LaminatePly([outer, lengthwise, middle, lengthwise, outer], mass, interlaced: true);
    }

    /// <summary>A stitched cloth: layers of straight parallel fibres on each other, as they lie from the mould outwards.</summary>
    /// <param name="cloth">The cloth and its resin.</param>
    /// <param name="directions">The layers; at least one; their shares make 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the shares do not make 1.</exception>
    /// <remarks>The order is real, and so is the twist that a single stitched ply shows; turned over, the cloth has the other order.</remarks>
    public static LaminatePly Stitched(WetCloth cloth, IReadOnlyList<FibreDirection> directions)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(directions);
        double sum = 0;
        foreach (FibreDirection direction in directions)
        {
            sum += Guard.Between(direction.Share.DecimalFractions, 1e-4, 1, string.Empty, nameof(directions));
        }

        Guard.Between(sum, 1 - 1e-6, 1 + 1e-6, string.Empty, nameof(directions));
        double h = Thickness(cloth).Meters;
        Lamina lamina = Straight(cloth);
        return new LaminatePly(
            [.. directions.Select(direction => new Layer(
                lamina, Length.FromMeters(h * direction.Share.DecimalFractions / sum), direction.Angle, cloth.Limits))],
            Mass(cloth));
    }

    /// <summary>A mat or veil of fibres in all directions, alike in all directions of the plane.</summary>
    /// <param name="mat">The mat and its resin; limits, where given, hold along any direction.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    /// <remarks>Source: <see cref="Micromechanics.RandomInPlane"/>; the fibres are taken as long and straight, which flatters a chopped mat.</remarks>
    public static LaminatePly RandomMat(WetCloth mat)
    {
        ArgumentNullException.ThrowIfNull(mat);
        return new LaminatePly(
            [new Layer(Micromechanics.RandomInPlane(Straight(mat)), Thickness(mat), Angle.Zero, mat.Limits)], Mass(mat));
    }

    /// <summary>A core, gel coat, film of glue or other layer without fibre of its own.</summary>
    /// <param name="material">Its constants: <see cref="Lamina.Isotropic"/> for foam and resin, or as given for a core with a grain.</param>
    /// <param name="thickness">Thickness; 1e-12 m to 10 m.</param>
    /// <param name="density">Density; 0.1 to 30 000 kg/m3.</param>
    /// <param name="angle">Direction of the grain; at most 360 degrees either way.</param>
    /// <param name="resinTaken">Resin that its faces, cuts and holes take; zero or more; declared, never assumed.</param>
    /// <param name="limits">Strain limits, or null when there are none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    /// <remarks>
    /// Lamination theory knows no shear across the thickness, which in a soft core may give most of the deflection of a short
    /// span: see <see cref="StripBending"/>.
    /// </remarks>
    public static LaminatePly Core(
        Lamina material,
        Length thickness,
        Density density,
        Angle angle = default,
        AreaDensity resinTaken = default,
        StrainLimits? limits = null)
    {
        double rho = LaminateGuard.Density(density, nameof(density));
        double h = LaminateGuard.Thickness(thickness, nameof(thickness));
        double taken = Guard.Between(resinTaken.KilogramsPerSquareMeter, 0, 1e4, "kg/m2", nameof(resinTaken));
        return new LaminatePly(
            [new Layer(material, thickness, angle, limits)], AreaDensity.FromKilogramsPerSquareMeter((rho * h) + taken));
    }

    private static Angle Across(Angle warp) => Angle.FromDegrees(warp.Degrees + (warp.Degrees > 0 ? -90 : 90));

    private static Lamina Straight(WetCloth cloth) =>
        Micromechanics.Unidirectional(cloth.Fibre, cloth.Resin, cloth.FibreVolumeFraction);

    private static Length Thickness(WetCloth cloth)
    {
        Micromechanics.Packed(cloth.FibreVolumeFraction, nameof(cloth.FibreVolumeFraction));
        Check(cloth);
        return FibreContent.PlyThickness(cloth.Cloth, cloth.Fibre.Density, cloth.FibreVolumeFraction);
    }

    private static AreaDensity Mass(WetCloth cloth)
    {
        Check(cloth);
        return cloth.Cloth + FibreContent.ResinPerAreaAtVolumeFraction(
            cloth.Cloth, cloth.FibreVolumeFraction, cloth.Fibre.Density, cloth.Resin.Density);
    }

    private static void Check(WetCloth cloth)
    {
        Guard.Between(cloth.Cloth.KilogramsPerSquareMeter, 1e-6, 1e4, "kg/m2", nameof(cloth.Cloth));
        LaminateGuard.Density(cloth.Fibre.Density, nameof(cloth.Fibre));
        LaminateGuard.Density(cloth.Resin.Density, nameof(cloth.Resin));
    }
}
