using System.Collections.Immutable;
using Recipe.Semantics;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>
/// A text cut into stretches, one for each statement of its top level with the blanks and comments up to the next; the first holds what
/// stands before them all. A stretch that declares nothing but parts and moulds counts only for the parts that rest on it; all
/// others (materials, named values, the shop, stock, waivers, what could not be read) count for every part.
/// </summary>
internal sealed class Stretches
{
    private readonly ImmutableArray<int> _starts;
    private readonly SortedSet<int>[] _near;

    public Stretches(BoundFile file)
    {
        Source = file.Tree.Source;
        _starts = [0, .. file.Tree.Root.Statements.Select(statement => statement.Span.Start).Where(start => start > 0)];
        Texts = [.. Enumerable.Range(0, _starts.Length).Select(i => Source.Slice(SpanOf(i)))];
        var own = new bool[_starts.Length];
        var general = new bool[_starts.Length];
        _near = new SortedSet<int>[_starts.Length];
        foreach (var name in file.Names)
        {
            var at = IndexOf(name.Where.Span.Start);
            if (name.IsDeclaration)
            {
                own[at] |= name.Kind is NameKind.Part or NameKind.Mould or NameKind.Study;
                general[at] |= name.Kind is NameKind.Material or NameKind.Value or NameKind.Shop;
            }
            else if (name is { Kind: NameKind.Part or NameKind.Mould, Declaration: { } declared } && ReferenceEquals(declared.Source, Source))
            {
                var to = IndexOf(declared.Span.Start);
                (_near[at] ??= []).Add(to);
                if (name.Kind == NameKind.Part)
                {
                    // A part is looked at together with those that join, mirror or vary it.
                    (_near[to] ??= []).Add(at);
                }
            }
        }

        Shared = [.. Enumerable.Range(0, _starts.Length).Where(i => !own[i] || general[i])];
    }

    /// <summary>The text.</summary>
    public SourceText Source { get; }

    /// <summary>What stands in each.</summary>
    public ImmutableArray<string> Texts { get; }

    /// <summary>Those that count for every part, in order.</summary>
    public ImmutableArray<int> Shared { get; }

    /// <summary>The stretch of a place.</summary>
    public int IndexOf(int offset)
    {
        var index = _starts.BinarySearch(offset);
        return index >= 0 ? index : ~index - 1;
    }

    /// <summary>Where a stretch stands.</summary>
    public TextSpan SpanOf(int index) => TextSpan.FromBounds(_starts[index], index + 1 < _starts.Length ? _starts[index + 1] : Source.Length);

    /// <summary>The stretches that a part rests on, its own among them, in order.</summary>
    public ImmutableArray<int> Under(SourceSpan part)
    {
        var reached = new SortedSet<int>();
        var open = new Stack<int>([IndexOf(part.Span.Start)]);
        while (open.Count > 0)
        {
            var at = open.Pop();
            if (reached.Add(at))
            {
                foreach (var next in _near[at] ?? [])
                {
                    open.Push(next);
                }
            }
        }

        return [.. reached];
    }
}
