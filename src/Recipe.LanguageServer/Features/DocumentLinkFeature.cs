using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/documentLink</c>: from a <c>use</c> line to the file.</summary>
internal sealed class DocumentLinkFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.DocumentLinkProvider = new DocumentLinkOptions { ResolveProvider = false };
        router.Request("textDocument/documentLink", ProtocolJson.Default.DocumentParams, ProtocolJson.Default.DocumentLinkArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            return [.. Links.Of(file).Select(link => new DocumentLink(session.RangeOf(file, link.Where)) { Target = session.Documents.UriOf(link.Target) })];
        });
    }
}
