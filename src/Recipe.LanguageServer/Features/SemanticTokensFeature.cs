using System.Globalization;
using Recipe.Compiler;
using Recipe.Editing;
using Recipe.LanguageServer.Protocol;
using Recipe.Text;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/semanticTokens</c>: colours of a document, of a range, and what changed since last time.</summary>
internal sealed class SemanticTokensFeature : IFeature
{
    // Names that every editor's themes know, in the order of TokenRole.
    private static readonly string[] Types =
        ["keyword", "property", "variable", "type", "enumMember", "number", "unit", "string", "comment", "operator"];

    private static readonly string[] Modifiers = ["declaration", "defaultLibrary"];

    // The one thing kept between requests: what a client was told last of each document, so that it can be told the difference.
    private readonly Dictionary<string, (string Id, int[] Data)> _last = new(StringComparer.Ordinal);
    private long _lastId;

    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.SemanticTokensProvider = new SemanticTokensOptions(new SemanticTokensLegend(Types, Modifiers))
        {
            Range = true,
            Full = new SemanticTokensFullDelta { Delta = true },
        };
        router.Request("textDocument/semanticTokens/full", ProtocolJson.Default.DocumentParams, ProtocolJson.Default.SemanticTokens, p =>
            Remember(p.TextDocument.Uri, DataOf(session, session.Compile(p.TextDocument), null)));
        router.Request("textDocument/semanticTokens/range", ProtocolJson.Default.DocumentRangeParams, ProtocolJson.Default.SemanticTokens, p =>
        {
            var file = session.Compile(p.TextDocument);
            return new SemanticTokens(DataOf(session, file, session.Positions.Span(file.Source, p.Range)));
        });
        router.Request("textDocument/semanticTokens/full/delta", ProtocolJson.Default.SemanticTokensDeltaParams, ProtocolJson.Default.SemanticTokensDeltaResult, p =>
        {
            var known = _last.GetValueOrDefault(p.TextDocument.Uri);
            var now = Remember(p.TextDocument.Uri, DataOf(session, session.Compile(p.TextDocument), null));

            // An id that is not the last one gets all of the colours.
            return known.Id == p.PreviousResultId
                ? new SemanticTokensDeltaResult { ResultId = now.ResultId, Edits = Difference(known.Data, now.Data) }
                : new SemanticTokensDeltaResult { ResultId = now.ResultId, Data = now.Data };
        });
    }

    private SemanticTokens Remember(string uri, int[] data)
    {
        var id = (++_lastId).ToString(CultureInfo.InvariantCulture);
        _last[uri] = (id, data);
        return new SemanticTokens(data) { ResultId = id };
    }

    private static int[] DataOf(Session session, CompiledFile file, TextSpan? range)
    {
        var source = file.Source;
        var data = new List<int>();
        var (line, column) = (0, 0);
        foreach (var token in Colouring.Of(file, range ?? new TextSpan(0, source.Length)))
        {
            var start = session.Positions.Position(source, token.Where.Start);
            data.Add(start.Line - line);
            data.Add(start.Line == line ? start.Character - column : start.Character);
            data.Add(session.Positions.Length(source, token.Where));
            data.Add((int)token.Role);
            data.Add((token.IsDeclaration ? 1 : 0) | (token.FromBook ? 2 : 0));
            (line, column) = (start.Line, start.Character);
        }

        return [.. data];
    }

    /// <summary>What lies between the numbers that are the same at the beginning and at the end.</summary>
    private static SemanticTokensEdit[] Difference(int[] before, int[] after)
    {
        var start = before.AsSpan().CommonPrefixLength(after);
        if (start == before.Length && start == after.Length)
        {
            return [];
        }

        var end = 0;
        while (end < Math.Min(before.Length, after.Length) - start && before[^(end + 1)] == after[^(end + 1)])
        {
            end++;
        }

        return [new SemanticTokensEdit(start, before.Length - start - end) { Data = after[start..^end] }];
    }
}
