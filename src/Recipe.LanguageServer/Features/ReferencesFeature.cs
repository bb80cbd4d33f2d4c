using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/references</c>, in all files of the workspace.</summary>
internal sealed class ReferencesFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.ReferencesProvider = true;
        router.Request("textDocument/references", ProtocolJson.Default.ReferenceParams, ProtocolJson.Default.LocationArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            return
            [
                .. Navigation.References(session.CompileAll(), file, session.Offset(file, p.Position), p.Context.IncludeDeclaration)
                    .Where(where => !BookTexts.IsOne(where.Source.Name))
                    .Select(session.LocationOf),
            ];
        });
    }
}
