using Recipe.Compiler;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;
using Recipe.Text;

namespace Recipe.LanguageServer.Features;

/// <summary>
/// Sends the findings of open documents. A client that asks for findings by itself is sent none, so that it does not show each twice.
/// </summary>
internal static class PushDiagnostics
{
    /// <summary>Findings of the documents that rest on a text that changed; of all open ones when no text is named.</summary>
    public static void After(Session session, string? changed)
    {
        if (session.Client.TextDocument?.Diagnostic is not null)
        {
            return;
        }

        foreach (var document in session.Documents.Open.ToList())
        {
            if (changed is null || document.Name == changed || RestsOn(session, document, changed))
            {
                Send(session, document);
            }
        }
    }

    /// <summary>
    /// What is wrong in files of rules in C# that a text rests on, where it stands in them. They are no documents of ours, so every client is sent it,
    /// and nothing when all is well, so that what was shown before goes.
    /// </summary>
    public static void OfRuleFiles(Session session, CompiledFile file)
    {
        foreach (var text in file.RestsOn.Where(text => text.Text is not null && FileEndings.IsCodedRules(text.Name)))
        {
            var faults = file.Findings.SelectMany(finding => finding.Labels
                .Where(label => label.Where.Source.Name == text.Name)
                .Select(label => DiagnosticMapper.One(session, finding with { Where = label.Where, Labels = [], Fixes = [] })));
            Publish(session, new PublishDiagnosticsParams(session.Documents.UriOf(text.Name), [.. faults]));
        }
    }

    /// <summary>A document was closed: its findings go.</summary>
    public static void Clear(Session session, string uri)
    {
        if (session.Client.TextDocument?.Diagnostic is null)
        {
            Publish(session, new PublishDiagnosticsParams(uri, []));
        }
    }

    private static bool RestsOn(Session session, OpenDocument document, string changed) =>
        session.TryCompile(document.Name) is { } file && file.RestsOn.Any(text => text.Name == changed);

    private static void Send(Session session, OpenDocument document)
    {
        if (session.TryCompile(document.Name) is { } file)
        {
            Publish(session, new PublishDiagnosticsParams(document.Uri, DiagnosticMapper.All(session, file)) { Version = document.Version });
            OfRuleFiles(session, file);
        }
    }

    private static void Publish(Session session, PublishDiagnosticsParams findings) =>
        session.Writer.Notification("textDocument/publishDiagnostics", findings, ProtocolJson.Default.PublishDiagnosticsParams);
}
