namespace Recipe.Cli;

/// <summary>The command cannot be carried out; the message says which file and why, for a person.</summary>
internal sealed class CannotRunException(string message, Exception? cause = null) : Exception(message, cause);
