using System.Diagnostics;
using CsCheck;
using Recipe.Syntax.Merging;

namespace Recipe.Syntax.Tests;

/// <summary>The merge line by line beside <c>git merge-file</c>, a tool for any text that everybody has.</summary>
public sealed class LineMergeAgainstGitTests : IDisposable
{
    // Each text starts a process.
    private const int Iterations = 150;

    private readonly string _folder = Directory.CreateTempSubdirectory("recipe-merge-").FullName;

    [Fact]
    public void Lines_that_are_all_different_merge_the_same_way_conflicts_included() => Versions(1_000_000).Sample(
        (before, ours, theirs) =>
        {
            var mine = LineMerge.Merge(before, ours, theirs, new ConflictMarkers());
            var (status, text) = Git(before, ours, theirs);
            Assert.Equal((Math.Min(status, 127), text), (mine.Conflicts, mine.Text));
        },
        iter: Iterations,
        threads: 1);

    /// <summary>Few lines between two conflicts are read with them, but not where one side changed something between, if only by taking a line out.</summary>
    [Theory]
    [InlineData("a b c d e", "A b c d E", "aa b c d ee", 1)]
    [InlineData("a b c d e", "A b c d E", "aa b d ee", 2)]
    [InlineData("a b c d e", "A b d E", "aa b c d ee", 2)]
    [InlineData("a b c d e", "A b d E", "aa b d ee", 1)]
    [InlineData("a b d e", "A b c d E", "aa b c d ee", 1)]
    [InlineData("a b d e", "A b c d E", "aa b d ee", 2)]
    public void What_one_side_did_between_two_conflicts_parts_them(string before, string ours, string theirs, int conflicts)
    {
        var mine = LineMerge.Merge(Lines(before), Lines(ours), Lines(theirs), new ConflictMarkers());
        Assert.Equal((conflicts, mine.Text), Git(Lines(before), Lines(ours), Lines(theirs)));
        Assert.Equal(conflicts, mine.Conflicts);

        static string Lines(string words) => words.Replace(' ', '\n') + "\n";
    }

    /// <summary>Of lines alike there are several longest common subsequences, and with them other conflicts. What is clean both ways is the same but once in hundreds.</summary>
    [Fact]
    public void Lines_alike_merge_the_same_way_where_both_merges_are_clean()
    {
        var (clean, same) = (0, 0);
        Versions(6).Sample(
            (before, ours, theirs) =>
            {
                var mine = LineMerge.Merge(before, ours, theirs, new ConflictMarkers());
                var (status, text) = Git(before, ours, theirs);
                clean += status == 0 && mine.Conflicts == 0 ? 1 : 0;
                same += status == 0 && mine.Conflicts == 0 && text == mine.Text ? 1 : 0;
            },
            iter: Iterations,
            threads: 1);
        Assert.InRange(clean, Iterations / 4, Iterations);
        Assert.InRange(same, 0.95 * clean, clean);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static Gen<(string Before, string Ours, string Theirs)> Versions(int kinds) => Gen.Select(Gen.Int[0, kinds].Array[0, 20], Edits(kinds), Edits(kinds), (before, ours, theirs) =>
        (Text(before), Text(Edited(before, ours)), Text(Edited(before, theirs))));

    private static Gen<(int What, double At, int Value)[]> Edits(int kinds) => Gen.Select(Gen.Int[0, 2], Gen.Double[0, 1], Gen.Int[0, kinds]).Array[0, 4];

    private static List<int> Edited(int[] lines, (int What, double At, int Value)[] edits)
    {
        var copy = lines.ToList();
        foreach (var (what, at, value) in edits)
        {
            var place = (int)(at * Math.Max(copy.Count - 1, 0));
            switch (what)
            {
                case 0:
                    copy.Insert(place, value);
                    break;
                case 1 when copy.Count > 0:
                    copy.RemoveAt(place);
                    break;
                case 2 when copy.Count > 0:
                    copy[place] = value;
                    break;
            }
        }

        return copy;
    }

    private static string Text(IEnumerable<int> lines) => string.Concat(lines.Select(line => $"l{line}\n"));

    private (int Status, string Text) Git(string before, string ours, string theirs)
    {
        foreach (var (name, text) in (ReadOnlySpan<(string, string)>)[("base", before), ("ours", ours), ("theirs", theirs)])
        {
            File.WriteAllText(Path.Combine(_folder, name), text);
        }

        var start = new ProcessStartInfo("git") { WorkingDirectory = _folder, RedirectStandardOutput = true };
        foreach (var argument in (ReadOnlySpan<string>)["merge-file", "-p", "-L", "ours", "-L", "base", "-L", "theirs", "ours", "base", "theirs"])
        {
            start.ArgumentList.Add(argument);
        }

        using var git = Process.Start(start)!;
        var output = git.StandardOutput.ReadToEnd();
        git.WaitForExit();
        return (git.ExitCode, output);
    }
}
