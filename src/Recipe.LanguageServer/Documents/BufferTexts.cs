using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.RuleProtocol;

namespace Recipe.LanguageServer.Documents;

/// <summary>What is open in the editor, and behind it the disk, for a reader on another thread: the documents themselves belong to the thread of the protocol.</summary>
/// <param name="open">Names and texts of what is open.</param>
/// <param name="rules">Runs rules in C#; null where nobody can.</param>
internal sealed class BufferTexts(IEnumerable<(string Name, string Text)> open, IRuleRunner? rules) : IFileStore
{
    private readonly ConcurrentDictionary<string, string> _open = new(open.Select(text => KeyValuePair.Create(text.Name, text.Text)), StringComparer.Ordinal);
    private readonly DiskTexts _disk = new();
    private readonly DiskKept<ShapeBytes> _shapes = new(DocumentStore.LargestShape, static (name, bytes) => new ShapeBytes(name, bytes));

    /// <summary>A text is this now; null when it is open no more.</summary>
    public void Set(string name, string? text)
    {
        if (text is null)
        {
            _open.TryRemove(name, out _);
        }
        else
        {
            _open[name] = text;
        }
    }

    public IRuleRunner? Rules => rules;

    public bool TryRead(string name, [NotNullWhen(true)] out string? text) => _open.TryGetValue(name, out text) || _disk.TryRead(name, out text);

    public ShapeBytes? ShapeOf(string name) => _shapes.Find(name);

    public IEnumerable<string> RecipesIn(string folder) =>
        DiskTexts.RecipesIn(folder).Union(_open.Keys.Where(name => PathNames.FolderOf(name) == folder)).Order(StringComparer.Ordinal);
}
