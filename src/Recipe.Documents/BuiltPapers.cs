using System.Collections.Concurrent;
using Recipe.Documents.Layout;

namespace Recipe.Documents;

/// <summary>
/// The papers of one part, each built the first time that somebody asks for it and then the same for all: the cover counts the stations
/// of the others. Several threads may ask.
/// </summary>
internal sealed class BuiltPapers
{
    private readonly ConcurrentDictionary<PaperKind, Lazy<Document>> _documents = new();
    private readonly PaperInput _input;

    public BuiltPapers(PaperInput input) => _input = input with { Together = this };

    /// <summary>The paper of that kind.</summary>
    public Document Of(PaperKind kind) => _documents.GetOrAdd(kind, wanted => new Lazy<Document>(() => wanted.Build(_input))).Value;
}
