using Recipe.Compiler;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/diagnostic</c> and <c>workspace/diagnostic</c>: findings when the client asks for them.</summary>
internal sealed class PullDiagnostics : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.DiagnosticProvider = new DiagnosticOptions(InterFileDependencies: true, WorkspaceDiagnostics: true) { Identifier = "recipe" };
        router.Request(
            "textDocument/diagnostic",
            ProtocolJson.Default.DocumentDiagnosticParams,
            ProtocolJson.Default.DocumentDiagnosticReport,
            p =>
            {
                var file = session.Compile(p.TextDocument);
                var id = ResultId(session, file);
                PushDiagnostics.OfRuleFiles(session, file);
                return p.PreviousResultId == id
                    ? new DocumentDiagnosticReport(DocumentDiagnosticReport.Unchanged) { ResultId = id }
                    : new DocumentDiagnosticReport(DocumentDiagnosticReport.Full) { ResultId = id, Items = DiagnosticMapper.All(session, file) };
            });
        router.Request(
            "workspace/diagnostic",
            ProtocolJson.Default.WorkspaceDiagnosticParams,
            ProtocolJson.Default.WorkspaceDiagnosticReport,
            p =>
            {
                var known = p.PreviousResultIds.GroupBy(previous => previous.Uri).ToDictionary(group => group.Key, group => group.Last().Value);
                return new WorkspaceDiagnosticReport([.. session.CompileAll().Select(file => Report(session, file, known))]);
            });
    }

    private static WorkspaceDocumentDiagnosticReport Report(Session session, CompiledFile file, Dictionary<string, string> known)
    {
        var uri = session.Documents.UriOf(file.Source.Name);
        var version = session.Documents.Find(file.Source.Name)?.Version;
        var id = ResultId(session, file);
        return known.GetValueOrDefault(uri) == id
            ? new WorkspaceDocumentDiagnosticReport(DocumentDiagnosticReport.Unchanged, uri, version) { ResultId = id }
            : new WorkspaceDocumentDiagnosticReport(DocumentDiagnosticReport.Full, uri, version) { ResultId = id, Items = DiagnosticMapper.All(session, file) };
    }

    /// <summary>Says the same as long as the texts, the day and the settings do, so nothing needs to be kept between requests.</summary>
    private static string ResultId(Session session, CompiledFile file)
    {
        var hash = new HashCode();
        foreach (var text in file.RestsOn)
        {
            hash.Add(text.Name, StringComparer.Ordinal);
            hash.Add(text.Text, StringComparer.Ordinal);
        }

        hash.Add(session.Today);
        hash.Add(session.Settings.Documentation, StringComparer.Ordinal);
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{file.Revision}-{hash.ToHashCode():x8}");
    }
}
