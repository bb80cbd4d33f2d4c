using System.Text.Json;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>A recipe that a released version took is still taken: the samples of each release, kept as they were.</summary>
public sealed class ReleasedTests
{
    private const string Folder = "tests/corpus/released";

    public static TheoryData<string> Versions => [.. Directory.GetDirectories(Repository.PathOf(Folder)).Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void The_version_that_is_built_now_has_its_samples_kept() => Assert.True(Directory.Exists(Repository.PathOf($"{Folder}/{CommandLine.Version}")));

    [Fact]
    public void The_samples_of_today_are_laid_out() => Assert.Equal("", Bench.Run("fmt", "--check", "--recurse", Repository.PathOf("samples")).Out);

    [Theory]
    [MemberData(nameof(Versions))]
    public void Its_samples_earn_the_errors_they_earned_then_and_no_others(string version)
    {
        var folder = Repository.PathOf($"{Folder}/{version}");
        using var answer = JsonDocument.Parse(Bench.Run("check", folder, "--recurse", "--format", "json").Out);
        var found = answer.RootElement.GetProperty("findings").EnumerateArray()
            .Where(one => one.GetProperty("severity").GetString() == "error")
            .Select(one => $"{Path.GetRelativePath(folder, one.GetProperty("where").GetProperty("file").GetString()!).Replace('\\', '/')}\t{one.GetProperty("code").GetString()}")
            .Distinct()
            .Order(StringComparer.Ordinal)
            .ToArray();
        Assert.Equal(Repository.Read($"{Folder}/{version}/errors.tsv").ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'), found);
    }

    [Theory]
    [MemberData(nameof(Versions))]
    public void Its_samples_are_laid_out_as_they_were(string version)
    {
        var run = Bench.Run("fmt", "--check", "--recurse", Repository.PathOf($"{Folder}/{version}"));
        Assert.Equal("", run.Out + run.Error);
        Assert.Equal(ExitStatus.Clean, run.Status);
    }
}
