using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How outlines are laid out.</summary>
/// <param name="Gap">Least distance between two pieces; zero or more. The edge of the cloth needs none.</param>
/// <param name="Seed">Start of the random numbers: the same seed gives the same layout.</param>
/// <param name="Steps">
/// How much work the search may do after the first layout, counted in looks at a pair of parts of pieces; zero or more. About 30 million
/// take a second on a machine of 2026.
/// </param>
public sealed record OutlineNestSettings(Length Gap, ulong Seed = 1, long Steps = OutlineNestSettings.UsualSteps)
{
    /// <summary>Some seconds of work.</summary>
    public const long UsualSteps = 150_000_000;
}
