namespace Recipe.Engineering;

/// <summary>Dry air at 20 degC, for flow through hoses and holes.</summary>
internal static class Air
{
    /// <summary>Temperature, K.</summary>
    internal const double Kelvins = 293.15;

    /// <summary>Gas constant, J/(kg K), as in ISO 2533.</summary>
    internal const double GasConstant = 287.05287;

    /// <summary>Ratio of the heat capacities, as in ISO 2533.</summary>
    internal const double Gamma = 1.4;

    /// <summary>Viscosity at 20 degC by Sutherland's formula of ISO 2533, Pa s: 1.458e-6 T^1.5/(T + 110.4) (from memory).</summary>
    internal static double Viscosity { get; } = 1.458e-6 * Kelvins * Math.Sqrt(Kelvins) / (Kelvins + 110.4);

    /// <summary>
    /// Volume per time and area, at the pressure before it, that passes a hole at the speed of sound, m/s:
    /// <c>sqrt(gamma R T) (2/(gamma + 1))^((gamma + 1)/(2 (gamma - 1)))</c>.
    /// </summary>
    internal static double ChokedSpeed { get; } =
        Math.Sqrt(Gamma * GasConstant * Kelvins) * Math.Pow(2 / (Gamma + 1), (Gamma + 1) / (2 * (Gamma - 1)));

    /// <summary>Pressure behind a hole over that before it at and below which the flow is choked: <c>(2/(gamma + 1))^(gamma/(gamma - 1))</c>, 0.528.</summary>
    internal static double CriticalRatio { get; } = Math.Pow(2 / (Gamma + 1), Gamma / (Gamma - 1));

    /// <summary>As <see cref="ChokedSpeed"/> for any ratio of the two pressures up to 1.</summary>
    internal static double HoleSpeed(double ratio)
    {
        if (ratio <= CriticalRatio)
        {
            return ChokedSpeed;
        }

        double density = Math.Pow(ratio, 1 / Gamma);
        return Math.Sqrt(2 * Gamma / (Gamma - 1) * GasConstant * Kelvins * density * (density - ratio));
    }
}
