using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What a face under radiation takes in and gives off.</summary>
public sealed record RadiantFace
{
    /// <summary>Share of the radiation taken in; 0.01 to 1; 0.9 assumed, of a dark or a resinous face (from memory; white paint in the sun 0.2 to 0.3).</summary>
    public Ratio Absorptivity { get; init; } = Ratio.FromDecimalFractions(0.9);

    /// <summary>Emissivity for its own heat; 0.01 to 1; 0.9 assumed, of anything but bare metal (from memory).</summary>
    public Ratio Emissivity { get; init; } = Ratio.FromDecimalFractions(0.9);

    /// <summary>Heat lost to the air; 0 to 1e6 W/(m2 K); 10 assumed, of nearly still air (from memory; a draught 15 to 25).</summary>
    public HeatTransferCoefficient Convection { get; init; } = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10);
}
