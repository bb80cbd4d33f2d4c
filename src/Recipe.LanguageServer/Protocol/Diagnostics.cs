using System.Text.Json.Serialization;

namespace Recipe.LanguageServer.Protocol;

/// <summary>A finding in the protocol's terms.</summary>
internal sealed record Diagnostic(Range Range, string Message)
{
    public const int Error = 1;
    public const int Warning = 2;
    public const int Information = 3;
    public const int UnnecessaryTag = 1;

    public int? Severity { get; init; }

    public string? Code { get; init; }

    public CodeDescription? CodeDescription { get; init; }

    public string? Source { get; init; }

    public int[]? Tags { get; init; }

    public DiagnosticRelatedInformation[]? RelatedInformation { get; init; }

    public FindingData? Data { get; init; }
}

/// <summary>Where a code is explained.</summary>
internal sealed record CodeDescription(string Href);

/// <summary>Another place of the story.</summary>
internal sealed record DiagnosticRelatedInformation(Location Location, string Message);

/// <summary>Our own: what a client may show beside a finding, and what its actions go by.</summary>
/// <param name="Name">The readable name of the finding.</param>
/// <param name="Fixes">The titles of its fixes.</param>
internal sealed record FindingData(string Name, string[] Fixes);

/// <summary>Diagnostics that are sent.</summary>
internal sealed record PublishDiagnosticsParams(string Uri, Diagnostic[] Diagnostics)
{
    public int? Version { get; init; }
}

/// <summary>Asks for the diagnostics of a document.</summary>
internal sealed record DocumentDiagnosticParams(TextDocumentIdentifier TextDocument)
{
    public string? PreviousResultId { get; init; }
}

/// <summary>Diagnostics of a document, or that they are those of last time.</summary>
internal record DocumentDiagnosticReport(string Kind)
{
    public const string Full = "full";
    public const string Unchanged = "unchanged";

    public string? ResultId { get; init; }

    public Diagnostic[]? Items { get; init; }
}

/// <summary>Asks for the diagnostics of all files.</summary>
internal sealed record WorkspaceDiagnosticParams(PreviousResultId[] PreviousResultIds);

/// <summary>What the client knows of a document.</summary>
internal sealed record PreviousResultId(string Uri, string Value);

/// <summary>Diagnostics of all files.</summary>
internal sealed record WorkspaceDiagnosticReport(WorkspaceDocumentDiagnosticReport[] Items);

/// <summary>Diagnostics of one of them.</summary>
internal sealed record WorkspaceDocumentDiagnosticReport(string Kind, string Uri, [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] int? Version)
    : DocumentDiagnosticReport(Kind);
