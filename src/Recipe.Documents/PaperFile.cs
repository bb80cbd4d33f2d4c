namespace Recipe.Documents;

/// <summary>A file to be written.</summary>
/// <param name="FileName">Its name, without a folder.</param>
/// <param name="Bytes">All of it; text is UTF-8 without a byte order mark.</param>
public sealed record PaperFile(string FileName, ReadOnlyMemory<byte> Bytes);
