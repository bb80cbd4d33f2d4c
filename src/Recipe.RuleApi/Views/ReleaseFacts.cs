using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of one agent of the release system. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class ReleaseFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>The name of the agent.</summary>
    public string? Agent => ReadWord("agent");

    /// <summary>The kind of agent: wax, liquid-film, semi-permanent or sheet.</summary>
    public string? Kind => ReadWord("kind");

    /// <summary>Its place, from 1 at the mould.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>How many coats of it.</summary>
    public double? Coats => ReadNumber("coats");

    /// <summary>The wait between coats.</summary>
    public Duration? Wait => ReadDuration("wait");

    /// <summary>How long the last coat dries.</summary>
    public Duration? Dry => ReadDuration("dry");
}
