using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>The parts of one file as they were, and the text they were made from.</summary>
internal sealed class KeptFile
{
    private readonly Stretches _text;
    private readonly Book _book;
    private readonly DateOnly? _today;
    private readonly ImmutableArray<TextUsed> _others;
    private readonly Dictionary<string, CompiledPart> _parts = new(StringComparer.Ordinal);

    public KeptFile(Stretches text, Book book, DateOnly? today, ImmutableArray<TextUsed> others, ImmutableArray<CompiledPart> parts, int textsHeld)
    {
        (_text, _book, _today, _others) = (text, book, today, others);
        var texts = new HashSet<SourceText>(ReferenceEqualityComparer.Instance) { text.Source };
        foreach (var group in parts.Where(part => ReferenceEquals(part.Part.Where.Source, text.Source)).GroupBy(part => part.Part.Name, StringComparer.Ordinal))
        {
            // Two parts of one name are an error in the text; neither is kept.
            if (group.Skip(1).Any())
            {
                continue;
            }

            var part = group.First();
            var from = part.Figures.Part.Where.Source;
            if (texts.Contains(from) || texts.Count < textsHeld)
            {
                texts.Add(from);
                _parts.Add(part.Part.Name, part);
            }
        }
    }

    /// <summary>Whether all that counts for every part is as it was; fixes end their lines as the text does, so its line end counts too.</summary>
    public bool SharesAllWith(Stretches now, Book book, DateOnly? today, ImmutableArray<TextUsed> others) =>
        ReferenceEquals(_book, book) && _today == today && _others.SequenceEqual(others)
        && LineEnds.FirstOf(_text.Source.Text) == LineEnds.FirstOf(now.Source.Text)
        && _text.Shared.Select(i => _text.Texts[i]).SequenceEqual(now.Shared.Select(i => now.Texts[i]), StringComparer.Ordinal);

    /// <summary>What was made of a part, moved to where it stands now; null when something that it rests on has changed.</summary>
    public (Plan Figures, PartExamination Examination, ImmutableArray<TextSpan> Reach)? Find(Part part, Stretches now)
    {
        if (!_parts.TryGetValue(part.Name, out var known))
        {
            return null;
        }

        var (then, current) = (_text.Under(known.Part.Where), now.Under(part.Where));
        if (!then.Select(i => _text.Texts[i]).SequenceEqual(current.Select(i => now.Texts[i]), StringComparer.Ordinal))
        {
            return null;
        }

        var examination = known.Examination.MovedTo(part, where => Moved(where, then, current, now));
        return examination is null ? null : (known.Figures, examination, [.. current.Select(now.SpanOf)]);
    }

    private SourceSpan? Moved(SourceSpan where, ImmutableArray<int> then, ImmutableArray<int> current, Stretches now)
    {
        if (!ReferenceEquals(where.Source, _text.Source))
        {
            return where;
        }

        var from = _text.IndexOf(where.Span.Start);
        int to;
        if (then.BinarySearch(from) is >= 0 and var own)
        {
            to = current[own];
        }
        else if (_text.Shared.BinarySearch(from) is >= 0 and var shared)
        {
            to = now.Shared[shared];
        }
        else
        {
            return null;
        }

        var stretch = _text.SpanOf(from);
        return where.Span.End > stretch.End
            ? null
            : new SourceSpan(now.Source, where.Span with { Start = where.Span.Start - stretch.Start + now.SpanOf(to).Start });
    }
}
