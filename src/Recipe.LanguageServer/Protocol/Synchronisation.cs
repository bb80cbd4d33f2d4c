using System.Text.Json;
using System.Text.Json.Serialization;

namespace Recipe.LanguageServer.Protocol;

/// <summary>A document was opened.</summary>
internal sealed record DidOpenTextDocumentParams(TextDocumentItem TextDocument);

/// <summary>A document was changed; the changes follow one upon the other.</summary>
internal sealed record DidChangeTextDocumentParams(VersionedTextDocumentIdentifier TextDocument, TextDocumentContentChangeEvent[] ContentChanges);

/// <summary>A range got a new text; without a range the whole document did.</summary>
internal sealed record TextDocumentContentChangeEvent([property: JsonConverter(typeof(LooseText))] string Text)
{
    public Range? Range { get; init; }
}

/// <summary>A document was closed.</summary>
internal sealed record DidCloseTextDocumentParams(TextDocumentIdentifier TextDocument);

/// <summary>A document was saved.</summary>
internal sealed record DidSaveTextDocumentParams(TextDocumentIdentifier TextDocument);

/// <summary>Files on disk changed.</summary>
internal sealed record DidChangeWatchedFilesParams(FileEvent[] Changes);

/// <summary>A file on disk changed.</summary>
internal sealed record FileEvent(string Uri, int Type);

/// <summary>Folders came or went.</summary>
internal sealed record DidChangeWorkspaceFoldersParams(WorkspaceFoldersChangeEvent Event);

/// <summary>Which folders came and which went.</summary>
internal sealed record WorkspaceFoldersChangeEvent(WorkspaceFolder[] Added, WorkspaceFolder[] Removed);

/// <summary>Settings changed; an old client sends them along.</summary>
internal sealed record DidChangeConfigurationParams
{
    public JsonElement? Settings { get; init; }
}

/// <summary>Asks for settings.</summary>
internal sealed record ConfigurationParams(ConfigurationItem[] Items);

/// <summary>Which settings.</summary>
internal sealed record ConfigurationItem
{
    public string? Section { get; init; }
}

/// <summary>Asks to be told of things.</summary>
internal sealed record RegistrationParams(Registration[] Registrations);

/// <summary>What to be told of.</summary>
internal sealed record Registration(string Id, string Method)
{
    public DidChangeWatchedFilesRegistrationOptions? RegisterOptions { get; init; }
}

/// <summary>Which files.</summary>
internal sealed record DidChangeWatchedFilesRegistrationOptions(FileSystemWatcher[] Watchers);

/// <summary>Files like these.</summary>
internal sealed record FileSystemWatcher(string GlobPattern);

/// <summary>A word for the log.</summary>
internal sealed record LogMessageParams(int Type, string Message)
{
    public const int Error = 1;
}
