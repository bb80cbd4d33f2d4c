using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/hover</c>.</summary>
internal sealed class HoverFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.HoverProvider = true;
        router.Request("textDocument/hover", ProtocolJson.Default.TextDocumentPositionParams, ProtocolJson.Default.Hover, p =>
        {
            var file = session.Compile(p.TextDocument);
            return Hovers.At(file, session.Offset(file, p.Position)) is { } hover
                ? new Protocol.Hover(Session.Markup(hover.Markdown, session.Client.TextDocument?.Hover?.ContentFormat)) { Range = session.RangeOf(file, hover.Where) }
                : null;
        });
    }
}
