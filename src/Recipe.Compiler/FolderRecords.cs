using System.Collections.Concurrent;
using System.Collections.Immutable;
using Recipe.Planning;
using Recipe.Syntax;

namespace Recipe.Compiler;

/// <summary>
/// The build records that stand in one folder: one serial to a file, and the part before is in the next file. They are gathered once for a
/// workspace, and not once for each file of the folder, which took a time that grows with the square of the files.
/// </summary>
/// <param name="files">Where texts come from.</param>
/// <param name="treeOf">The tree of a text, or null when there is none.</param>
/// <param name="buildsOf">The records of a text.</param>
internal sealed class FolderRecords(IFileStore files, Func<string, SyntaxTree?> treeOf, Func<SyntaxTree, ImmutableArray<LoggedBuild>> buildsOf)
{
    private readonly ConcurrentDictionary<string, Lazy<ImmutableArray<SyntaxTree>>> _holders = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<(ImmutableArray<TextUsed> Texts, HashSet<string> Names)>> _texts = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<ImmutableArray<BuildLog>>> _logs = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<SyntaxTree, Lazy<ImmutableArray<LoggedBuild>>> _builds = new(ReferenceEqualityComparer.Instance);

    /// <summary>The texts of a folder that hold records, in the order of the store.</summary>
    public ImmutableArray<SyntaxTree> Holders(string folder) => _holders.GetOrAdd(
        folder,
        at => new Lazy<ImmutableArray<SyntaxTree>>(() => [.. files.RecipesIn(at).Select(PathNames.Normalize).Select(treeOf).OfType<SyntaxTree>().Where(tree => TreeFacts.Of(tree).HoldsBuilds)])).Value;

    /// <summary>What a text rests on, with the texts of its folder that hold records: those change what is found in its records, and no part.</summary>
    public ImmutableArray<TextUsed> With(string folder, ImmutableArray<TextUsed> restsOn)
    {
        var (texts, names) = _texts.GetOrAdd(
            folder,
            at => new Lazy<(ImmutableArray<TextUsed>, HashSet<string>)>(() => ([.. Holders(at).Select(tree => TreeFacts.Of(tree).AsUsed)], Holders(at).Select(tree => tree.Source.Name).ToHashSet(StringComparer.Ordinal)))).Value;
        return [.. restsOn.Where(text => !names.Contains(text.Name)), .. texts];
    }

    /// <summary>The records of a text.</summary>
    public ImmutableArray<LoggedBuild> Of(SyntaxTree tree) => TreeFacts.Of(tree).HoldsBuilds
        ? _builds.GetOrAdd(tree, key => new Lazy<ImmutableArray<LoggedBuild>>(() => buildsOf(key))).Value
        : [];

    /// <summary>The logs of all parts that records of a text or of those beside it are about.</summary>
    public ImmutableArray<BuildLog> LogsWith(SyntaxTree tree)
    {
        var folder = PathNames.FolderOf(tree.Source.Name);
        return Holders(folder).Contains(tree)
            ? _logs.GetOrAdd(folder, at => new Lazy<ImmutableArray<BuildLog>>(() => BuildLog.Of(Holders(at).SelectMany(other => Of(other))))).Value
            : BuildLog.Of(Of(tree).Concat(Holders(folder).Where(other => other.Source.Name != tree.Source.Name).SelectMany(other => Of(other))));
    }
}
