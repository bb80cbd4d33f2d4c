using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Resin that an infusion takes, and where it goes. The parts sum to the whole.</summary>
/// <param name="Laminate">Resin in the pores of the laminate.</param>
/// <param name="Consumables">Resin in flow medium, peel ply and the like, thrown away.</param>
/// <param name="Lines">Resin in feed lines and hoses.</param>
/// <param name="Trap">Resin let through to the trap.</param>
/// <param name="Tail">Resin left in the feed pot so that no air is drawn.</param>
/// <param name="ToMix">All of it.</param>
public sealed record ResinDemand(Mass Laminate, Mass Consumables, Mass Lines, Mass Trap, Mass Tail, Mass ToMix)
{
    /// <summary>What is left in the feed pot when all else is filled: 20 % of the need (common practice).</summary>
    public static Ratio CommonTail { get; } = Ratio.FromPercent(20);

    /// <summary>
    /// Resin to mix: <c>rho (sum(A h phi) + sum(pi d^2 l/4) + trap) (1 + tail)</c>.
    /// </summary>
    /// <param name="laminate">Layers of the part.</param>
    /// <param name="consumables">Flow medium, peel ply and whatever else fills with resin.</param>
    /// <param name="lines">Feed lines and hoses; a line of 12 mm bore holds 113 mL a metre.</param>
    /// <param name="trap">Volume of resin let through to the trap; zero or more.</param>
    /// <param name="resin">Density of the liquid resin; 0.1 to 30 000 kg/m3.</param>
    /// <param name="tail">What stays in the pot, as a share of the rest; 0 or more and less than 1; see <see cref="CommonTail"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    /// <remarks>Source: conservation of volume. The lines are counted whole; what a spiral's wall takes up is left as a spare.</remarks>
    public static ResinDemand Of(
        IReadOnlyList<FilledLayer> laminate,
        IReadOnlyList<FilledLayer> consumables,
        IReadOnlyList<FilledLine> lines,
        Volume trap,
        Density resin,
        Ratio tail)
    {
        double rho = LaminateGuard.Density(resin, nameof(resin));
        double part = rho * Pores(laminate, nameof(laminate));
        double waste = rho * Pores(consumables, nameof(consumables));
        double full = rho * Bores(lines);
        double caught = rho * Guard.Between(trap.CubicMeters, 0, 1e6, "m3", nameof(trap));
        double left = Guard.FractionBelowOne(tail, nameof(tail)) * (part + waste + full + caught);
        return new ResinDemand(
            Mass.FromKilograms(part),
            Mass.FromKilograms(waste),
            Mass.FromKilograms(full),
            Mass.FromKilograms(caught),
            Mass.FromKilograms(left),
            Mass.FromKilograms(part + waste + full + caught + left));
    }

    private static double Pores(IReadOnlyList<FilledLayer> layers, string parameter)
    {
        ArgumentNullException.ThrowIfNull(layers, parameter);
        double sum = 0;
        foreach (FilledLayer layer in layers)
        {
            sum += Guard.Between(layer.Area.SquareMeters, 0, 1e6, "m2", nameof(layer.Area))
                * Guard.Between(layer.Thickness.Meters, 0, 1e3, "m", nameof(layer.Thickness))
                * Guard.Between(layer.Porosity.DecimalFractions, 0, 1, string.Empty, nameof(layer.Porosity));
        }

        return sum;
    }

    private static double Bores(IReadOnlyList<FilledLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        double sum = 0;
        foreach (FilledLine line in lines)
        {
            double bore = Guard.Between(line.Bore.Meters, 0, 10, "m", nameof(line.Bore));
            sum += Math.PI * bore * bore / 4 * Guard.Between(line.Length.Meters, 0, 1e6, "m", nameof(line.Length));
        }

        return sum;
    }
}
