using Recipe.Compiler;
using Recipe.Compiler.Comparing;

namespace Recipe.Preview;

/// <summary>What is previewed, and what the preview may know of the world.</summary>
/// <param name="Path">The file, as a whole path of this machine. It need not be there yet.</param>
/// <param name="Shown">What it is called on the page.</param>
/// <param name="Files">Where texts come from: the disk, or an editor's buffers. Asked from one thread at a time.</param>
/// <param name="Today">The day, asked for at each change.</param>
public sealed record PreviewWish(string Path, string Shown, IFileStore Files, Func<DateOnly> Today)
{
    /// <summary>Opens the texts of the last commit of the repository of a folder; null where nothing is compared.</summary>
    public Func<string, OpenedRevision>? LastCommit { get; init; }

    /// <summary>The port; 0 for the one that this file had last time, or else any that is free.</summary>
    public int Port { get; init; }

    /// <summary>
    /// A folder of this user's alone in which the port and the token of a file are remembered, so that a page that is still open finds the preview
    /// when it is started again; null to remember nothing.
    /// </summary>
    public string? SeatFolder { get; init; }
}
