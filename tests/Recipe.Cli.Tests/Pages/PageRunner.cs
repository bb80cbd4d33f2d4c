using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Recipe.TestKit;
using Recipe.TestKit.Pages;

namespace Recipe.Cli.Tests.Pages;

/// <summary>
/// Does what a page of the documentation says, block by block, in an empty folder, as its reader would:
/// <list type="bullet">
/// <item><c>recipe NAME</c> writes a file; <c>diff NAME</c> changes one. What stands there then is in the one layout and earns the findings
/// that are named behind <c>earns</c>, and no other.</item>
/// <item><c>recipe sketch</c> shows forms; three points stand for what is left out. All sketches of a page together are one text, whose words must be known.</item>
/// <item><c>console</c> runs what stands behind <c>$ </c> and compares what is said; a line of three points stands for lines that are left out. <c>exit 1</c> is the status of its last command; all others end with 0.</item>
/// </list>
/// With <c>RECIPE_UPDATE_GOLDENS=1</c> what is said, where nothing of it is left out, is written into the page anew.
/// </summary>
internal sealed class PageRunner(Bench bench)
{
    /// <summary>Languages of blocks that are looked at elsewhere or cannot be run.</summary>
    private static readonly string[] NotRun = ["csharp", "json", "text", "yaml"];

    private readonly StringBuilder _sketches = new();

    /// <summary>Runs all blocks of a page; returns how many.</summary>
    public int Run(string page)
    {
        _sketches.Clear();
        var fences = Fence.In(page);
        var said = new List<(Fence Fence, string Text)>();
        foreach (var fence in fences)
        {
            switch (fence.Language)
            {
                case "recipe" when fence.Words is ["sketch"]:
                    _sketches.Append(Shown(fence.Text)).Append('\n');
                    break;
                case "recipe":
                    Assert.True(fence.Words.Count > 0, $"{fence}: the block does not say which file it is.");
                    bench.Write(fence.Words[0], fence.Text);
                    Look(fence);
                    break;
                case "diff":
                    bench.Write(fence.Words[0], Changed(fence, File.ReadAllText(bench.PathOf(fence.Words[0]))));
                    Look(fence);
                    break;
                case "console":
                    said.Add((fence, Talk(fence)));
                    break;
                default:
                    Assert.True(NotRun.Contains(fence.Language), $"{fence}: nothing is known of blocks that say '{fence.Language}'.");
                    break;
            }
        }

        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            Rewrite(page, said);
            said.RemoveAll(pair => !ConsoleTalk.LeavesOut(pair.Fence.Text));
        }

        Assert.All(said, pair => Assert.True(ConsoleTalk.Fits(pair.Fence.Text, pair.Text), $"{pair.Fence}: the page shows\n{pair.Fence.Text}\nbut what is said is\n{pair.Text}"));
        return fences.Count;
    }

    /// <summary>The names of what is found in the sketches of the page that was run, of those that are about the text and its words.</summary>
    public IReadOnlyList<string> FoundInSketches()
    {
        bench.Write("sketches.recipe", _sketches.ToString());
        return [.. Findings("sketches.recipe").Where(f => f.Code.StartsWith("RC1", StringComparison.Ordinal)).Select(f => f.Name).Distinct()];
    }

    private void Look(Fence fence)
    {
        var name = fence.Words[0];
        var expected = fence.Words.Contains("earns") ? fence.Words.SkipWhile(w => w != "earns").Skip(1) : [];
        var found = Findings(name).Select(f => f.Name).Distinct().Order(StringComparer.Ordinal).ToArray();
        Assert.True(expected.Order(StringComparer.Ordinal).SequenceEqual(found), $"{fence}: {name} earns '{string.Join(' ', found)}'.\n{bench.RunHere("check", name).Out}");
        Assert.True(bench.RunHere("fmt", "--check", name).Status == ExitStatus.Clean, $"{fence}: {name} is not in the one layout.");
    }

    private IEnumerable<(string Code, string Name)> Findings(string name)
    {
        var run = bench.RunHere("check", name, "--format", "json");
        Assert.True(run.Status != ExitStatus.CouldNotRun, run.Error);
        using var json = JsonDocument.Parse(run.Out);
        return [.. json.RootElement.GetProperty("findings").EnumerateArray()
            .Where(f => f.GetProperty("accepted_because").ValueKind == JsonValueKind.Null)
            .Select(f => (f.GetProperty("code").GetString()!, f.GetProperty("name").GetString()!))];
    }

    /// <summary>A text with the lines of a difference in it: what is left, and what goes, must stand there once, and together.</summary>
    private static string Changed(Fence fence, string text)
    {
        var lines = fence.Text.Split('\n')[..^1];
        Assert.All(lines, line => Assert.True(line.Length == 0 || line[0] is ' ' or '-' or '+', $"{fence}: '{line}' begins with neither a blank nor - nor +."));
        var before = string.Concat(lines.Where(line => !line.StartsWith('+')).Select(line => (line.Length == 0 ? "" : line[1..]) + "\n"));
        var after = string.Concat(lines.Where(line => !line.StartsWith('-')).Select(line => (line.Length == 0 ? "" : line[1..]) + "\n"));
        var at = ("\n" + text).IndexOf("\n" + before, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{fence}: what should be there is not:\n{before}\nin\n{text}");
        Assert.True(text.IndexOf("\n" + before, at, StringComparison.Ordinal) < 0, $"{fence}: it could be meant twice.");
        return text[..at] + after + text[(at + before.Length)..];
    }

    private string Talk(Fence fence)
    {
        var said = new StringBuilder();
        var commands = fence.Text.Split('\n').Where(line => line.StartsWith("$ ", StringComparison.Ordinal)).Select(line => line[2..]).ToArray();
        Assert.True(commands.Length > 0, $"{fence}: no line begins with '$ '.");
        foreach (var (command, index) in commands.Select((command, index) => (command, index)))
        {
            var run = RunOne(ConsoleTalk.Words(command));
            var expected = index == commands.Length - 1 && fence.After("exit") is { } status ? int.Parse(status, System.Globalization.CultureInfo.InvariantCulture) : 0;
            Assert.True(run.Status == expected, $"{fence}: '{command}' ends with {run.Status}.\n{run.Out}{run.Error}");
            said.Append("$ ").Append(command).Append('\n').Append((run.Out + run.Error).Replace(bench.Folder, "FOLDER", StringComparison.Ordinal));
        }

        return said.ToString();
    }

    private Outcome RunOne(string[] words) => words[0] switch
    {
        "recipe" => bench.RunHere(words[1..]),
        "git" => Git(words[1..]),
        _ => throw new InvalidOperationException($"A page may run recipe and git, but not {words[0]}."),
    };

    private Outcome Git(string[] words)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = bench.Folder, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in (string[])["-c", "user.name=K", "-c", "user.email=k@shop.invalid", "-c", "init.defaultBranch=main", "-c", "commit.gpgsign=false", .. words])
        {
            start.ArgumentList.Add(word);
        }

        start.Environment["GIT_CONFIG_GLOBAL"] = "/dev/null";
        using var git = Process.Start(start)!;
        var error = git.StandardError.ReadToEndAsync();
        var output = git.StandardOutput.ReadToEnd();
        git.WaitForExit();
        return new Outcome(git.ExitCode, output, error.Result);
    }

    private static string Shown(string text) => string.Join('\n', text.Split('\n')
        .Where(line => !line.Contains(" ... ", StringComparison.Ordinal) || line.Contains("# also", StringComparison.Ordinal)));

    private static void Rewrite(string page, IEnumerable<(Fence Fence, string Text)> said)
    {
        var lines = Repository.Read(page).ReplaceLineEndings("\n").Split('\n').ToList();
        foreach (var (fence, text) in said.Reverse().Where(pair => !ConsoleTalk.LeavesOut(pair.Fence.Text)))
        {
            var count = fence.Text.Split('\n').Length - 1;
            lines.RemoveRange(fence.Line - 1, count);
            lines.InsertRange(fence.Line - 1, text.TrimEnd('\n').Split('\n').Select(line => line.TrimEnd()));
        }

        File.WriteAllText(Repository.PathOf(page), string.Join('\n', lines));
    }
}
