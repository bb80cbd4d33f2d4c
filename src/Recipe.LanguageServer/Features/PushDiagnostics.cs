using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;

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
        }
    }

    private static void Publish(Session session, PublishDiagnosticsParams findings) =>
        session.Writer.Notification("textDocument/publishDiagnostics", findings, ProtocolJson.Default.PublishDiagnosticsParams);
}
