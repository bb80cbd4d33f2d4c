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
    private readonly ConcurrentDictionary<string, Lazy<Folder>> _folders = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<SyntaxTree, Lazy<ImmutableArray<LoggedBuild>>> _builds = new(ReferenceEqualityComparer.Instance);

    /// <summary>What a text rests on, with the texts of its folder that hold records: those change what is found in its records, and no part.</summary>
    public ImmutableArray<TextUsed> With(SyntaxTree tree, ImmutableArray<TextUsed> restsOn)
    {
        var folder = FolderOf(tree);
        return [.. restsOn.Where(text => !folder.Holders.ContainsKey(text.Name)), .. folder.Texts];
    }

    /// <summary>The records of a text.</summary>
    public ImmutableArray<LoggedBuild> Of(SyntaxTree tree) => TreeFacts.Of(tree).HoldsBuilds
        ? _builds.GetOrAdd(tree, key => new Lazy<ImmutableArray<LoggedBuild>>(() => buildsOf(key))).Value
        : [];

    /// <summary>The logs of all parts that records of a text or of those beside it are about.</summary>
    public ImmutableArray<BuildLog> LogsWith(SyntaxTree tree)
    {
        var folder = FolderOf(tree);
        return folder.Holders.GetValueOrDefault(tree.Source.Name) == tree
            ? folder.Logs
            : BuildLog.Of(Of(tree).Concat(folder.Holders.Values.Where(other => other.Source.Name != tree.Source.Name).SelectMany(other => Of(other))));
    }

    private Folder FolderOf(SyntaxTree tree) => _folders.GetOrAdd(
        PathNames.FolderOf(tree.Source.Name),
        at => new Lazy<Folder>(() => new Folder(
            [.. files.RecipesIn(at).Select(PathNames.Normalize).Distinct(StringComparer.Ordinal).Select(treeOf).OfType<SyntaxTree>().Where(holder => TreeFacts.Of(holder).HoldsBuilds)],
            Of))).Value;

    /// <summary>One folder: the texts that hold records, and what comes of them.</summary>
    private sealed class Folder(ImmutableArray<SyntaxTree> holders, Func<SyntaxTree, ImmutableArray<LoggedBuild>> buildsOf)
    {
        private readonly Lazy<ImmutableArray<BuildLog>> _logs = new(() => BuildLog.Of(holders.SelectMany(holder => buildsOf(holder))));

        public Dictionary<string, SyntaxTree> Holders { get; } = holders.ToDictionary(holder => holder.Source.Name, StringComparer.Ordinal);

        public ImmutableArray<TextUsed> Texts { get; } = [.. holders.Select(holder => TreeFacts.Of(holder).AsUsed)];

        public ImmutableArray<BuildLog> Logs => _logs.Value;
    }
}
