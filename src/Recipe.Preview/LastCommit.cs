using Recipe.Compiler;
using Recipe.Compiler.Previewing;

namespace Recipe.Preview;

/// <summary>
/// The file as it was committed last, read in the background: git is another process, and nobody waits for it. Read again when the repository says
/// that something was committed or checked out.
/// </summary>
/// <param name="wish">The file.</param>
/// <param name="name">Its name.</param>
/// <param name="found">Told what was found, from another thread.</param>
internal sealed class LastCommit(PreviewWish wish, string name, Action<EarlierText> found)
{
    private const string Called = "the last commit";

    // Written whenever another commit is the last one.
    private static readonly string[] Signs = ["HEAD", "logs/HEAD"];

    private string? _seen;
    private int _isReading;

    /// <summary>Looks whether it has to be read, and does so.</summary>
    public void Look()
    {
        var sign = Sign();
        if (sign == _seen || Interlocked.Exchange(ref _isReading, 1) == 1)
        {
            return;
        }

        _seen = sign;
        _ = Task.Run(() =>
        {
            found(Read());
            Interlocked.Exchange(ref _isReading, 0);
        });
    }

    private EarlierText Read()
    {
        if (wish.LastCommit is not { } lastCommit)
        {
            return new EarlierText(null, Called, "Nothing is compared here.");
        }

        if (GitFolder() is null)
        {
            return new EarlierText(null, Called, "There is no last commit to compare with: the recipe is in no git repository.");
        }

        try
        {
            var opened = lastCommit(PathNames.FolderOf(name));
            using var held = opened.Files as IDisposable;
            if (opened.Files is not { } files)
            {
                return new EarlierText(null, Called, opened.Refusal ?? "There is no last commit to compare with.");
            }

            return new Workspace(files, wish.Today()).TryCompile(name, out var before)
                ? new EarlierText(before, Called, null)
                : new EarlierText(null, Called, "The recipe is new since the last commit.");
        }
#pragma warning disable CA1031 // Whatever git does, the page goes on without the comparison and says why.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            return new EarlierText(null, Called, $"The last commit could not be read: {problem.Message}");
        }
    }

    private string Sign()
    {
        if (wish.LastCommit is null || GitFolder() is not { } git)
        {
            return "none";
        }

        return string.Join('|', Signs.Select(file => new FileInfo(Path.Combine(git, file)))
            .Select(file => file.Exists ? $"{file.LastWriteTimeUtc.Ticks}:{file.Length}" : "-"));
    }

    private string? GitFolder()
    {
        for (var folder = Path.GetDirectoryName(wish.Path); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            var git = Path.Combine(folder, ".git");
            if (Directory.Exists(git))
            {
                return git;
            }

            if (File.Exists(git))
            {
                return Linked(git);
            }
        }

        return null;
    }

    // Of a working copy beside another one, or of a submodule: one line that names the folder.
    private static string? Linked(string file)
    {
        try
        {
            return File.ReadLines(file).FirstOrDefault() is { } line && line.StartsWith("gitdir: ", StringComparison.Ordinal)
                ? Path.GetFullPath(line["gitdir: ".Length..].Trim(), Path.GetDirectoryName(file)!)
                : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
