using Recipe.Semantics;

namespace Recipe.Compiler;

/// <summary>
/// Files that change under one's hands. Each question is answered for the present moment: what was compiled before is answered again
/// only while every text that it rests on is still the same. For one thread.
/// </summary>
public sealed class LiveWorkspace
{
    private readonly IFileStore _files;
    private readonly Book _book;
    private readonly ParsedTexts _parsed = new();
    private readonly KeptParts _parts = new();
    private readonly Dictionary<string, CompiledFile> _compiled = new(StringComparer.Ordinal);
    private DateOnly? _today;

    /// <summary>Makes one over the shipped book.</summary>
    /// <param name="files">Where texts come from; asked again at each question, so it should answer from memory when it can.</param>
    public LiveWorkspace(IFileStore files)
        : this(files, ShippedTexts.Book)
    {
    }

    /// <summary>Makes one over another book.</summary>
    /// <param name="files">Where texts come from.</param>
    /// <param name="book">The materials always in scope.</param>
    public LiveWorkspace(IFileStore files, Book book)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(book);
        _files = files;
        _book = book;
    }

    /// <summary>The file as it is now; null when there is none. As long as nothing changes it is the same object.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="today">Today, as <see cref="Workspace"/> takes it.</param>
    public CompiledFile? Compile(string name, DateOnly? today) => CompileAll([name], today)[0];

    /// <summary>Several files, of one moment; null stands for one that is not there.</summary>
    /// <param name="names">Their names.</param>
    /// <param name="today">Today, as above.</param>
    public IReadOnlyList<CompiledFile?> CompileAll(IReadOnlyList<string> names, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(names);
        if (today != _today)
        {
            _compiled.Clear();
            _today = today;
        }

        var wanted = names.Select(PathNames.Normalize).ToList();
        var stale = wanted.Where(name => !(_compiled.TryGetValue(name, out var known) && IsPresent(known))).Distinct(StringComparer.Ordinal).ToList();
        if (stale.Count > 0)
        {
            var fresh = new Workspace(_files, today, _book, _parsed, _parts).CompileAll(stale);
            for (var i = 0; i < stale.Count; i++)
            {
                if (fresh[i] is { } file)
                {
                    _compiled[stale[i]] = file;
                }
                else
                {
                    Forget(stale[i]);
                }
            }
        }

        return [.. wanted.Select(name => _compiled.GetValueOrDefault(name))];
    }

    /// <summary>Frees what is held of a file that nobody looks at any more.</summary>
    /// <param name="name">Its name.</param>
    public void Forget(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        _compiled.Remove(name);
        _parsed.Forget(name);
        _parts.Forget(name);
    }

    private bool IsPresent(CompiledFile file) =>
        file.RestsOn.All(text => text.IsShape
            ? ShapesUsed.DigestOf(ShapesUsed.FileOf(_files.ShapeOf(text.Name))) == text.Text
            : _files.TryRead(text.Name, out var now) ? text.Text is not null && text.Text == now : text.Text is null);
}
