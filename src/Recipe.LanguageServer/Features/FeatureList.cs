namespace Recipe.LanguageServer.Features;

/// <summary>All that the server can do.</summary>
internal static class FeatureList
{
    public static IEnumerable<IFeature> Make() =>
    [
        new TextSynchronisation(),
        new WorkspaceChanges(),
        new PullDiagnostics(),
    ];
}
