namespace Recipe.Cli;

/// <summary>What the program returns to the shell.</summary>
internal static class ExitStatus
{
    /// <summary>Nothing of error severity.</summary>
    public const int Clean = 0;

    /// <summary>At least one finding of error severity (or, for <c>fmt --check</c>, a file that is not formatted).</summary>
    public const int Findings = 1;

    /// <summary>Could not do what was asked: a file that cannot be read or written, a wrong option.</summary>
    public const int CouldNotRun = 2;
}
