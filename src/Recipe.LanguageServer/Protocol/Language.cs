using System.Text.Json.Serialization;

namespace Recipe.LanguageServer.Protocol;

/// <summary>Text beside the mouse.</summary>
internal sealed record Hover(MarkupContent Contents)
{
    public Range? Range { get; init; }
}

/// <summary>One entry of a completion list.</summary>
internal sealed record CompletionItem(string Label)
{
    public const int Snippet = 2;

    public int? Kind { get; init; }

    public string? Detail { get; init; }

    public MarkupContent? Documentation { get; init; }

    public string? SortText { get; init; }

    public string? FilterText { get; init; }

    public int? InsertTextFormat { get; init; }

    public TextEdit? TextEdit { get; init; }

    public CompletionData? Data { get; init; }
}

/// <summary>Our own: what the documentation of an entry is found by.</summary>
internal sealed record CompletionData(string Uri, string Key);

/// <summary>A completion list.</summary>
internal sealed record CompletionList(bool IsIncomplete, CompletionItem[] Items);

/// <summary>Asks for hints.</summary>
internal sealed record InlayHintParams(TextDocumentIdentifier TextDocument, Range Range);

/// <summary>A computed value beside the line that causes it.</summary>
internal sealed record InlayHint(Position Position, string Label)
{
    public string? Tooltip { get; init; }

    public bool? PaddingLeft { get; init; }
}

/// <summary>A line of text above a declaration, perhaps one to press.</summary>
internal sealed record CodeLens(Range Range)
{
    public Command? Command { get; init; }
}

/// <summary>Asks where a name is used.</summary>
internal sealed record ReferenceParams(TextDocumentIdentifier TextDocument, Position Position, ReferenceContext Context);

/// <summary>Whether the declaration counts.</summary>
internal sealed record ReferenceContext(bool IncludeDeclaration);

/// <summary>A place that means the same name.</summary>
internal sealed record DocumentHighlight(Range Range)
{
    public const int Read = 2;
    public const int Write = 3;

    public int? Kind { get; init; }
}

/// <summary>What would be renamed.</summary>
internal sealed record PrepareRenamePlaceholder(Range Range, string Placeholder);

/// <summary>Asks for another name.</summary>
internal sealed record RenameParams(TextDocumentIdentifier TextDocument, Position Position, string NewName);

/// <summary>An entry of the outline.</summary>
internal sealed record DocumentSymbol(string Name, int Kind, Range Range, Range SelectionRange)
{
    public string? Detail { get; init; }

    public DocumentSymbol[]? Children { get; init; }
}

/// <summary>An entry of a flat outline, or one of the whole workspace.</summary>
internal sealed record SymbolInformation(string Name, int Kind, Location Location)
{
    public string? ContainerName { get; init; }
}

/// <summary>Asks for names in all files.</summary>
internal sealed record WorkspaceSymbolParams(string Query);

/// <summary>Lines that can be folded away.</summary>
internal sealed record FoldingRange(int StartLine, int EndLine)
{
    public int? StartCharacter { get; init; }

    public int? EndCharacter { get; init; }

    public string? Kind { get; init; }
}

/// <summary>Asks what to select next.</summary>
internal sealed record SelectionRangeParams(TextDocumentIdentifier TextDocument, Position[] Positions);

/// <summary>A selection, and the next larger one.</summary>
internal sealed record SelectionRange(Range Range)
{
    public SelectionRange? Parent { get; init; }
}

/// <summary>Asks for the colours that changed since a result.</summary>
internal sealed record SemanticTokensDeltaParams(TextDocumentIdentifier TextDocument, string PreviousResultId);

/// <summary>Colours, five numbers each.</summary>
internal sealed record SemanticTokens(int[] Data)
{
    public string? ResultId { get; init; }
}

/// <summary>Colours that changed, or all of them: the protocol lets the server choose.</summary>
internal sealed record SemanticTokensDeltaResult
{
    public string? ResultId { get; init; }

    public SemanticTokensEdit[]? Edits { get; init; }

    public int[]? Data { get; init; }
}

/// <summary>Numbers that are replaced.</summary>
internal sealed record SemanticTokensEdit(int Start, int DeleteCount)
{
    public int[]? Data { get; init; }
}

/// <summary>Asks for a layout.</summary>
internal sealed record DocumentFormattingParams(TextDocumentIdentifier TextDocument);

/// <summary>Asks for the layout of some lines.</summary>
internal sealed record DocumentRangeFormattingParams(TextDocumentIdentifier TextDocument, Range Range);

/// <summary>Asks for a layout after a key.</summary>
internal sealed record DocumentOnTypeFormattingParams(TextDocumentIdentifier TextDocument, Position Position, [property: JsonPropertyName("ch")] string Typed);

/// <summary>Asks what could be done.</summary>
internal sealed record CodeActionParams(TextDocumentIdentifier TextDocument, Range Range, CodeActionContext Context);

/// <summary>What the editor knows about the place.</summary>
internal sealed record CodeActionContext
{
    public string[]? Only { get; init; }
}

/// <summary>Something that could be done.</summary>
internal sealed record CodeAction(string Title)
{
    public string? Kind { get; init; }

    public Diagnostic[]? Diagnostics { get; init; }

    public bool? IsPreferred { get; init; }

    public WorkspaceEdit? Edit { get; init; }
}

/// <summary>A way to another document.</summary>
internal sealed record DocumentLink(Range Range)
{
    public string? Target { get; init; }
}

/// <summary>Help with the values of a line.</summary>
internal sealed record SignatureHelp(SignatureInformation[] Signatures)
{
    public int? ActiveSignature { get; init; }

    public int? ActiveParameter { get; init; }
}

/// <summary>How the line is written.</summary>
internal sealed record SignatureInformation(string Label)
{
    public MarkupContent? Documentation { get; init; }

    public ParameterInformation[]? Parameters { get; init; }
}

/// <summary>A value of it: from where to where in the label, in UTF-16 code units.</summary>
internal sealed record ParameterInformation(int[] Label)
{
    public MarkupContent? Documentation { get; init; }
}

/// <summary>Asks for a command.</summary>
internal sealed record ExecuteCommandParams(string Command)
{
    public System.Text.Json.JsonElement[]? Arguments { get; init; }
}
