namespace Recipe.LanguageServer.Protocol;

/// <summary>The answer to <c>initialize</c>.</summary>
internal sealed record InitializeResult(ServerCapabilities Capabilities, ServerInfo ServerInfo);

/// <summary>Who answers.</summary>
internal sealed record ServerInfo(string Name, string Version);

/// <summary>What this server can do. Each feature enters itself.</summary>
internal sealed record ServerCapabilities
{
    public string? PositionEncoding { get; set; }

    public TextDocumentSyncOptions? TextDocumentSync { get; set; }

    public CompletionOptions? CompletionProvider { get; set; }

    public bool? HoverProvider { get; set; }

    public SignatureHelpOptions? SignatureHelpProvider { get; set; }

    public bool? DefinitionProvider { get; set; }

    public bool? ReferencesProvider { get; set; }

    public bool? DocumentHighlightProvider { get; set; }

    public bool? DocumentSymbolProvider { get; set; }

    public CodeActionOptions? CodeActionProvider { get; set; }

    public CodeLensOptions? CodeLensProvider { get; set; }

    public DocumentLinkOptions? DocumentLinkProvider { get; set; }

    public bool? WorkspaceSymbolProvider { get; set; }

    public bool? DocumentFormattingProvider { get; set; }

    public bool? DocumentRangeFormattingProvider { get; set; }

    public DocumentOnTypeFormattingOptions? DocumentOnTypeFormattingProvider { get; set; }

    public RenameOptions? RenameProvider { get; set; }

    public bool? FoldingRangeProvider { get; set; }

    public bool? SelectionRangeProvider { get; set; }

    public ExecuteCommandOptions? ExecuteCommandProvider { get; set; }

    public SemanticTokensOptions? SemanticTokensProvider { get; set; }

    public bool? InlayHintProvider { get; set; }

    public DiagnosticOptions? DiagnosticProvider { get; set; }

    public WorkspaceOptions? Workspace { get; set; }
}

/// <summary>How documents are kept alike.</summary>
internal sealed record TextDocumentSyncOptions
{
    public const int Incremental = 2;

    public bool? OpenClose { get; init; }

    public int? Change { get; init; }

    public bool? Save { get; init; }
}

/// <summary>Completion.</summary>
internal sealed record CompletionOptions
{
    public string[]? TriggerCharacters { get; init; }

    public bool? ResolveProvider { get; init; }
}

/// <summary>Help with the values of a line.</summary>
internal sealed record SignatureHelpOptions
{
    public string[]? TriggerCharacters { get; init; }

    public string[]? RetriggerCharacters { get; init; }
}

/// <summary>Actions.</summary>
internal sealed record CodeActionOptions
{
    public string[]? CodeActionKinds { get; init; }
}

/// <summary>Lenses.</summary>
internal sealed record CodeLensOptions
{
    public bool? ResolveProvider { get; init; }
}

/// <summary>Links.</summary>
internal sealed record DocumentLinkOptions
{
    public bool? ResolveProvider { get; init; }
}

/// <summary>Layout while typing.</summary>
internal sealed record DocumentOnTypeFormattingOptions(string FirstTriggerCharacter)
{
    public string[]? MoreTriggerCharacter { get; init; }
}

/// <summary>Renaming.</summary>
internal sealed record RenameOptions
{
    public bool? PrepareProvider { get; init; }
}

/// <summary>Commands.</summary>
internal sealed record ExecuteCommandOptions(string[] Commands);

/// <summary>Colours.</summary>
internal sealed record SemanticTokensOptions(SemanticTokensLegend Legend)
{
    public bool? Range { get; init; }

    public SemanticTokensFullDelta? Full { get; init; }
}

/// <summary>What the numbers of the colours mean.</summary>
internal sealed record SemanticTokensLegend(string[] TokenTypes, string[] TokenModifiers);

/// <summary>Colours of a whole document.</summary>
internal sealed record SemanticTokensFullDelta
{
    public bool? Delta { get; init; }
}

/// <summary>Diagnostics that are asked for.</summary>
internal sealed record DiagnosticOptions(bool InterFileDependencies, bool WorkspaceDiagnostics)
{
    public string? Identifier { get; init; }
}

/// <summary>What concerns the workspace.</summary>
internal sealed record WorkspaceOptions
{
    public WorkspaceFoldersServerCapabilities? WorkspaceFolders { get; init; }
}

/// <summary>Several folders.</summary>
internal sealed record WorkspaceFoldersServerCapabilities
{
    public bool? Supported { get; init; }

    public bool? ChangeNotifications { get; init; }
}
