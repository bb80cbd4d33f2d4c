using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// One line of a stack, cured: the layers it brings, from the mould outwards, and its mass. <see cref="Plies"/> makes them from
/// cloth, fibre and resin.
/// </summary>
public sealed class LaminatePly
{
    /// <summary>A ply of layers that lie on each other.</summary>
    /// <param name="layers">The layers from the mould side to the bag side; at least one.</param>
    /// <param name="mass">Cured mass per area; zero (mass is not asked) to 1e6 kg/m2.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is out of range.</exception>
    /// <exception cref="ArgumentException">There is no layer.</exception>
    public LaminatePly(IReadOnlyList<Layer> layers, AreaDensity mass = default)
        : this(layers, mass, false)
    {
    }

    internal LaminatePly(IReadOnlyList<Layer> layers, AreaDensity mass, bool interlaced)
    {
        ArgumentNullException.ThrowIfNull(layers);
        if (layers.Count == 0)
        {
            throw new ArgumentException("A ply without layers has no stiffness.", nameof(layers));
        }

        Guard.Between(mass.KilogramsPerSquareMeter, 0, 1e6, "kg/m2", nameof(mass));
        double sum = 0;
        foreach (Layer layer in layers)
        {
            sum += layer.Metres;
        }

        // A copy, so that nobody changes the ply behind its thickness.
        (Layers, Mass, Interlaced, Metres) = ([.. layers], mass, interlaced, sum);
    }

    /// <summary>The layers from the mould side to the bag side.</summary>
    public IReadOnlyList<Layer> Layers { get; }

    /// <summary>Cured mass per area.</summary>
    public AreaDensity Mass { get; }

    /// <summary>
    /// Whether the yarns cross each other through the whole ply, as in a woven cloth. Its layers then share the yarns out so that
    /// the stiffness is right; strains are judged at the ply's own faces, because every yarn comes to the surface somewhere.
    /// </summary>
    public bool Interlaced { get; }

    /// <summary>Cured thickness.</summary>
    public Length Thickness => Length.FromMeters(Metres);

    internal double Metres { get; }

    /// <summary>How many layers have strains of their own to judge: in an interlaced ply the first weft and the first warp stand for all.</summary>
    internal int JudgedLayers => Interlaced ? 2 : Layers.Count;

    /// <summary>A ply of one layer.</summary>
    /// <param name="lamina">Its constants in its own axes.</param>
    /// <param name="thickness">Cured thickness; 1e-12 m to 10 m.</param>
    /// <param name="angle">Direction of the fibre; at most 360 degrees either way.</param>
    /// <param name="mass">Cured mass per area; zero when mass is not asked.</param>
    /// <param name="limits">Strain limits, or null when there are none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static LaminatePly Of(
        Lamina lamina, Length thickness, Angle angle, AreaDensity mass = default, StrainLimits? limits = null) =>
        new([new Layer(lamina, thickness, angle, limits)], mass);
}
