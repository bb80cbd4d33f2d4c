using System.Text.RegularExpressions;
using Recipe.Compiler;
using Recipe.Editing;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/completion</c>, and the documentation of an entry by <c>completionItem/resolve</c>.</summary>
internal sealed partial class CompletionFeature : IFeature
{
    // The protocol's numbers for kinds of entries.
    private const int Module = 9;
    private const int Property = 10;
    private const int UnitKind = 11;
    private const int EnumKind = 13;
    private const int Keyword = 14;
    private const int SnippetKind = 15;
    private const int Reference = 18;

    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.CompletionProvider = new CompletionOptions { ResolveProvider = true, TriggerCharacters = [" ", "\"", "/"] };
        router.Request("textDocument/completion", ProtocolJson.Default.TextDocumentPositionParams, ProtocolJson.Default.CompletionList, p =>
        {
            var file = session.Compile(p.TextDocument);
            var items = Completion.At(file, session.Offset(file, p.Position));
            return new CompletionList(IsIncomplete: false, [.. items.Select(item => Map(session, file, item, p.TextDocument.Uri))]);
        });
        router.Request("completionItem/resolve", ProtocolJson.Default.CompletionItem, ProtocolJson.Default.CompletionItem, item =>
            item.Data is { } data && Completion.Doc(session.TryCompile(DocumentNames.FromUri(data.Uri)), data.Key) is { } page
                ? item with { Documentation = Session.Markup(page, session.Client.TextDocument?.Completion?.CompletionItem?.DocumentationFormat) }
                : item);
    }

    private static Protocol.CompletionItem Map(Session session, CompiledFile file, Editing.CompletionItem item, string uri)
    {
        var takesSnippets = session.Client.TextDocument?.Completion?.CompletionItem?.SnippetSupport == true;
        var text = item.IsSnippet && !takesSnippets ? WithoutPlaces(item.NewText) : item.NewText;
        return new Protocol.CompletionItem(item.Label)
        {
            Kind = KindOf(item.Kind),
            Detail = item.Detail,
            SortText = item.SortKey,
            FilterText = item.Label,
            InsertTextFormat = item.IsSnippet && takesSnippets ? Protocol.CompletionItem.Snippet : null,
            TextEdit = new TextEdit(session.RangeOf(file, item.Replaces), text),
            Data = item.DocKey is { } key ? new CompletionData(uri, key) : null,
        };
    }

    private static int KindOf(CompletionKind kind) => kind switch
    {
        CompletionKind.Word => Keyword,
        CompletionKind.Clause => Property,
        CompletionKind.Name => Reference,
        CompletionKind.Material => Module,
        CompletionKind.Unit => UnitKind,
        CompletionKind.Choice => EnumKind,
        _ => SnippetKind,
    };

    /// <summary>A snippet for an editor that knows none: the words of its places stay, the places go.</summary>
    private static string WithoutPlaces(string snippet) =>
        Place().Replace(snippet, place => place.Groups["text"].Value).Replace("\\$", "$", StringComparison.Ordinal).Replace("\\}", "}", StringComparison.Ordinal);

    [GeneratedRegex(@"(?<!\\)\$(?:[0-9]+|\{[0-9]+(?::(?<text>[^}]*))?\})", RegexOptions.ExplicitCapture)]
    private static partial Regex Place();
}
