using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using Recipe.Compiler;
using Recipe.RuleProtocol;
using Recipe.Text;

namespace Recipe.Cli.Files;

/// <summary>
/// Texts as they were in a revision, by their names in the working copy. One git answers for all of them (<c>git cat-file --batch</c>).
/// </summary>
internal sealed class GitFiles : IFileStore, IDisposable
{
    private readonly string _folder;
    private readonly string _revision;
    private readonly int _foldersAbove;
    private readonly Process _git;
    private readonly Lock _gate = new();
    private readonly Dictionary<string, string?> _known = new(StringComparer.Ordinal);

    private GitFiles(IRuleRunner? rules, string folder)
    {
        (_folder, _revision, Rules) = (folder, "", rules);
        _git = Git.Start("-C", _folder, "cat-file", "--batch");
    }

    /// <summary>Opens a revision of the repository of a folder.</summary>
    /// <exception cref="CannotRunException">There is no git, no repository, or no such revision.</exception>
    public GitFiles(string revision, IRuleRunner? rules, string folder = ".")
    {
        Rules = rules;
        _folder = Path.GetFullPath(folder);
        _foldersAbove = Git.Ask("-C", _folder, "rev-parse", "--git-dir", "--show-cdup").Split('\n').ElementAtOrDefault(1)?.Split("../").Length - 1 ?? 0;
        _revision = Git.Agrees("-C", _folder, "rev-parse", "--verify", "--quiet", "--end-of-options", revision + "^{commit}")
            ? Git.Ask("-C", _folder, "rev-parse", "--verify", "--end-of-options", revision + "^{commit}").Trim()
            : throw new CannotRunException($"{revision} is neither a file or folder here nor a revision of this repository.");
        _git = Git.Start("-C", _folder, "cat-file", "--batch");
    }

    /// <summary>The texts as they are staged, by their names below the top folder of a working copy.</summary>
    public static GitFiles Staged(string top, IRuleRunner? rules) => new(rules, top);

    /// <summary>The recipes of the revision below a folder, by their names in the working copy.</summary>
    public List<string> Recipes(string folder) =>
    [
        .. Git.Ask("-C", _folder, "-c", "core.quotePath=false", "ls-tree", "-r", "-z", "--name-only", _revision, "--", folder.Length == 0 ? "." : folder)
            .Split('\0', StringSplitOptions.RemoveEmptyEntries)
            .Where(name => name.EndsWith(FileEndings.Recipe, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal),
    ];

    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        lock (_gate)
        {
            if (!_known.TryGetValue(name, out text))
            {
                _known[name] = text = Read(name) is { } bytes ? DiskFiles.Decode(bytes) : null;
            }
        }

        return text is not null;
    }

    public IRuleRunner? Rules { get; }

    /// <summary>The file of a shape as it was committed.</summary>
    public ShapeBytes? ShapeOf(string name)
    {
        lock (_gate)
        {
            return Read(name) is { } bytes ? new ShapeBytes(name, bytes) : null;
        }
    }

    public void Dispose()
    {
        _git.StandardInput.Close();
        _git.WaitForExit();
        _git.Dispose();
    }

    private byte[]? Read(string name)
    {
        var path = Path.IsPathRooted(name) ? Path.GetRelativePath(_folder, name).Replace('\\', '/') : name;
        if (path.Contains('\n', StringComparison.Ordinal) || IsOutside(path))
        {
            return null;
        }

        var question = Encoding.UTF8.GetBytes($"{_revision}:{(path.StartsWith("../", StringComparison.Ordinal) ? path : "./" + path)}\n");
        _git.StandardInput.BaseStream.Write(question);
        _git.StandardInput.BaseStream.Flush();
        var head = Line(_git.StandardOutput.BaseStream).Split(' ');
        if (head is not [.., "blob", var size])
        {
            // A folder is answered with its content too.
            if (head is [.., "tree", var length])
            {
                Skip(int.Parse(length, CultureInfo.InvariantCulture) + 1);
            }

            return null;
        }

        var bytes = new byte[int.Parse(size, CultureInfo.InvariantCulture)];
        _git.StandardOutput.BaseStream.ReadExactly(bytes);
        Skip(1);
        return bytes;
    }

    // A question for what lies above the repository, such as settings that stand in no folder of it, would end git.
    private bool IsOutside(string path)
    {
        var up = 0;
        while (path.AsSpan(3 * up).StartsWith("../"))
        {
            up++;
        }

        return up > _foldersAbove || Path.IsPathRooted(path);
    }

    private static string Line(Stream stream)
    {
        var line = new List<byte>();
        for (var b = stream.ReadByte(); b is not (-1 or '\n'); b = stream.ReadByte())
        {
            line.Add((byte)b);
        }

        return Encoding.UTF8.GetString([.. line]);
    }

    private void Skip(int count) => _git.StandardOutput.BaseStream.ReadExactly(new byte[count]);
}
