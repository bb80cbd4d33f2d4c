using Xunit;

namespace Recipe.TestKit;

/// <summary>
/// Cases that are folders: one input and, beside it, one file for each stage of the work on it. Adding a case is adding a folder with
/// its input. With RECIPE_UPDATE_GOLDENS=1 in the environment the stages are written anew instead of compared, and what has no stage
/// any more is deleted; the difference is then read like prose before it is committed.
/// </summary>
/// <param name="folder">Folder of the cases, from the root of the repository, with forward slashes.</param>
/// <param name="input">Name of the input in each case.</param>
/// <param name="stages">Names of the files beside it, each a stage.</param>
public sealed class GoldenCases(string folder, string input, params IReadOnlyList<string> stages)
{
    private const string Switch = "RECIPE_UPDATE_GOLDENS";

    private static bool IsUpdate => Environment.GetEnvironmentVariable(Switch) == "1";

    /// <summary>The names of the cases, in order.</summary>
    public IReadOnlyList<string> Names { get; } =
    [
        .. new DirectoryInfo(Repository.PathOf(folder)).EnumerateDirectories().Select(found => found.Name).Order(StringComparer.Ordinal),
    ];

    /// <summary>The input of a case.</summary>
    public string Input(string name) => File.ReadAllText(PathOf(name, input));

    /// <summary>Compares a stage with its file.</summary>
    public void Check(string name, string stage, string actual)
    {
        Assert.Contains(stage, stages);
        var path = PathOf(name, stage);
        if (IsUpdate)
        {
            File.WriteAllText(path, actual);
        }

        var expected = File.Exists(path) ? File.ReadAllText(path) : $"(there is no {stage}; run with {Switch}=1 to write it)";
        if (expected != actual)
        {
            Assert.Fail($"{folder}/{name}/{stage} differs; {Switch}=1 rewrites it.\n{FirstDifference(expected, actual)}");
        }
    }

    /// <summary>The files of all cases that are neither an input nor a stage, and the cases without input.</summary>
    public IReadOnlyList<string> Orphans()
    {
        var orphans = new List<string>();
        foreach (var name in Names)
        {
            if (!File.Exists(PathOf(name, input)))
            {
                orphans.Add($"{name} has no {input}");
            }

            foreach (var file in new DirectoryInfo(PathOf(name, "")).EnumerateFileSystemInfos().Where(file => file.Name != input && !stages.Contains(file.Name)))
            {
                if (IsUpdate && file is FileInfo)
                {
                    file.Delete();
                }
                else
                {
                    orphans.Add($"{name}/{file.Name} belongs to no stage");
                }
            }
        }

        return orphans;
    }

    private static string FirstDifference(string expected, string actual)
    {
        var (left, right) = (expected.Split('\n'), actual.Split('\n'));
        var line = Enumerable.Range(0, Math.Max(left.Length, right.Length)).First(i => left.ElementAtOrDefault(i) != right.ElementAtOrDefault(i));
        return $"line {line + 1}\nexpected: {left.ElementAtOrDefault(line) ?? "(end)"}\nactual:   {right.ElementAtOrDefault(line) ?? "(end)"}";
    }

    private string PathOf(string name, string file) => Repository.PathOf($"{folder}/{name}/{file}");
}
