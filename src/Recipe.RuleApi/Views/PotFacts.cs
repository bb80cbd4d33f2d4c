using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a pot of resin. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class PotFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>What the pot is for: laminate, coat, seam or adhesive.</summary>
    public string? Use => ReadWord("use");

    /// <summary>Its number, from 1 for the first of its use.</summary>
    public double? Number => ReadNumber("number");

    /// <summary>The mass of the mix.</summary>
    public Mass? Mass => ReadMass("mass");

    /// <summary>The resin in it.</summary>
    public Mass? Resin => ReadMass("resin");

    /// <summary>The hardener in it.</summary>
    public Mass? Hardener => ReadMass("hardener");

    /// <summary>When it is mixed, from the first mix.</summary>
    public Duration? MixedAt => ReadDuration("mixed-at");

    /// <summary>When it is used up, from the first mix.</summary>
    public Duration? UsedUpAt => ReadDuration("used-up-at");

    /// <summary>Its pot life.</summary>
    public Duration? Life => ReadDuration("life");

    /// <summary>What is left of its life when it is used up; below zero when it was not enough.</summary>
    public Duration? TimeLeft => ReadDuration("time-left");

    /// <summary>The temperature that it reaches when it is left standing in its cup.</summary>
    public Temperature? StandingPeak => ReadTemperature("standing-peak");
}
