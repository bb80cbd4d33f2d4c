namespace Recipe.LanguageServer.Features;

/// <summary>All that the server can do: a feature is one file, one test and one line here.</summary>
internal static class FeatureList
{
    public static IEnumerable<IFeature> Make() =>
    [
        new TextSynchronisation(),
        new WorkspaceChanges(),
        new PullDiagnostics(),
        new CompletionFeature(),
        new HoverFeature(),
        new SignatureHelpFeature(),
        new InlayHintFeature(),
        new CodeLensFeature(),
        new Commands(),
        new DefinitionFeature(),
        new ReferencesFeature(),
        new HighlightFeature(),
        new RenameFeature(),
        new DocumentSymbolFeature(),
        new WorkspaceSymbolFeature(),
        new FoldingFeature(),
        new SelectionFeature(),
        new SemanticTokensFeature(),
        new FormattingFeature(),
        new CodeActionFeature(),
        new DocumentLinkFeature(),
    ];
}
