using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One layer of a laminate with all its fibre in one direction, or none.</summary>
/// <remarks>
/// Angles run from the laminate's x axis to the fibre, counter-clockwise looking at the tool face, that is from the bag side
/// down on the mould.
/// </remarks>
public sealed class Layer
{
    /// <summary>A layer; its stiffness in the laminate's axes is computed here, once.</summary>
    /// <param name="lamina">Its constants in its own axes.</param>
    /// <param name="thickness">Cured thickness; 1e-12 m to 10 m.</param>
    /// <param name="angle">Direction of the fibre; at most 360 degrees either way.</param>
    /// <param name="limits">Strain limits, or null when there are none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness or the angle is out of range.</exception>
    public Layer(Lamina lamina, Length thickness, Angle angle, StrainLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(lamina);
        (Lamina, Thickness, Angle, Limits) = (lamina, thickness, angle, limits);
        Metres = LaminateGuard.Thickness(thickness, nameof(thickness));
        double quarterTurns = LaminateGuard.Degrees(angle, nameof(angle)) / 90;
        Cos2 = double.CosPi(quarterTurns);
        Sin2 = double.SinPi(quarterTurns);
        Stiffness = lamina.StiffnessAt(angle);
        if (lamina.ExpansionAlong is { } along && lamina.ExpansionAcross is { } across)
        {
            // The strain is known in the fibre's axes; the laminate's lie turned back by the ply's angle.
            Expansion = new PlaneVector(along.PerKelvin, across.PerKelvin, 0).StrainTurned(Cos2, -Sin2);
        }
    }

    /// <summary>Constants in the layer's own axes.</summary>
    public Lamina Lamina { get; }

    /// <summary>Cured thickness.</summary>
    public Length Thickness { get; }

    /// <summary>Direction of the fibre.</summary>
    public Angle Angle { get; }

    /// <summary>Strain limits, or null.</summary>
    public StrainLimits? Limits { get; }

    /// <summary>Stiffness in the laminate's axes, Q-bar, Pa.</summary>
    public PlaneMatrix Stiffness { get; }

    /// <summary>Free thermal strain per kelvin in the laminate's axes, or null when an expansion is not known.</summary>
    public PlaneVector? Expansion { get; }

    internal double Metres { get; }

    internal double Cos2 { get; }

    internal double Sin2 { get; }
}
