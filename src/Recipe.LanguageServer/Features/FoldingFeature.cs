using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/foldingRange</c>.</summary>
internal sealed class FoldingFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.FoldingRangeProvider = true;
        var linesOnly = session.Client.TextDocument?.FoldingRange?.LineFoldingOnly == true;
        router.Request("textDocument/foldingRange", ProtocolJson.Default.DocumentParams, ProtocolJson.Default.FoldingRangeArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            var folds = new List<FoldingRange>();
            foreach (var fold in Folding.Of(file))
            {
                var range = session.RangeOf(file, fold.Span);

                // Whole lines fold away: the closing brace keeps its line.
                var end = linesOnly && fold.Kind == FoldKind.Block ? range.End.Line - 1 : range.End.Line;
                if (end > range.Start.Line)
                {
                    folds.Add(new FoldingRange(range.Start.Line, end)
                    {
                        StartCharacter = linesOnly ? null : range.Start.Character,
                        EndCharacter = linesOnly ? null : range.End.Character,
                        Kind = fold.Kind == FoldKind.Comment ? "comment" : "region",
                    });
                }
            }

            return [.. folds];
        });
    }
}
