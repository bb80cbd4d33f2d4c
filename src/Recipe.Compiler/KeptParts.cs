using System.Collections.Concurrent;
using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Semantics;

namespace Recipe.Compiler;

/// <summary>
/// What was planned and found for the parts of each file, kept from one workspace to the next. A part is planned and checked anew only
/// when a text that it rests on has changed: its own lines, its mould, parts it is made from or joined with, and everything
/// that is neither a part nor a mould. Only the latest of each file is held.
/// </summary>
public sealed class KeptParts
{
    // A plan that is kept holds the text it was made from. A part whose text is one of more than so many is planned anew.
    private const int TextsHeld = 8;

    private readonly bool _keeps;
    private readonly ConcurrentDictionary<string, KeptFile> _files = new(StringComparer.Ordinal);

    /// <summary>Keeps the parts.</summary>
    public KeptParts()
        : this(keeps: true)
    {
    }

    private KeptParts(bool keeps) => _keeps = keeps;

    /// <summary>Forgets a file that is gone.</summary>
    public void Forget(string name) => _files.TryRemove(name, out _);

    /// <summary>One that keeps nothing, for a workspace that is looked at once.</summary>
    internal static KeptParts Nothing() => new(keeps: false);

    /// <summary>The parts of a file: those that nothing has changed for as they were, moved to where they stand now; all others made anew.</summary>
    internal ImmutableArray<CompiledPart> PartsOf(
        BoundFile file, Book book, DateOnly? today, ImmutableArray<TextUsed> restsOn, Func<Part, (Plan Plan, PartExamination Examination)> make)
    {
        var name = file.Tree.Source.Name;
        var now = new Stretches(file);
        var others = restsOn.RemoveAll(text => text.Name == name);
        var before = _files.TryGetValue(name, out var kept) && kept.SharesAllWith(now, book, today, others) ? kept : null;
        var parts = file.Model.Parts;
        var made = new CompiledPart[parts.Length];
        var stale = new List<int>();
        for (var i = 0; i < parts.Length; i++)
        {
            if (ReferenceEquals(parts[i].Where.Source, now.Source) && before?.Find(parts[i], now) is { } same)
            {
                var part = parts[i];
                made[i] = new CompiledPart(part, same.Figures, new Lazy<Plan>(() => Planner.Plan(part, file.Model)), same.Examination, same.Reach);
            }
            else
            {
                stale.Add(i);
            }
        }

        // Parts are planned without knowing of each other: where there are several, side by side.
        const int fewParts = 3;
        if (stale.Count > fewParts)
        {
            Parallel.ForEach(stale, i => made[i] = Fresh(parts[i]));
        }
        else
        {
            stale.ForEach(i => made[i] = Fresh(parts[i]));
        }

        ImmutableArray<CompiledPart> all = [.. made];
        if (_keeps)
        {
            _files[name] = new KeptFile(now, book, today, others, all, TextsHeld);
        }

        return all;

        CompiledPart Fresh(Part part)
        {
            var (plan, examination) = make(part);
            return new CompiledPart(part, plan, new Lazy<Plan>(plan), examination, [.. now.Under(part.Where).Select(now.SpanOf)]);
        }
    }
}
