using System.Text.Json;

namespace Recipe.LanguageServer.Protocol;

/// <summary>How the client begins.</summary>
internal sealed record InitializeParams
{
    public required ClientCapabilities Capabilities { get; init; }

    public int? ProcessId { get; init; }

    public string? RootUri { get; init; }

    public JsonElement? InitializationOptions { get; init; }

    public WorkspaceFolder[]? WorkspaceFolders { get; init; }
}

/// <summary>What the client can do; of it what makes a difference here.</summary>
internal sealed record ClientCapabilities
{
    public GeneralClientCapabilities? General { get; init; }

    public WorkspaceClientCapabilities? Workspace { get; init; }

    public TextDocumentClientCapabilities? TextDocument { get; init; }

    public WindowClientCapabilities? Window { get; init; }
}

/// <summary>What concerns no one feature.</summary>
internal sealed record GeneralClientCapabilities
{
    public string[]? PositionEncodings { get; init; }
}

/// <summary>What concerns the workspace.</summary>
internal sealed record WorkspaceClientCapabilities
{
    public bool? Configuration { get; init; }

    public WorkspaceEditClientCapabilities? WorkspaceEdit { get; init; }

    public DidChangeWatchedFilesClientCapabilities? DidChangeWatchedFiles { get; init; }

    public DidChangeConfigurationClientCapabilities? DidChangeConfiguration { get; init; }

    public InlayHintWorkspaceClientCapabilities? InlayHint { get; init; }

    public CodeLensWorkspaceClientCapabilities? CodeLens { get; init; }

    public DiagnosticWorkspaceClientCapabilities? Diagnostics { get; init; }

    public SemanticTokensWorkspaceClientCapabilities? SemanticTokens { get; init; }
}

/// <summary>Changes of several documents.</summary>
internal sealed record WorkspaceEditClientCapabilities
{
    public bool? DocumentChanges { get; init; }
}

/// <summary>News of files on disk.</summary>
internal sealed record DidChangeWatchedFilesClientCapabilities
{
    public bool? DynamicRegistration { get; init; }
}

/// <summary>News of settings.</summary>
internal sealed record DidChangeConfigurationClientCapabilities
{
    public bool? DynamicRegistration { get; init; }
}

/// <summary>Whether hints can be asked for anew.</summary>
internal sealed record InlayHintWorkspaceClientCapabilities
{
    public bool? RefreshSupport { get; init; }
}

/// <summary>Whether lenses can be asked for anew.</summary>
internal sealed record CodeLensWorkspaceClientCapabilities
{
    public bool? RefreshSupport { get; init; }
}

/// <summary>Whether diagnostics can be asked for anew.</summary>
internal sealed record DiagnosticWorkspaceClientCapabilities
{
    public bool? RefreshSupport { get; init; }
}

/// <summary>Whether colours can be asked for anew.</summary>
internal sealed record SemanticTokensWorkspaceClientCapabilities
{
    public bool? RefreshSupport { get; init; }
}

/// <summary>What concerns documents.</summary>
internal sealed record TextDocumentClientCapabilities
{
    public CompletionClientCapabilities? Completion { get; init; }

    public HoverClientCapabilities? Hover { get; init; }

    public DocumentSymbolClientCapabilities? DocumentSymbol { get; init; }

    public CodeActionClientCapabilities? CodeAction { get; init; }

    public FoldingRangeClientCapabilities? FoldingRange { get; init; }

    public PublishDiagnosticsClientCapabilities? PublishDiagnostics { get; init; }

    public DiagnosticClientCapabilities? Diagnostic { get; init; }
}

/// <summary>Completion.</summary>
internal sealed record CompletionClientCapabilities
{
    public ClientCompletionItemOptions? CompletionItem { get; init; }
}

/// <summary>What an entry of a completion list may hold.</summary>
internal sealed record ClientCompletionItemOptions
{
    public bool? SnippetSupport { get; init; }

    public string[]? DocumentationFormat { get; init; }
}

/// <summary>Hover.</summary>
internal sealed record HoverClientCapabilities
{
    public string[]? ContentFormat { get; init; }
}

/// <summary>The outline.</summary>
internal sealed record DocumentSymbolClientCapabilities
{
    public bool? HierarchicalDocumentSymbolSupport { get; init; }
}

/// <summary>Actions.</summary>
internal sealed record CodeActionClientCapabilities
{
    public ClientCodeActionLiteralOptions? CodeActionLiteralSupport { get; init; }
}

/// <summary>Whether actions may be more than commands: present when they may.</summary>
internal sealed record ClientCodeActionLiteralOptions;

/// <summary>Folding.</summary>
internal sealed record FoldingRangeClientCapabilities
{
    public bool? LineFoldingOnly { get; init; }
}

/// <summary>Diagnostics that are sent.</summary>
internal sealed record PublishDiagnosticsClientCapabilities
{
    public bool? RelatedInformation { get; init; }
}

/// <summary>Diagnostics that are asked for: present when the client asks.</summary>
internal sealed record DiagnosticClientCapabilities;
