namespace Recipe.Planning;

/// <summary>Gives what stands on a shelf to the lines that want it, in their order: what several lines want of one material is there only once.</summary>
public sealed class ShelfGiving
{
    private readonly Dictionary<(string Name, bool IsHardener), double> _wanted = [];

    /// <summary>What the shelf has for a line, SI and not below 0, after the lines before it; null when nothing is recorded. What the line wants is gone then.</summary>
    /// <param name="name">The name under which the shelf knows it.</param>
    /// <param name="isHardener">Whether the line is the hardener of a resin.</param>
    /// <param name="wanted">What the line wants, SI.</param>
    /// <param name="inStock">What stands there, SI, or null.</param>
    public double? For(string name, bool isHardener, double wanted, double? inStock)
    {
        ArgumentNullException.ThrowIfNull(name);
        var before = _wanted.GetValueOrDefault((name, isHardener));
        _wanted[(name, isHardener)] = before + wanted;
        return inStock is { } there ? Math.Max(0, there - before) : null;
    }
}
