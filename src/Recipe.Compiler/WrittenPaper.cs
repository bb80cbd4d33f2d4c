namespace Recipe.Compiler;

/// <summary>A paper, or several in one file.</summary>
/// <param name="FileName">A name for the file, without a folder.</param>
/// <param name="Bytes">All of it; text is UTF-8 without a byte order mark.</param>
public sealed record WrittenPaper(string FileName, ReadOnlyMemory<byte> Bytes);

/// <summary>The papers of one part.</summary>
/// <param name="Place">Its place among the parts, from 0.</param>
/// <param name="Of">How many parts there are.</param>
/// <param name="Part">The name of the part.</param>
/// <param name="Papers">Its papers.</param>
public sealed record PartPapers(int Place, int Of, string Part, IReadOnlyList<WrittenPaper> Papers);
