using Recipe.Compiler;
using Recipe.Text;

namespace Recipe.Cli.Files;

/// <summary>The recipes that the next commit changes, as they are staged, and those that rest on them. Names are those below the top folder.</summary>
internal sealed class StagedRecipes : IDisposable
{
    private readonly string _top;
    private readonly GitFiles _files;

    private StagedRecipes(string top, Terminal terminal)
    {
        _top = top;
        Changed = Recipes("diff", "--cached", "--name-only", "-z", "--no-renames");
        Written = Recipes("diff", "--cached", "--name-only", "-z", "--no-renames", "--diff-filter=ACM");
        _files = GitFiles.Staged(top, terminal.Rules);
    }

    /// <summary>What is staged in the repository of the current folder.</summary>
    /// <exception cref="CannotRunException">There is no git, or no repository.</exception>
    public static StagedRecipes Open(Terminal terminal) =>
        new(Git.Top() ?? throw new CannotRunException("this folder is in no working copy of a git repository; go to one, or check files with `recipe check`."), terminal);

    /// <summary>The recipes that change, those that are taken out included.</summary>
    public List<string> Changed { get; }

    /// <summary>The recipes that are there afterwards.</summary>
    public List<string> Written { get; }

    /// <summary>A text as it is staged; null when it is not there.</summary>
    public string? TextOf(string name) => _files.TryRead(name, out var text) ? text : null;

    /// <summary>Compiles what changes and what rests on it, in order of name.</summary>
    public List<CompiledFile> Compile(DateOnly today)
    {
        var changed = Changed.ToHashSet(StringComparer.Ordinal);
        var names = MayRestOn(changed).Order(StringComparer.Ordinal).ToList();
        return
        [
            .. Workspace.ForFindings(_files, today).CompileAll(names).OfType<CompiledFile>()
                .Where(file => file.RestsOn.Any(text => changed.Contains(text.Name))),
        ];
    }

    public void Dispose() => _files.Dispose();

    /// <summary>
    /// The files that changed and those whose text has the name of one of them in it, and so on. Settings count for all files below
    /// their folder. To read is much quicker than to compile.
    /// </summary>
    private HashSet<string> MayRestOn(HashSet<string> changed)
    {
        var all = Recipes("ls-files", "-z");
        var found = changed.ToHashSet(StringComparer.Ordinal);
        var open = new Queue<string>(changed);
        while (open.TryDequeue(out var name))
        {
            var (fileName, folder) = (PathNames.FileName(name), PathNames.FolderOf(name));
            var users = all.Where(user => !found.Contains(user) && (fileName == Workspace.SettingsFile
                ? folder.Length == 0 || user.StartsWith(folder + "/", StringComparison.Ordinal)
                : TextOf(user) is { } text && text.Contains(fileName, StringComparison.Ordinal)));
            foreach (var user in users.ToList())
            {
                found.Add(user);
                open.Enqueue(user);
            }
        }

        return found;
    }

    private List<string> Recipes(params string[] question) =>
        [.. Git.Names(["-C", _top, .. question]).Where(name => name.EndsWith(FileEndings.Recipe, StringComparison.Ordinal)).Distinct(StringComparer.Ordinal)];
}
