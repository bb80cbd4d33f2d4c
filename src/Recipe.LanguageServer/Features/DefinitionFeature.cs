using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/definition</c>. What the shipped book declares is shown in a copy that cannot be changed.</summary>
internal sealed class DefinitionFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.DefinitionProvider = true;
        router.Request("textDocument/definition", ProtocolJson.Default.TextDocumentPositionParams, ProtocolJson.Default.Location, p =>
        {
            var file = session.Compile(p.TextDocument);
            return Navigation.Definition(file, session.Offset(file, p.Position)) is not { } where ? null
                : !BookTexts.IsOne(where.Source.Name) ? session.LocationOf(where)
                : session.Book.PathOf(where.Source) is { } copy ? new Location(session.Documents.UriOf(copy), session.Positions.Range(where))
                : null;
        });
    }
}
