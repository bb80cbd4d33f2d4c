using System.Runtime.InteropServices;
using System.Text;

namespace Recipe.Disk;

/// <summary>
/// Files to be written together. Each is first written whole under a temporary name beside its place; only when all are on disk are
/// they moved into place, so a full disk or a wrong folder leaves every old file as it was. Nothing else in the folder is touched.
/// A file that is replaced keeps its permissions, one that is write-protected is not replaced, and where a link stands, what it points to is
/// replaced. Files may be added from several threads at a time.
/// </summary>
public sealed class OutputSet : IDisposable
{
    // A set is moved into place within milliseconds; who waits longer than this waits for something else.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    // UTF-8 without a mark.
    private static readonly UTF8Encoding Encoding = new(encoderShouldEmitUTF8Identifier: false);

    private readonly string _folder;
    private readonly bool _flush;
    private readonly Lock _gate = new();
    private readonly Lazy<DirectoryInfo> _made;
    private readonly SortedDictionary<string, (string Temporary, string Final)> _files = new(StringComparer.Ordinal);

    // Who writes holds it for reading; who ends the program takes it and never gives it back.
    private readonly ReaderWriterLockSlim _alive = new();
    private readonly List<PosixSignalRegistration> _signals = [];

    /// <summary>Begins a set.</summary>
    /// <param name="folder">Where they belong; made when it is not there.</param>
    /// <param name="flush">Whether to wait until the disk itself has each file: for what somebody wrote by hand. Papers can be made again.</param>
    /// <param name="endsOnSignal">Whether a signal that ends the program first takes away what is not in place, or lets a move that has begun come to its end.</param>
    public OutputSet(string folder, bool flush = true, bool endsOnSignal = false)
    {
        (_folder, _flush) = (folder, flush);
        _made = new Lazy<DirectoryInfo>(() => Directory.CreateDirectory(folder), LazyThreadSafetyMode.PublicationOnly);
        if (endsOnSignal)
        {
            foreach (var signal in (PosixSignal[])[PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP])
            {
                _signals.Add(PosixSignalRegistration.Create(signal, _ =>
                {
                    _alive.EnterWriteLock();
                    RemoveTemporary();
                }));
            }
        }
    }

    /// <summary>Adds a text, as UTF-8.</summary>
    /// <param name="name">Its name, without a folder.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="CannotWriteException">It could not be written.</exception>
    public void Add(string name, string text) => Add(name, Encoding.GetBytes(text));

    /// <summary>Adds a file, under its temporary name.</summary>
    /// <param name="name">Its name, without a folder.</param>
    /// <param name="bytes">What it holds.</param>
    /// <exception cref="CannotWriteException">It could not be written.</exception>
    public void Add(string name, ReadOnlyMemory<byte> bytes)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (name.IndexOfAny(['/', '\\', '\0']) >= 0 || name is "" or "." or "..")
        {
            throw new CannotWriteException($"'{name}' is no name for a file.");
        }

        var shown = Path.Combine(_folder, name);
        Try(shown, () =>
        {
            if (File.Exists(_folder))
            {
                throw new CannotWriteException($"{_folder} is a file, not a folder; nothing was written.");
            }

            _ = _made.Value;
            if (Directory.Exists(shown))
            {
                throw new CannotWriteException($"{shown} is a folder; nothing was written.");
            }

            var final = new FileInfo(shown).LinkTarget is null ? shown : File.ResolveLinkTarget(shown, returnFinalTarget: true)!.FullName;
            var old = new FileInfo(final);
            if (old is { Exists: true, IsReadOnly: true })
            {
                throw new CannotWriteException($"{shown} is write-protected; nothing was written.");
            }

            var temporary = Path.Combine(Path.GetDirectoryName(final) ?? _folder, $".{Path.GetFileName(final)}.{Environment.ProcessId}.tmp");
            lock (_gate)
            {
                if (!_files.TryAdd(name, (temporary, final)))
                {
                    throw new CannotWriteException($"two papers would be written as '{name}'.");
                }
            }

            using var file = File.OpenHandle(temporary, FileMode.Create, FileAccess.Write, FileShare.None);
            RandomAccess.Write(file, bytes.Span, 0);
            if (!OperatingSystem.IsWindows() && old.Exists)
            {
                File.SetUnixFileMode(file, old.UnixFileMode);
            }

            if (_flush)
            {
                RandomAccess.FlushToDisk(file);
            }
        });
    }

    /// <summary>Moves all of them into place and returns their paths.</summary>
    /// <param name="overwrite">Whether they take the places of files that are there; where not, one that is there is a reason to stop.</param>
    /// <exception cref="CannotWriteException">Something could not be moved.</exception>
    public List<string> Write(bool overwrite = true)
    {
        Try(_folder, () =>
        {
            using var turn = _files.Count > 1 ? Turn() : null;
            foreach (var (temporary, final) in _files.Values)
            {
                File.Move(temporary, final, overwrite);
            }
        });
        return [.. _files.Keys.Select(name => Path.Combine(_folder, name).Replace('\\', '/'))];
    }

    /// <summary>Takes away what was not moved into place.</summary>
    public void Dispose()
    {
        foreach (var signal in _signals)
        {
            signal.Dispose();
        }

        RemoveTemporary();
    }

    private void RemoveTemporary()
    {
        lock (_gate)
        {
            foreach (var (temporary, _) in _files.Values)
            {
                if (File.Exists(temporary))
                {
                    File.Delete(temporary);
                }
            }
        }
    }

    /// <summary>Keeps two programs from moving their sets into one folder at the same time, which would leave some files of each.</summary>
    private FileStream Turn()
    {
        var until = DateTime.UtcNow + Patience;
        while (true)
        {
            try
            {
                return new FileStream(Path.Combine(_folder, ".recipe.lock"), FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, bufferSize: 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (DateTime.UtcNow < until)
            {
                Thread.Sleep(20);
            }
        }
    }

    private void Try(string what, Action action)
    {
        _alive.EnterReadLock();
        try
        {
            action();
        }
        catch (Exception problem) when (DiskProblem.IsOne(problem))
        {
            throw new CannotWriteException($"{what} could not be written: {DiskProblem.Reason(problem)}", problem);
        }
        finally
        {
            _alive.ExitReadLock();
        }
    }
}
