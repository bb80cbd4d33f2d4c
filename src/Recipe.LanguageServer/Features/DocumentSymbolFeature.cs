using Recipe.Compiler;
using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/documentSymbol</c>: the outline.</summary>
internal sealed class DocumentSymbolFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.DocumentSymbolProvider = true;
        if (session.Client.TextDocument?.DocumentSymbol?.HierarchicalDocumentSymbolSupport == true)
        {
            router.Request("textDocument/documentSymbol", ProtocolJson.Default.DocumentParams, ProtocolJson.Default.DocumentSymbolArray, p =>
            {
                var file = session.Compile(p.TextDocument);
                return [.. Outline.Of(file).Select(symbol => Nested(session, file, symbol))];
            });
        }
        else
        {
            router.Request("textDocument/documentSymbol", ProtocolJson.Default.DocumentParams, ProtocolJson.Default.SymbolInformationArray, p =>
            {
                var file = session.Compile(p.TextDocument);
                return [.. Outline.Of(file).SelectMany(symbol => Flat(session, file, symbol, null))];
            });
        }
    }

    private static DocumentSymbol Nested(Session session, CompiledFile file, Symbol symbol) => new(
        symbol.Name, SymbolKinds.Number(symbol.Kind), session.RangeOf(file, symbol.Span), session.RangeOf(file, symbol.NameSpan))
    {
        Detail = symbol.Detail.Length == 0 ? null : symbol.Detail,
        Children = symbol.Children.IsEmpty ? null : [.. symbol.Children.Select(child => Nested(session, file, child))],
    };

    /// <summary>For a client without nesting: each symbol with the name of what it stands in.</summary>
    private static IEnumerable<SymbolInformation> Flat(Session session, CompiledFile file, Symbol symbol, string? within)
    {
        yield return new SymbolInformation(
            symbol.Name,
            SymbolKinds.Number(symbol.Kind),
            new Location(session.Documents.UriOf(file.Source.Name), session.RangeOf(file, symbol.Span)))
        { ContainerName = within };
        foreach (var below in symbol.Children.SelectMany(child => Flat(session, file, child, symbol.Name)))
        {
            yield return below;
        }
    }
}
