using Recipe.Compiler;
using Recipe.Compiler.Comparing;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;
using Recipe.LanguageServer.Transport;
using Recipe.RuleProtocol;
using Recipe.Text;
using Range = Recipe.LanguageServer.Protocol.Range;

namespace Recipe.LanguageServer;

/// <summary>What features work with: the documents, the compiler, what the client can do, and the way to it.</summary>
internal sealed class Session(Connection connection, Func<DateOnly> today, IRuleRunner? rules = null)
{
    private LiveWorkspace? _live;

    public Connection Connection { get; } = connection;

    public MessageWriter Writer => Connection.Writer;

    public DocumentStore Documents { get; } = new(rules);

    /// <summary>The shipped book where an editor can open it.</summary>
    public BookCopies Book { get; init; } = new(null);

    public WorkspaceFiles Files { get; } = new();

    public Settings Settings { get; } = new();

    public ClientCapabilities Client { get; set; } = new();

    public Positions Positions => Documents.Positions;

    public DateOnly Today => today();

    /// <summary>Opens the texts of the last commit of the repository of a folder; null where nothing can be compared.</summary>
    public Func<string, OpenedRevision>? LastCommit { get; init; }

    /// <summary>The pages that follow documents.</summary>
    public Previews Previews => field ??= new Previews(today, LastCommit);

    // The book is read at the first question, not while the client waits for the answer to `initialize`.
    private LiveWorkspace Live => _live ??= new LiveWorkspace(Documents);

    /// <summary>The file that a document is, compiled as it is now.</summary>
    /// <exception cref="RpcException">There is no such file.</exception>
    public CompiledFile Compile(TextDocumentIdentifier document) =>
        Live.Compile(DocumentNames.FromUri(document.Uri), Today)
        ?? throw new RpcException(ErrorCode.InvalidParams, $"{document.Uri} is not open and cannot be read.");

    /// <summary>The same by name; null when it is not there.</summary>
    public CompiledFile? TryCompile(string name) => Live.Compile(name, Today);

    /// <summary>Every file of the workspace and every open one, compiled, in order of name.</summary>
    public IReadOnlyList<CompiledFile> CompileAll()
    {
        var names = Files.Names().Concat(Documents.Open.Select(document => document.Name)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        return [.. Live.CompileAll([.. names], Today).OfType<CompiledFile>()];
    }

    /// <summary>Frees what is held of a file.</summary>
    public void Forget(string name) => Live.Forget(name);

    public int Offset(CompiledFile file, Position position) => Positions.Offset(file.Source, position);

    public Range RangeOf(CompiledFile file, TextSpan span) => Positions.Range(file.Source, span);

    public Location LocationOf(SourceSpan where) => new(Documents.UriOf(where.Source.Name), Positions.Range(where));

    /// <summary>The edits of several texts as the client wants to have them.</summary>
    public WorkspaceEdit EditOf(IEnumerable<Text.Findings.TextEdit> edits)
    {
        var byText = edits.GroupBy(edit => edit.Where.Source.Name).OrderBy(group => group.Key, StringComparer.Ordinal);
        return Client.Workspace?.WorkspaceEdit?.DocumentChanges == true
            ? new WorkspaceEdit
            {
                DocumentChanges =
                [
                    .. byText.Select(text => new TextDocumentEdit(
                        new OptionalVersionedTextDocumentIdentifier(Documents.UriOf(text.Key), Documents.Find(text.Key)?.Version),
                        EditsOf(text))),
                ],
            }
            : new WorkspaceEdit { Changes = byText.ToDictionary(text => Documents.UriOf(text.Key), EditsOf) };
    }

    public TextEdit[] EditsOf(IEnumerable<Text.Findings.TextEdit> edits) =>
        [.. edits.Select(edit => new TextEdit(Positions.Range(edit.Where), edit.NewText))];

    /// <summary>Text for people in the kind that the client can show.</summary>
    public static MarkupContent Markup(string markdown, string[]? kinds) =>
        new(kinds is null or [] || kinds.Contains(MarkupContent.Markdown) ? MarkupContent.Markdown : MarkupContent.PlainText, markdown);
}
