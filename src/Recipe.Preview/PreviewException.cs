namespace Recipe.Preview;

/// <summary>The preview cannot be served, or something that was asked of it cannot be done; the message says why, for a person.</summary>
public sealed class PreviewException(string message, Exception? cause = null) : Exception(message, cause);
