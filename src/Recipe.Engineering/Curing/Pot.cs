using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A mixed pot where it stands.</summary>
/// <param name="Mass">Mass of the mix; 0.1 g to 1000 kg.</param>
/// <param name="Room">Temperature of the room.</param>
public sealed record Pot(Mass Mass, Temperature Room)
{
    /// <summary>Depth of resin in a shallow tray.</summary>
    internal const double TrayDepth = 0.010;

    /// <summary>A cup as deep as it is wide, or a tray 10 mm deep.</summary>
    public PotShape Shape { get; init; } = PotShape.DeepCup;

    /// <summary>Temperature of the mix when the clock starts; that of the room when it is not given.</summary>
    public Temperature? Start { get; init; }

    /// <summary>
    /// Heat lost from its surface to the room, by air and by radiation; 10 W/(m2 K) assumed (from memory: 4 to 6 of each in still air).
    /// The wall of a cup and the bench below are counted like the open surface.
    /// </summary>
    public HeatTransferCoefficient Loss { get; init; } = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10);

    /// <summary>Mass of the container, which warms with the resin; 0 when it is not given (a thin plastic cup).</summary>
    public Mass Container { get; init; } = Mass.Zero;

    /// <summary>Specific heat of the container; 1.9 J/(g K) assumed, of polypropylene (from memory); steel 0.46.</summary>
    public SpecificEntropy ContainerSpecificHeat { get; init; } = SpecificEntropy.FromJoulesPerKilogramKelvin(1900);

    /// <summary>
    /// Outer surface in m2, and the way of the heat inside over the conductivity's reach in m: what the mean temperature of an evenly
    /// heated body lies above its surface, per flux and conductivity.
    /// </summary>
    /// <remarks>
    /// Source: steady conduction with even heat, e.g. Carslaw and Jaeger, Conduction of Heat in Solids: a sphere has R/5, which stands for
    /// the cup as deep as it is wide; a plate of depth d, cooled on both sides, d/6.
    /// </remarks>
    internal (double Surface, double Way) Geometry(double density)
    {
        double volume = Mass.Kilograms / density;
        if (Shape == PotShape.ShallowTray)
        {
            double area = volume / TrayDepth;
            return ((2 * area) + (TrayDepth * Math.Sqrt(4 * Math.PI * area)), TrayDepth / 6);
        }

        double width = Math.Cbrt(4 * volume / Math.PI);
        return (1.5 * Math.PI * width * width, width / 10);
    }
}
