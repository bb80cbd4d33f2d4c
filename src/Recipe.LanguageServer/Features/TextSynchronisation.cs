using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer.Features;

/// <summary>Documents are opened, changed and closed; findings follow.</summary>
internal sealed class TextSynchronisation : IFeature
{
    private const string Change = "textDocument/didChange";

    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.TextDocumentSync = new TextDocumentSyncOptions { OpenClose = true, Change = TextDocumentSyncOptions.Incremental, Save = true };
        router.Notification("textDocument/didOpen", ProtocolJson.Default.DidOpenTextDocumentParams, p =>
        {
            var document = session.Documents.Add(p.TextDocument);
            session.Previews.Follow(document.Name, document.Text.Text);
            PushDiagnostics.After(session, document.Name);
        });
        router.Notification(Change, ProtocolJson.Default.DidChangeTextDocumentParams, p =>
        {
            var document = session.Documents.Change(p);
            if (!IsChangedAgain(session.Connection, document.Uri))
            {
                session.Previews.Follow(document.Name, document.Text.Text);
                PushDiagnostics.After(session, document.Name);
            }
        });
        router.Notification("textDocument/didSave", ProtocolJson.Default.DidSaveTextDocumentParams, p =>
            PushDiagnostics.After(session, DocumentNames.FromUri(p.TextDocument.Uri)));
        router.Notification("textDocument/didClose", ProtocolJson.Default.DidCloseTextDocumentParams, p =>
        {
            if (session.Documents.Close(p.TextDocument.Uri) is { } name)
            {
                session.Forget(name);
                session.Previews.Follow(name, null);
                PushDiagnostics.Clear(session, p.TextDocument.Uri);
                PushDiagnostics.After(session, name);
            }
        });
    }

    /// <summary>Findings of a text that will be another one in a moment help nobody.</summary>
    private static bool IsChangedAgain(Connection connection, string uri) => connection.IsWaiting(message =>
        message is { Kind: MessageKind.Notification, Method: Change }
        && DocumentOf(message) == uri);

    private static string? DocumentOf(Message message)
    {
        try
        {
            return Router.Read(message, ProtocolJson.Default.DidChangeTextDocumentParams).TextDocument.Uri;
        }
        catch (RpcException)
        {
            return null;
        }
    }
}
