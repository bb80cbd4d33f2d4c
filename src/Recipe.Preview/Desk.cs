using System.Collections.Concurrent;
using System.Globalization;
using Recipe.Compiler;
using Recipe.Compiler.Previewing;
using Recipe.Disk;

namespace Recipe.Preview;

/// <summary>
/// What is known of the file, on a thread of its own: the compiler looks at one moment at a time, and whoever asks waits for his turn. Looks that nobody has begun
/// yet are one look.
/// </summary>
internal sealed class Desk : IDisposable
{
    // An editor empties a file and then fills it; that is no moment to show.
    private static readonly TimeSpan Breath = TimeSpan.FromMilliseconds(4);
    private const int MostBreaths = 30;

    private readonly PreviewWish _wish;
    private readonly string _name;
    private readonly Action<string> _changed;
    private readonly BlockingCollection<Action> _work = [];
    private readonly KeptShapes _files;
    private readonly LiveWorkspace _live;
    private readonly PreviewPage _page;
    private readonly LastCommit _earlier;
    private readonly FileWatch _watch;
    private readonly string _life = Seat.New().Token[..8];
    private readonly Dictionary<string, byte[]> _views = new(StringComparer.Ordinal);
    private int _lookWaits;
    private int _texts;
    private int _moment;
    private EarlierText? _compared;

    /// <summary>Begins to look.</summary>
    /// <param name="wish">What is looked at.</param>
    /// <param name="changed">Told the name of each new moment.</param>
    public Desk(PreviewWish wish, Action<string> changed)
    {
        _wish = wish;
        _changed = changed;
        _name = PathNames.Normalize(wish.Path);
        _files = new KeptShapes(wish.Files);
        _live = new LiveWorkspace(_files);
        _page = new PreviewPage(wish.Shown);
        _earlier = new LastCommit(wish, _name, earlier => Post(() =>
        {
            _compared = earlier;
            Next();
        }));
        new Thread(Run) { IsBackground = true, Name = "preview" }.Start();
        _watch = new FileWatch(Look);
        Look();
    }

    /// <summary>Something may have changed.</summary>
    public void Look()
    {
        if (Interlocked.Exchange(ref _lookWaits, 1) == 0)
        {
            Post(() =>
            {
                Interlocked.Exchange(ref _lookWaits, 0);
                LookNow();
            });
        }
    }

    /// <summary>The moment as the page shows it.</summary>
    public Task<byte[]> View(string? part) => Ask(() =>
    {
        var key = part ?? "";
        if (!_views.TryGetValue(key, out var view))
        {
            _views[key] = view = _page.Write(part, Stamp, _compared, _wish.Today());
        }

        return view;
    });

    /// <summary>What the text would do with some of its numbers changed.</summary>
    public Task<byte[]> Trial(string part, IReadOnlyDictionary<string, double> values) => Ask(() =>
    {
        var (file, found) = Sound(part);
        var text = TextWith(file, found, values);
        return PreviewPage.WriteTrial(file, Compiled(_name, text) ?? file, found.Name, _wish.Today());
    });

    /// <summary>Writes the text with some of its numbers changed into the file.</summary>
    public Task<bool> Apply(string part, string stamp, IReadOnlyDictionary<string, double> values) => Ask(() =>
    {
        var (file, found) = Sound(part);
        if (stamp != Stamp)
        {
            throw new PreviewException($"{_wish.Shown} has changed meanwhile; nothing was written. Look at it as it is now, then write.");
        }

        WholeFile.Replace(_wish.Path, file.Source.Text, TextWith(file, found, values));
        LookNow();
        return true;
    });

    /// <summary>The stations of a part and the blanks of a record of it.</summary>
    public Task<byte[]> Bench(string part, int? serial) => Ask(() =>
    {
        var (file, found) = Sound(part);
        var number = serial ?? RecordDraft.NextSerial(file, found, _files);
        var today = _wish.Today();
        var folder = Path.GetDirectoryName(_wish.Path)!;
        var draft = RecordDraft.Of(file, found, number, today, used => Path.GetRelativePath(folder, Path.GetFullPath(used)).Replace('\\', '/'));
        return PreviewPage.WriteBench(file, found, number, draft, today);
    });

    /// <summary>A record as far as it is filled in, and what the checks say of it.</summary>
    public Task<byte[]> Record(string text) => Ask(() =>
        PreviewPage.WriteRecord(text, Compiled(PathNames.Normalize(Path.Combine(Path.GetDirectoryName(_wish.Path)!, "record-draft.recipe")), text)));

    public void Dispose()
    {
        _watch.Dispose();
        _work.CompleteAdding();
    }

    // Another text, another stamp; and those of another life of the preview are of no use in this one.
    private string Stamp => string.Create(CultureInfo.InvariantCulture, $"{_life}-{_texts}");

    private (CompiledFile File, CompiledPart Part) Sound(string part)
    {
        LookNow();
        return _page.Sound is { } file && file.Parts.FirstOrDefault(known => known.Name == part) is { } found
            ? (file, found)
            : throw new PreviewException($"{_wish.Shown} has no part {part} that can be understood just now.");
    }

    private string TextWith(CompiledFile file, CompiledPart part, IReadOnlyDictionary<string, double> values) =>
        WhatIf.Text(file, part, values) ?? throw new PreviewException($"{_wish.Shown} does not declare that number any more, or it is out of range.");

    private CompiledFile? Compiled(string name, string text) =>
        new Workspace(new TextOverlay(_files, name, text), _wish.Today()).TryCompile(name, out var file) ? file : null;

    private void LookNow()
    {
        var (file, trouble) = Read();
        for (var breath = 0; breath < MostBreaths && file is { Source.Text.Length: 0 } && _page.Sound is { Source.Text.Length: > 0 }; breath++)
        {
            Thread.Sleep(Breath);
            (file, trouble) = Read();
        }

        _earlier.Look();
        _watch.Watch([_wish.Path, .. (file?.RestsOn ?? []).Where(text => text.Text is not null).Select(text => text.Name)]);
        if (_page.Take(file, trouble) || _texts == 0)
        {
            _texts++;
            Next();
        }
    }

    private void Next()
    {
        _views.Clear();
        _changed(string.Create(CultureInfo.InvariantCulture, $"{++_moment}"));
    }

    private (CompiledFile? File, string? Trouble) Read()
    {
        try
        {
            return _live.Compile(_name, _wish.Today()) is { } file ? (file, null) : (null, $"{_wish.Shown} is not there. As soon as it is back, it is shown again.");
        }
#pragma warning disable CA1031 // A file that cannot be read now may be read in a moment; what is wrong is said on the page.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            var cause = problem is AggregateException { InnerException: { } inner } ? inner : problem;
            return (null, $"{_wish.Shown} cannot be read: {cause.Message}");
        }
    }

    private void Post(Action action)
    {
        try
        {
            _work.Add(action);
        }
        catch (InvalidOperationException)
        {
            // The desk is closed.
        }
    }

    private Task<T> Ask<T>(Func<T> question)
    {
        var answer = new TaskCompletionSource<T>(TaskCreationOptions.RunContinuationsAsynchronously);
        Post(() =>
        {
            try
            {
                answer.SetResult(question());
            }
#pragma warning disable CA1031 // It is the asker's to hear.
            catch (Exception problem)
#pragma warning restore CA1031
            {
                answer.SetException(problem);
            }
        });
        return answer.Task;
    }

    private void Run()
    {
        foreach (var action in _work.GetConsumingEnumerable())
        {
            action();
        }
    }
}
