using UnitsNet;
using static Recipe.Engineering.Tests.Cures;

namespace Recipe.Engineering.Tests;

/// <summary>Heat shorthand that the tests of pots and laminates share.</summary>
internal static class Heats
{
    /// <summary>The slow laminating epoxy of the book, 450 J/g.</summary>
    internal static ExothermicResin SlowMix { get; } = new(Slow, JoulesPerGram(450));

    internal static SpecificEnergy JoulesPerGram(double value) => SpecificEnergy.FromJoulesPerKilogram(1000 * value);

    internal static SpecificEntropy PerGramKelvin(double value) => SpecificEntropy.FromJoulesPerKilogramKelvin(1000 * value);

    internal static HeatTransferCoefficient Transfer(double value) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(value);

    internal static Mass G(double grams) => Mass.FromGrams(grams);

    internal static Pot Cup(double grams, double celsius) => new(G(grams), C(celsius));

    internal static Pot Tray(double grams, double celsius) => Cup(grams, celsius) with { Shape = PotShape.ShallowTray };
}
