using Recipe.Compiler;
using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>workspace/symbol</c>: what the files declare, by name.</summary>
internal sealed class WorkspaceSymbolFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.WorkspaceSymbolProvider = true;
        router.Request("workspace/symbol", ProtocolJson.Default.WorkspaceSymbolParams, ProtocolJson.Default.SymbolInformationArray, (p, token) =>
        {
            var found = new List<SymbolInformation>();
            foreach (var file in session.CompileAll())
            {
                token.ThrowIfCancellationRequested();
                found.AddRange(Outline.Of(file)
                    .Where(symbol => symbol.Kind is not SymbolKind.Other && Matches(symbol.Name, p.Query))
                    .Select(symbol => Map(session, file, symbol)));
            }

            return [.. found];
        });
    }

    private static SymbolInformation Map(Session session, CompiledFile file, Symbol symbol) => new(
        symbol.Name,
        SymbolKinds.Number(symbol.Kind),
        new Location(session.Documents.UriOf(file.Source.Name), session.RangeOf(file, symbol.NameSpan)))
    {
        ContainerName = PathNames.FileName(file.Source.Name),
    };

    /// <summary>The letters of the query come in the name, in their order: clients narrow further.</summary>
    private static bool Matches(string name, string query)
    {
        var at = 0;
        foreach (var letter in query)
        {
            at = name.IndexOf(letter.ToString(), at, StringComparison.OrdinalIgnoreCase) + 1;
            if (at == 0)
            {
                return false;
            }
        }

        return true;
    }
}
