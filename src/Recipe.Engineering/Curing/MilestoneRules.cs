using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What has to be true before the vacuum may go and the part may leave the mould. The defaults are common practice; the maker's data sheet wins.</summary>
public sealed record MilestoneRules
{
    /// <summary>Degree of cure at gel; 1/sqrt(3).</summary>
    public Ratio Gel { get; init; } = GelPoint.Usual;

    /// <summary>Degree from which even a late resin has gelled; 0.65 (<see cref="GelPoint.Latest"/>).</summary>
    public Ratio Gelled { get; init; } = GelPoint.Latest;

    /// <summary>How many times the gel time the vacuum is held at least; 1.5 (common practice).</summary>
    public double VacuumHold { get; init; } = 1.5;

    /// <summary>
    /// Least degree of cure at demould; 0.80 (assumed: what a slow laminating epoxy has after 10 h at 20 degC; common practice calls less
    /// than 8 h an error and less than 12 h early).
    /// </summary>
    public Ratio Demould { get; init; } = Ratio.FromDecimalFractions(0.80);

    /// <summary>How far the glass transition lies above the part at demould; 20 K (common practice).</summary>
    public TemperatureDelta DemouldLead { get; init; } = TemperatureDelta.FromKelvins(20);

    /// <summary>Hottest part that is pulled from its mould; 50 degC (common practice).</summary>
    public Temperature HottestDemould { get; init; } = Temperature.FromDegreesCelsius(50);
}
