using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/documentHighlight</c>.</summary>
internal sealed class HighlightFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.DocumentHighlightProvider = true;
        router.Request("textDocument/documentHighlight", ProtocolJson.Default.TextDocumentPositionParams, ProtocolJson.Default.DocumentHighlightArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            return
            [
                .. Navigation.Highlights(file, session.Offset(file, p.Position)).Select(place =>
                    new DocumentHighlight(session.RangeOf(file, place.Where)) { Kind = place.IsWrite ? DocumentHighlight.Write : DocumentHighlight.Read }),
            ];
        });
    }
}
