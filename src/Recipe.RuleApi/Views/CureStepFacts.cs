using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a step of the cure. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class CureStepFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>What is done: hold, ramp, cool, vent, debag or demould.</summary>
    public string? Action => ReadWord("action");

    /// <summary>Its place, from 1.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>The temperature at its start.</summary>
    public Temperature? From => ReadTemperature("from");

    /// <summary>The temperature at its end.</summary>
    public Temperature? To => ReadTemperature("to");

    /// <summary>How long it lasts.</summary>
    public Duration? Lasts => ReadDuration("lasts");

    /// <summary>How fast the temperature changes, up or down; always positive.</summary>
    public TemperatureChangeRate? Rate => ReadTemperatureChangeRate("rate");

    /// <summary>When it starts, from the start of the cure.</summary>
    public Duration? Start => ReadDuration("start");

    /// <summary>When it ends, from the start of the cure.</summary>
    public Duration? End => ReadDuration("end");

    /// <summary>Whether the bag is still on.</summary>
    public bool? Bagged => ReadYesNo("bagged");

    /// <summary>Whether the part is still in the mould.</summary>
    public bool? InMould => ReadYesNo("in-mould");
}
