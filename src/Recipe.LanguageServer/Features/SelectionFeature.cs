using Recipe.Compiler;
using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/selectionRange</c>: from a word outwards to the file.</summary>
internal sealed class SelectionFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.SelectionRangeProvider = true;
        router.Request("textDocument/selectionRange", ProtocolJson.Default.SelectionRangeParams, ProtocolJson.Default.SelectionRangeArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            return [.. p.Positions.Select(position => Around(session, file, position))];
        });
    }

    private static SelectionRange Around(Session session, CompiledFile file, Position position)
    {
        SelectionRange? outer = null;
        foreach (var span in Selections.Around(file, session.Offset(file, position)).Reverse())
        {
            outer = new SelectionRange(session.RangeOf(file, span)) { Parent = outer };
        }

        // The protocol wants an answer for each place.
        return outer ?? new SelectionRange(new Protocol.Range(position, position));
    }
}
