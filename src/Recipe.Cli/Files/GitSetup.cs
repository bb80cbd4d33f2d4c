using Recipe.Disk;

namespace Recipe.Cli.Files;

/// <summary>Something to write into a repository: what is said of it, and how it is done.</summary>
/// <param name="Says">What it is, exactly.</param>
/// <param name="Do">Does it; null when it is for a person to do.</param>
internal sealed record SetupStep(string Says, Action? Do);

/// <summary>What has to stand in a repository for git to ask this program about recipes, and how it gets there and away again.</summary>
internal sealed class GitSetup
{
    private const string Attributes = "*.recipe diff=recipe merge=recipe";
    private const string HookLine = "recipe git pre-commit";
    private const string Hook = "#!/bin/sh\n# Written by `recipe git setup --hook --write`.\nexec " + HookLine + "\n";

    private static readonly (string Key, string Value)[] Settings =
    [
        ("diff.recipe.textconv", "recipe git textconv"),
        ("merge.recipe.name", "recipes, thing by thing"),
        ("merge.recipe.driver", "recipe git merge --marker-size %L -- %O %A %B %P"),
    ];

    private readonly string _top;

    private GitSetup(string top) => _top = top;

    /// <summary>The repository of the current folder.</summary>
    /// <exception cref="CannotRunException">There is no git, or no working copy.</exception>
    public static GitSetup Here() => new(Git.Top()
        ?? throw new CannotRunException("this folder is in no working copy of a git repository, so there is nothing to set up; go to one, or make one with `git init`."));

    private string Shared => Path.Combine(_top, ".gitattributes");

    private static string Own => GitPath("info/attributes");

    private static string HookFile => Path.Combine(GitPath("hooks"), "pre-commit");

    /// <summary>What is left to do so that git knows recipes.</summary>
    /// <param name="isLocal">Whether the attributes are for this clone alone, and not for everybody who has the repository.</param>
    /// <param name="withHook">Whether each commit is checked.</param>
    public IEnumerable<SetupStep> Steps(bool isLocal, bool withHook)
    {
        if (!new AttributesFile(Shared).Has(Attributes) && !new AttributesFile(Own).Has(Attributes))
        {
            var file = isLocal ? Own : Shared;
            yield return new($"{Shown(file)}: one line more\n    {Attributes}", () => new AttributesFile(file).Add(Attributes));
        }

        foreach (var (key, value) in Settings)
        {
            switch (Git.TryAsk("config", "--local", "--get", key))
            {
                case var now when now == value:
                    break;
                case null:
                    yield return new($"git config --local {key} \"{value}\"", () => Git.Ask("config", "--local", key, value));
                    break;
                case var other:
                    yield return new($"left alone: {key} is \"{other}\" and not ours; to take ours: git config --local {key} \"{value}\"", null);
                    break;
            }
        }

        if (withHook)
        {
            foreach (var step in HookSteps())
            {
                yield return step;
            }
        }
    }

    /// <summary>What has to go so that git forgets about recipes. What somebody else wrote stays.</summary>
    public IEnumerable<SetupStep> StepsBack()
    {
        foreach (var file in (string[])[Shared, Own])
        {
            if (new AttributesFile(file).Has(Attributes))
            {
                yield return new($"{Shown(file)}: without the line\n    {Attributes}", () => new AttributesFile(file).Remove(Attributes));
            }
        }

        foreach (var (key, value) in Settings)
        {
            if (Git.TryAsk("config", "--local", "--get", key) == value)
            {
                yield return new($"git config --local --unset {key}", () => Git.Ask("config", "--local", "--unset", key));
            }
        }

        if (File.Exists(HookFile) && DiskFiles.Read(HookFile) == Hook)
        {
            yield return new($"{Shown(HookFile)}: deleted", () => File.Delete(HookFile));
        }
    }

    private IEnumerable<SetupStep> HookSteps()
    {
        var file = HookFile;
        if (File.Exists(file))
        {
            if (!DiskFiles.Read(file).Contains(HookLine, StringComparison.Ordinal))
            {
                yield return new($"left alone: {Shown(file)} is there and not ours; to check recipes too, add this line to it:\n    {HookLine} || exit 1", null);
            }
        }
        else if (IsOutside(file))
        {
            yield return new($"left alone: hooks stand outside of this repository, in {Path.GetDirectoryName(file)}, and count for others too; to check recipes there, write into {file}:\n    {HookLine} || exit 1", null);
        }
        else
        {
            yield return new($"{Shown(file)}: a new file\n    {Hook.TrimEnd('\n').Replace("\n", "\n    ", StringComparison.Ordinal)}", () => WriteHook(file));
        }
    }

    private static void WriteHook(string file)
    {
        WholeFile.Write(file, Hook);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file, (UnixFileMode)0b111_101_101);
        }
    }

    private bool IsOutside(string file) => !IsBelow(_top, file) && !IsBelow(Path.GetFullPath(Git.Ask("rev-parse", "--git-common-dir").Trim()), file);

    private static bool IsBelow(string folder, string file) => !Path.GetRelativePath(folder, file).StartsWith("..", StringComparison.Ordinal);

    private static string GitPath(string name) => Path.GetFullPath(Git.Ask("rev-parse", "--git-path", name).Trim());

    private string Shown(string file) => Path.GetRelativePath(_top, file) is var below && below.StartsWith("..", StringComparison.Ordinal) ? file : below.Replace('\\', '/');
}
