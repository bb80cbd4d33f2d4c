using Recipe.Text.Findings;

namespace Recipe.Compiler.Previewing;

/// <summary>A number that a recipe declares and that somebody may want to try otherwise.</summary>
/// <param name="Id">Its name in the page.</param>
/// <param name="Label">What it is, for people.</param>
/// <param name="Value">The number as it is declared, in its unit.</param>
/// <param name="Low">The least that is tried.</param>
/// <param name="High">The most that is tried.</param>
/// <param name="Step">From one value to the next.</param>
/// <param name="Unit">The unit as it is written; empty for a count.</param>
internal sealed record Lever(string Id, string Label, double Value, double Low, double High, double Step, string Unit)
{
    /// <summary>What to write so that the number is another one.</summary>
    public required Func<double, TextEdit> Edit { get; init; }
}
