using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Resin in the laminate, and resin to mix: the laminate's, what consumables and pots take, and a spare.</summary>
/// <remarks>Source: conservation of mass; the shares are the caller's, common practice unless the shop has weighed its own.</remarks>
public static class ResinBalance
{
    /// <summary>Resin in plies of an area from their dry weight and the resin's share by mass.</summary>
    /// <param name="cloth">Dry cloth per area, all plies together; greater than zero.</param>
    /// <param name="area">Area; zero or more.</param>
    /// <param name="resinMassFraction">Mass of resin in the mass of laminate; 0 or more and less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Mass InLaminate(AreaDensity cloth, Area area, Ratio resinMassFraction) =>
        Times(FibreContent.ResinPerArea(cloth, resinMassFraction), area);

    /// <summary>Resin in plies of an area from their dry weight and the fibre's share by volume.</summary>
    /// <param name="cloth">Dry cloth per area, all plies together; greater than zero.</param>
    /// <param name="area">Area; zero or more.</param>
    /// <param name="fibreVolumeFraction">Volume of fibre in the volume of laminate; between 0 and 1.</param>
    /// <param name="fibre">Density of the fibre; greater than zero.</param>
    /// <param name="resin">Density of the cured resin; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Mass InLaminate(
        AreaDensity cloth, Area area, Ratio fibreVolumeFraction, Density fibre, Density resin) =>
        Times(FibreContent.ResinPerAreaAtVolumeFraction(cloth, fibreVolumeFraction, fibre, resin), area);

    /// <summary>Resin that one consumable takes: its pick-up per area, but no more than it can hold.</summary>
    /// <param name="pickUp">The consumable.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the consumable is negative.</exception>
    public static Mass TakenBy(PickUp pickUp)
    {
        ArgumentNullException.ThrowIfNull(pickUp);
        double perArea = Guard.NotNegative(pickUp.PerArea.KilogramsPerSquareMeter, "kg/m2", nameof(pickUp));
        double most = pickUp.Capacity is { } capacity
            ? Guard.NotNegative(capacity.KilogramsPerSquareMeter, "kg/m2", nameof(pickUp))
            : double.PositiveInfinity;
        return Times(AreaDensity.FromKilogramsPerSquareMeter(Math.Min(perArea, most)), pickUp.Area);
    }

    /// <summary>
    /// Resin to mix and where it goes: <c>mix = (laminate + pick-up + tools) (1 + spare) / (1 - pot)</c>, with the spare as a
    /// share of what is needed and the pot loss as a share of what is mixed.
    /// </summary>
    /// <param name="laminate">Resin that stays in the part; zero or more.</param>
    /// <param name="pickUps">Consumables that take resin.</param>
    /// <param name="toolLoss">Resin left on brushes and rollers; zero or more; 30 to 60 g a person and session (from memory).</param>
    /// <param name="potLoss">Share of the mix that stays in the pots; 0 or more and less than 1; 3 % is common (from memory).</param>
    /// <param name="spare">Contingency on the need; 0 or more and less than 1; 10 % is common practice.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static ResinSheet ToMix(
        Mass laminate, IReadOnlyList<PickUp> pickUps, Mass toolLoss, Ratio potLoss, Ratio spare)
    {
        ArgumentNullException.ThrowIfNull(pickUps);
        double part = Guard.NotNegative(laminate.Kilograms, "kg", nameof(laminate));
        double tools = Guard.NotNegative(toolLoss.Kilograms, "kg", nameof(toolLoss));
        double pot = Guard.FractionBelowOne(potLoss, nameof(potLoss));
        double contingency = Guard.FractionBelowOne(spare, nameof(spare));
        double taken = 0;
        foreach (PickUp pickUp in pickUps)
        {
            taken += TakenBy(pickUp).Kilograms;
        }

        double need = part + taken + tools;
        double mix = need * (1 + contingency) / (1 - pot);
        return new ResinSheet(
            laminate,
            Mass.FromKilograms(taken),
            toolLoss,
            Mass.FromKilograms(mix * pot),
            Mass.FromKilograms(need * contingency),
            Mass.FromKilograms(mix));
    }

    private static Mass Times(AreaDensity weight, Area area) =>
        Mass.FromKilograms(
            weight.KilogramsPerSquareMeter * Guard.NotNegative(area.SquareMeters, "m2", nameof(area)));
}
