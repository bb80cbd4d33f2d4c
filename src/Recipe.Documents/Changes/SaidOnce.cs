using System.Collections.Immutable;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Changes;

/// <summary>A file in two versions as a reader wants it: a line of a file that several use is said once.</summary>
/// <param name="File">The file, without the lines that are said elsewhere.</param>
/// <param name="Reaches">The other files that have the lines of this one too, because they use it.</param>
/// <param name="OfUsed">Lines of files that are not compared themselves, by the file, with the files beside this one that use it too.</param>
internal sealed record FileToSay(ComparedFile File, ImmutableArray<string> Reaches, ImmutableArray<(string Name, ImmutableArray<WrittenChange> Lines, ImmutableArray<string> UsedBy)> OfUsed);

/// <summary>
/// Files that use one changed file all have its lines among theirs. A review that repeats them for each hides what else changed; so they stand at the
/// file they were written in, or at the first that uses it, with the names of the others.
/// </summary>
internal static class SaidOnce
{
    private const int MostNames = 4;

    /// <summary>The files that differ, each line at one of them.</summary>
    public static ImmutableArray<FileToSay> Of(IReadOnlyList<ComparedFile> files)
    {
        var changed = files.Where(file => !file.IsSame).ToArray();
        var compared = changed.Select(file => file.Name).ToHashSet(StringComparer.Ordinal);
        var said = new HashSet<string>(StringComparer.Ordinal);

        // What somebody wrote comes before what it does elsewhere.
        return [.. changed.Select(file => Of(file, changed, compared, said)).OrderBy(file => file.File.Lines.IsEmpty)];
    }

    /// <summary>One file alone: all of its lines are said.</summary>
    public static FileToSay Of(ComparedFile file) => Of([file]) is [var one] ? one : new(file, [], []);

    /// <summary>"a.recipe, b.recipe and 7 more".</summary>
    public static string Names(ImmutableArray<string> names) => names.Length <= MostNames + 1
        ? names.Length < 2 ? string.Concat(names) : string.Join(", ", names[..^1]) + " and " + names[^1]
        : string.Join(", ", names[..MostNames]) + $" and {Numbers.Whole(names.Length - MostNames)} more";

    private static FileToSay Of(ComparedFile file, ComparedFile[] changed, HashSet<string> compared, HashSet<string> said)
    {
        var own = file.Lines.Where(line => IsOwn(line, file)).ToImmutableArray();
        var used = file.Lines.Where(line => !IsOwn(line, file)).GroupBy(line => line.From!, StringComparer.Ordinal)
            .Where(group => !compared.Contains(group.Key) && said.Add(group.Key))
            .Select(group => (group.Key, group.ToImmutableArray(), UsersOf(group.Key, file, changed)))
            .ToImmutableArray();
        return new FileToSay(file with { Lines = own }, UsersOf(file.Name, file, changed), used);
    }

    private static bool IsOwn(WrittenChange line, ComparedFile file) => line.From is null || line.From == file.Name;

    private static ImmutableArray<string> UsersOf(string name, ComparedFile but, ComparedFile[] changed) =>
        [.. changed.Where(file => file != but && file.Name != name && file.Lines.Any(line => line.From == name)).Select(file => file.Name)];
}
