using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>Which way a load works.</summary>
public enum LoadDirection
{
    /// <summary>The part's 0 degrees.</summary>
    Along,

    /// <summary>90 degrees to that.</summary>
    Across,
}

/// <summary>A load that the stack is compared with. It is no load case of a part: edges, holes and shape are not in it.</summary>
public abstract record StatedLoad
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>The line.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Which way it works; for a strip, which way it is cut.</summary>
    public required LoadDirection Direction { get; init; }
}

/// <summary>A pull in the plane.</summary>
public sealed record PullLoad : StatedLoad
{
    /// <summary>Pull for each unit of width, more than 0.</summary>
    public required Figure<ForcePerLength> Pull { get; init; }
}

/// <summary>The test of the bench: a strip on two supports, loaded in the middle.</summary>
public sealed record StripLoad : StatedLoad
{
    /// <summary>Width of the strip.</summary>
    public required Figure<Length> Width { get; init; }

    /// <summary>Distance of the supports.</summary>
    public required Figure<Length> Span { get; init; }

    /// <summary>Load in the middle; where a mass was written, its weight at standard gravity, 9.80665 m/s2 (ISO 80000-3).</summary>
    public required Figure<Force> Load { get; init; }
}
