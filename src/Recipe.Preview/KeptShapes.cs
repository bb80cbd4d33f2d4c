using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.RuleProtocol;

namespace Recipe.Preview;

/// <summary>Other files, of which the files of shapes are read again only when their size or time of writing is another: texts are small, scans are not.</summary>
internal sealed class KeptShapes(IFileStore below) : IFileStore
{
    private readonly Dictionary<string, ((long Size, DateTime Written) Seen, ShapeBytes? Bytes)> _known = new(StringComparer.Ordinal);
    private readonly Lock _gate = new();

    public bool TryRead(string name, [NotNullWhen(true)] out string? text) => below.TryRead(name, out text);

    public IEnumerable<string> RecipesIn(string folder) => below.RecipesIn(folder);

    public IRuleRunner? Rules => below.Rules;

    public string? FolderAbove(string folder) => below.FolderAbove(folder);

    public ShapeBytes? ShapeOf(string name)
    {
        var file = new FileInfo(name);
        var seen = file.Exists ? (file.Length, file.LastWriteTimeUtc) : (-1, default);
        lock (_gate)
        {
            if (!_known.TryGetValue(name, out var known) || known.Seen != seen)
            {
                _known[name] = known = (seen, below.ShapeOf(name));
            }

            return known.Bytes;
        }
    }
}
