namespace Recipe.Disk;

/// <summary>Files could not be written, and why: a sentence for whoever asked for them.</summary>
public sealed class CannotWriteException(string message, Exception? inner = null) : Exception(message, inner);
