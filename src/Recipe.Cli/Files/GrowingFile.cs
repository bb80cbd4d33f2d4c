using Recipe.Disk;

namespace Recipe.Cli.Files;

/// <summary>A text that is too long to be held: it goes to standard output as it comes, or under a temporary name beside its place until it is whole.</summary>
internal sealed class GrowingFile : IDisposable
{
    private readonly Terminal _terminal;
    private readonly string? _path;
    private readonly string? _temporary;
    private readonly StreamWriter? _file;

    /// <summary>Begins it.</summary>
    /// <exception cref="CannotRunException">It cannot be written.</exception>
    public GrowingFile(Terminal terminal, string? path)
    {
        (_terminal, _path) = (terminal, path);
        if (path is null)
        {
            return;
        }

        var folder = Path.GetDirectoryName(path) is { Length: > 0 } named ? named : ".";
        _temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}.tmp");
        _file = Try(() =>
        {
            Directory.CreateDirectory(folder);
            return new StreamWriter(_temporary, append: false, Terminal.Encoding);
        });
    }

    /// <summary>Adds to it.</summary>
    /// <exception cref="CannotRunException">It cannot be written.</exception>
    public void Write(string text) => Try(() =>
    {
        (_file ?? _terminal.Out).Write(text);
        return true;
    });

    /// <summary>It is whole: moves it into place.</summary>
    /// <exception cref="CannotRunException">It cannot be written.</exception>
    public void Keep()
    {
        if (_file is not null)
        {
            Try(() =>
            {
                _file.Dispose();
                File.Move(_temporary!, _path!, overwrite: true);
                return true;
            });
            _terminal.Out.WriteLine($"wrote {_path!.Replace('\\', '/')}");
        }
    }

    /// <summary>Takes away what is not whole.</summary>
    public void Dispose()
    {
        _file?.Dispose();
        if (_temporary is not null && File.Exists(_temporary))
        {
            File.Delete(_temporary);
        }
    }

    private T Try<T>(Func<T> action)
    {
        try
        {
            return action();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new CannotRunException($"{_path ?? "standard output"} cannot be written: {DiskProblem.Reason(problem)}", problem);
        }
    }
}
