using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>Anything that can be bought or chosen by name. Figures that nobody gave are null, never zero.</summary>
public abstract record Material
{
    /// <summary>Its name in the language.</summary>
    public required string Name { get; init; }

    /// <summary>The word it was declared with: <c>fabric</c>, <c>peel-ply</c>.</summary>
    public required string Keyword { get; init; }

    /// <summary>Where its name is declared.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Whether it comes from the shipped book.</summary>
    public bool FromBook { get; init; }

    /// <summary>A title for papers, or null.</summary>
    public string? Title { get; init; }

    /// <summary>What papers call it: the title, or else the name.</summary>
    public string Label => Title ?? Name;

    /// <summary>Density of the solid (a core, a fibre, a film).</summary>
    public Figure<Density>? Density { get; init; }

    /// <summary>The hottest it can stand.</summary>
    public Figure<Temperature>? HeatLimit { get; init; }

    /// <summary>What it costs.</summary>
    public Figure<Price>? Price { get; init; }

    /// <summary>Keeps for so long unopened.</summary>
    public Figure<Duration>? ShelfLife { get; init; }

    /// <summary>A hazard line for the papers, or null.</summary>
    public string? Hazard { get; init; }

    /// <summary>A remark, or null.</summary>
    public string? Note { get; init; }
}
