using System.Text.Json.Serialization;

namespace Recipe.LanguageServer.Protocol;

// The structures of the Language Server Protocol that this server uses, with the protocol's own names, and of each only the members
// that are used. A test holds names and optionality against the protocol's declarations.

/// <summary>A place: a line, and a column in the units that were agreed upon.</summary>
internal sealed record Position(int Line, int Character);

/// <summary>From a place to, not including, another.</summary>
internal sealed record Range(Position Start, Position End);

/// <summary>A range of a document.</summary>
internal sealed record Location(string Uri, Range Range);

/// <summary>A document.</summary>
internal record TextDocumentIdentifier(string Uri);

/// <summary>A document at one moment.</summary>
internal sealed record VersionedTextDocumentIdentifier(string Uri, int Version);

/// <summary>A document, at one moment when it is open.</summary>
internal sealed record OptionalVersionedTextDocumentIdentifier(string Uri, [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] int? Version);

/// <summary>A document as it is opened.</summary>
internal sealed record TextDocumentItem(string Uri, string LanguageId, int Version, [property: JsonConverter(typeof(LooseText))] string Text);

/// <summary>A change of text.</summary>
internal sealed record TextEdit(Range Range, string NewText);

/// <summary>Changes of one document.</summary>
internal sealed record TextDocumentEdit(OptionalVersionedTextDocumentIdentifier TextDocument, TextEdit[] Edits);

/// <summary>Changes of several documents, in the one way or the other.</summary>
internal sealed record WorkspaceEdit
{
    public Dictionary<string, TextEdit[]>? Changes { get; init; }

    public TextDocumentEdit[]? DocumentChanges { get; init; }
}

/// <summary>Text for people.</summary>
internal sealed record MarkupContent(string Kind, string Value)
{
    public const string Markdown = "markdown";
    public const string PlainText = "plaintext";
}

/// <summary>Something that can be carried out.</summary>
internal sealed record Command(string Title, [property: JsonPropertyName("command")] string Name)
{
    public string[]? Arguments { get; init; }
}

/// <summary>A folder that is open in the editor.</summary>
internal sealed record WorkspaceFolder(string Uri, string Name);

/// <summary>What many requests give: a document.</summary>
internal sealed record DocumentParams(TextDocumentIdentifier TextDocument);

/// <summary>What many requests give: a place in a document.</summary>
internal sealed record TextDocumentPositionParams(TextDocumentIdentifier TextDocument, Position Position);

/// <summary>What some requests give: a range of a document.</summary>
internal sealed record DocumentRangeParams(TextDocumentIdentifier TextDocument, Range Range);
