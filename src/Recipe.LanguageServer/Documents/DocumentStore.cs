using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.LanguageServer.Protocol;
using Recipe.LanguageServer.Transport;
using Recipe.RuleProtocol;
using Recipe.Text;

namespace Recipe.LanguageServer.Documents;

/// <summary>The documents that are open, and behind them the disk: where the compiler gets its texts from.</summary>
/// <param name="rules">Runs rules in C#; null where nobody can.</param>
internal sealed class DocumentStore(IRuleRunner? rules = null) : IFileStore
{
    /// <summary>The largest file of a shape: an editor that shows a line of text should not hold more for it.</summary>
    public const long LargestShape = 256L * 1024 * 1024;

    private readonly Dictionary<string, OpenDocument> _open = new(StringComparer.Ordinal);
    private readonly DiskTexts _disk = new();
    private readonly DiskKept<ShapeBytes> _shapes = new(LargestShape, static (name, bytes) => new ShapeBytes(name, bytes));

    /// <summary>The unit of columns; agreed upon once, before any document is opened.</summary>
    public Positions Positions { get; set; } = new(PositionEncoding.Utf16);

    /// <summary>All open documents, in order of name.</summary>
    public IEnumerable<OpenDocument> Open => _open.Values.OrderBy(document => document.Name, StringComparer.Ordinal);

    /// <summary>Opens a document; one that is open already gets the new text.</summary>
    public OpenDocument Add(TextDocumentItem item)
    {
        var name = DocumentNames.FromUri(item.Uri);
        return _open[name] = new OpenDocument(item.Uri, item.Version, new SourceText(name, item.Text));
    }

    /// <summary>Changes an open document.</summary>
    /// <exception cref="RpcException">It is not open.</exception>
    public OpenDocument Change(DidChangeTextDocumentParams change)
    {
        var name = DocumentNames.FromUri(change.TextDocument.Uri);
        if (!_open.TryGetValue(name, out var document))
        {
            throw new RpcException(ErrorCode.InvalidParams, $"{change.TextDocument.Uri} is not open.");
        }

        return _open[name] = document.With(change.TextDocument.Version, change.ContentChanges, Positions);
    }

    /// <summary>Closes a document; the name it had, or null when it was not open.</summary>
    public string? Close(string uri)
    {
        var name = DocumentNames.FromUri(uri);
        return _open.Remove(name) ? name : null;
    }

    /// <summary>The open document with this name.</summary>
    public OpenDocument? Find(string name) => _open.GetValueOrDefault(name);

    /// <summary>The URI of a text: the client's own for one that is open.</summary>
    public string UriOf(string name) => Find(name)?.Uri ?? DocumentNames.ToUri(name);

    public IRuleRunner? Rules => rules;

    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        text = Find(name)?.Text.Text;
        return text is not null || _disk.TryRead(name, out text);
    }

    /// <summary>The file of a shape, which no editor opens as a text.</summary>
    public ShapeBytes? ShapeOf(string name) => _shapes.Find(name);

    /// <summary>What stands in a folder on disk, and what is open as if it stood there.</summary>
    public IEnumerable<string> RecipesIn(string folder) =>
        DiskTexts.RecipesIn(folder).Union(_open.Keys.Where(name => PathNames.FolderOf(name) == folder)).Order(StringComparer.Ordinal);
}
