using System.Diagnostics;
using CsCheck;
using Recipe.Compiler.Previewing;

namespace Recipe.Preview.Tests;

/// <summary>The lines that a trial would change, in the form that POSIX gives <c>diff -u</c> (IEEE Std 1003.1, diff), which git reads.</summary>
public sealed class UnifiedDiffTests
{
    [Fact]
    public void A_changed_line_stands_between_three_that_stay()
    {
        var before = string.Join('\n', Enumerable.Range(1, 20)) + "\n";
        var after = before.Replace("\n10\n", "\nten\n", StringComparison.Ordinal);
        Assert.Equal("@@ -7,7 +7,7 @@| 7| 8| 9|-10|+ten| 11| 12| 13", string.Join('|', UnifiedDiff.Of(before, after)));
        Assert.Empty(UnifiedDiff.Of(before, before));
    }

    [Theory]
    [InlineData("", "a\n", "@@ -0,0 +1 @@")]
    [InlineData("a\n", "", "@@ -1 +0,0 @@")]
    [InlineData("a\nb\n", "a\nb\nc\n", "@@ -1,2 +1,3 @@")]
    public void Ranges_are_written_as_posix_says(string before, string after, string head) => Assert.Equal(head, UnifiedDiff.Of(before, after)[0]);

    /// <summary>What it writes, another program applies: <c>git apply</c> makes the later text of the earlier one.</summary>
    [Fact]
    public void Git_applies_what_it_writes()
    {
        string[] lines = ["a", "b", "c", "  d", ""];
        var text = Gen.Int[0, lines.Length - 1].Array[1, 30].Select(picked => string.Concat(picked.Select(i => lines[i] + "\n")));
        var folder = Directory.CreateTempSubdirectory("recipe-diff-").FullName;
        try
        {
            Gen.Select(text, text).Where((before, after) => before != after).Sample(
                (before, after) =>
                {
                    var diff = UnifiedDiff.Of(before, after);
                    File.WriteAllText(Path.Combine(folder, "t"), before);
                    File.WriteAllText(Path.Combine(folder, "p"), $"--- a/t\n+++ b/t\n{string.Join('\n', diff)}\n");
                    Git(folder, "apply", "--unsafe-paths", "-p1", "p");
                    return File.ReadAllText(Path.Combine(folder, "t")) == after;
                },
                iter: 60,
                threads: 1);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Git(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = folder, RedirectStandardError = true };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var git = Process.Start(start)!;
        var error = git.StandardError.ReadToEnd();
        git.WaitForExit();
        Assert.True(git.ExitCode == 0, error);
    }
}
