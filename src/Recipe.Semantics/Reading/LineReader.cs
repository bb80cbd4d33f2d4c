using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>
/// Reads the values behind the head of one line by its pattern: values by position first, then clauses, flags, a count and a
/// <c>source</c> in any order. Whatever does not fit is reported and stepped over, the rest is read.
/// </summary>
internal sealed class LineReader
{
    private readonly EntrySyntax _entry;
    private readonly WordSchema _word;
    private readonly BlockSchema _block;
    private readonly bool _halfRead;
    private readonly LineReading _reading;
    private LinePattern _pattern;
    private string? _clause;

    private LineReader(EntrySyntax entry, WordSchema word, BlockSchema block, LineContext context, bool halfRead)
    {
        _entry = entry;
        _word = word;
        _block = block;
        _pattern = word.Line;
        _halfRead = halfRead;
        _reading = new LineReading { IsHalfRead = halfRead };
        Context = context;
    }

    public LineContext Context { get; }

    /// <summary>The line's word in the schema.</summary>
    public WordSchema Word => _word;

    /// <summary>What messages call the place that is read: the phrase of a clause, <c>wait</c>, else how the line begins.</summary>
    public string Head => _clause ?? LineHead;

    /// <summary>How the line begins.</summary>
    public string LineHead => _entry.Head.Text;

    public int Index { get; private set; }

    public bool AtEnd => Index >= _entry.Values.Length;

    public ValueSyntax Peek => _entry.Values[Index];

    /// <summary>Just behind the value read last: where a missing piece would stand.</summary>
    public TextSpan EndOfRead => new(Index == 0 ? _entry.Head.Span.End : _entry.Values[Index - 1].Span.End, 0);

    /// <summary>Reads a line.</summary>
    /// <param name="entry">The line.</param>
    /// <param name="word">Its word.</param>
    /// <param name="block">The block it stands in, to tell a second line on the same line from a stray word.</param>
    /// <param name="context">Where it stands.</param>
    /// <param name="halfRead">Whether the grammar could not read all of it, so that nothing missing is reported.</param>
    /// <param name="rest">A second entry that stood on the same line, or null.</param>
    public static LineReading Read(EntrySyntax entry, WordSchema word, BlockSchema block, LineContext context, bool halfRead, out EntrySyntax? rest)
    {
        var reader = new LineReader(entry, word, block, context, halfRead);
        reader.ReadForm();
        rest = reader.ReadValues();
        if (!halfRead && rest is null)
        {
            MissingPieces.Report(entry, word, reader._pattern, reader._reading, context, reader.Example);
        }

        return reader._reading;
    }

    /// <summary>A value further on, 0 being the next one and -1 the last that was taken; null where the line has none.</summary>
    public ValueSyntax? Ahead(int values) => Index + values >= 0 && Index + values < _entry.Values.Length ? _entry.Values[Index + values] : null;

    public ValueSyntax Take() => _entry.Values[Index++];

    /// <summary>Whether the value ahead is this word; steps over it when it is.</summary>
    public bool TakeWord(string word)
    {
        if (!AtEnd && Peek is WordSyntax w && w.Text == word)
        {
            Index++;
            return true;
        }

        return false;
    }

    /// <summary>Whether the value ahead begins a clause, is a flag, a count or a <c>source</c>.</summary>
    public bool AtClause() => !AtEnd && Peek is WordSyntax word && IsClauseWord(word.Text);

    public bool IsClauseWord(string word)
    {
        if (word == "source" || (_pattern.Count is not null && Counts.Of(word) is not null))
        {
            return true;
        }

        foreach (var clause in _pattern.Clauses)
        {
            if (clause.Words[0] == word)
            {
                return true;
            }
        }

        foreach (var flag in _pattern.Flags)
        {
            if (flag.Words[0] == word)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The words that may stand on this line, for a did-you-mean.</summary>
    public IEnumerable<string> ClauseWords() => _pattern.Clauses.Select(c => c.Words[0]).Concat(_pattern.Flags.Select(f => f.Words[0]));

    public void Report(Recipe.Text.Findings.Finding finding) => Context.Sink.Report(finding);

    private void ReadForm()
    {
        if (_word.Forms.IsEmpty || AtEnd)
        {
            return;
        }

        if (Peek is WordSyntax first)
        {
            Index++;
            if (_word.FormOf(first.Text) is { } form)
            {
                _reading.Form = form.Word;
                _pattern = form.Line;
                return;
            }

            StrayWords.ReportForm(this, first, _block);
        }
        else
        {
            Report(NotUnderstood.Shape(Context.At(Peek.Span), Head, "the word of a form", _word.Example));
        }

        Index = _entry.Values.Length;
    }

    private EntrySyntax? ReadValues()
    {
        var next = 0;
        while (!AtEnd)
        {
            if (!(next < _pattern.Arguments.Length && _pattern.Arguments[next].IsPlyName) && (ReadCount() || (Peek is WordSyntax word && ReadByWord(word))))
            {
                continue;
            }

            if (TakeBlank())
            {
                if (next < _pattern.Arguments.Length)
                {
                    _reading.AddUnread(_pattern.Arguments[next++].Name);
                }

                continue;
            }

            while (next < _pattern.Arguments.Length && _pattern.Arguments[next].IsOptional && !ValueReader.CanStart(_pattern.Arguments[next].Kind, Peek, Context))
            {
                next++;
            }

            if (next < _pattern.Arguments.Length)
            {
                var argument = _pattern.Arguments[next];
                Read(argument.Name, argument.Kind);
                next += argument.IsRepeated ? 0 : 1;
                if (argument.IsRepeated && _pattern.Arguments.Length == next + 1)
                {
                    continue;
                }
            }
            else if (ReadLeftover() is var rest && (rest is not null || AtEnd))
            {
                return rest;
            }
        }

        return null;
    }

    private bool ReadCount()
    {
        if (_pattern.Count is null || !Counts.TryTake(this, out var count))
        {
            return false;
        }

        _reading.Count = count ?? _reading.Count;
        return true;
    }

    /// <summary>Reads a clause, flag or source when the word begins one.</summary>
    private bool ReadByWord(WordSyntax word)
    {
        if (word.Text == "source" && _word.Word != "source")
        {
            ReadSource();
            return true;
        }

        foreach (var clause in _pattern.Clauses)
        {
            if (clause.Words[0] == word.Text)
            {
                ReadClause(clause, word);
                return true;
            }
        }

        foreach (var flag in _pattern.Flags)
        {
            if (flag.Words[0] == word.Text)
            {
                var span = TakePhrase(flag.Words, flag.Phrase);
                _reading.AddFlag(flag.Phrase, Context.At(span));
                return true;
            }
        }

        return false;
    }

    private void ReadClause(ClausePattern clause, WordSyntax head)
    {
        TakePhrase(clause.Words, clause.Phrase);
        if (!clause.IsRepeated && _reading.Find(clause.Phrase) is { } before)
        {
            Report(SaidTwice.Create(Context.At(head.Span), clause.Phrase, before.Where));
        }

        if (AtEnd || (AtClause() && !MayBeName(clause.Kind)))
        {
            if (!_halfRead)
            {
                Report(MissingValue.Create(Context.At(head.Span), clause.Phrase, clause.Kind.Noun, Example));
            }

            return;
        }

        _clause = clause.Phrase;
        Read(clause.Phrase, clause.Kind);
        _clause = null;
    }

    /// <summary>Whether the word ahead, which could begin a clause, may be the name that is wanted.</summary>
    private bool MayBeName(ValueKind kind) =>
        kind is AnyWordKind or NewNameKind or NameRefKind { Space: NameKind.Ply }
        || (kind is NameRefKind reference && Peek is WordSyntax word && WordReader.IsKnown(Context, word.Text, reference));

    /// <summary>The example of the line's form, or of the line.</summary>
    public string Example => _reading.Form is { } form ? _word.FormOf(form)!.Example : _word.Example;

    /// <summary>A blank, and a unit printed behind it: <c>__ g</c>.</summary>
    private bool TakeBlank()
    {
        if (!_block.TakesBlanks || AtEnd || Peek is not WordSyntax word || word.Text.Length < 2 || word.Text.AsSpan().ContainsAnyExcept('_'))
        {
            return false;
        }

        _reading.AddBlank(Context.At(Take().Span));
        if (!AtEnd && Peek is WordSyntax unit && !AtClause() && Recipe.Text.Units.UnitTable.TryParse(unit.Text, out _))
        {
            Index++;
        }

        return true;
    }

    private void Read(string name, ValueKind kind)
    {
        if (TakeBlank())
        {
            _reading.AddUnread(name);
            return;
        }

        var before = Index;
        var read = ValueReader.Read(this, name, kind);
        if (read is not null)
        {
            _reading.Add(read);
        }
        else
        {
            // What could not be read is not missing as well.
            _reading.AddUnread(name);
        }

        if (Index == before)
        {
            Index++;
        }
    }

    private TextSpan TakePhrase(System.Collections.Immutable.ImmutableArray<string> words, string phrase)
    {
        var span = Take().Span;
        for (var i = 1; i < words.Length; i++)
        {
            if (!AtEnd && Peek is WordSyntax next && next.Text == words[i])
            {
                span = span.Union(Take().Span);
            }
            else
            {
                Report(NotUnderstood.Phrase(Context.At(span), phrase, string.Join(' ', words.Take(i))));
                break;
            }
        }

        return span;
    }

    private void ReadSource()
    {
        var head = Take();
        var assumed = TakeWord("assumed");
        string? text = null;
        if (!AtEnd && Peek is TextSyntax t)
        {
            text = t.Text;
            Index++;
        }
        else if (!_halfRead)
        {
            Report(MissingValue.Create(Context.At(head.Span), "source", "a text in quotes", "source \"data sheet, 2026-01\""));
        }

        _reading.Source = new SourceNote(assumed, text);
    }

    /// <summary>What no place of the pattern takes: a second line on this line, a stray word, or one value too many.</summary>
    private EntrySyntax? ReadLeftover()
    {
        var value = Peek;
        if (value is WordSyntax word)
        {
            if (_block.Find(word.Text) is not null || _block.FindRegional(word.Text) is not null)
            {
                Report(ExtraValue.SecondLine(Context.At(word.Span), Head, word.Text));
                var values = _entry.Values[(Index + 1)..];
                var span = values.Length == 0 ? word.Span : word.Span.Union(values[^1].Span);
                return new EntrySyntax(word, values, null, span);
            }

            if (NamesApart.ReadNew(this, word, _pattern, _reading))
            {
                return null;
            }

            StrayWords.Report(this, word, _block);
            Index++;

            // The value behind a word that nobody knows belongs to it.
            while (!AtEnd && !AtClause() && Peek is not WordSyntax)
            {
                Index++;
            }
        }
        else
        {
            var free = FreeClauses.For(value, _pattern, _reading);
            if (free is [{ IsRequired: true } only])
            {
                // One slip, one finding; the value is read as what it can only be.
                Report(MissingValue.Before(Context.At(value.Span), Head, only.Phrase, Example));
                _clause = only.Phrase;
                Read(only.Phrase, only.Kind);
                _clause = null;
                return null;
            }

            Index++;
            if (!MixedFractions.Report(this, value))
            {
                Report(ExtraValue.Create(Context.At(value.Span), Context.Source.Slice(value.Span), Head, Example, [.. free.Select(clause => clause.Phrase)]));
            }

            Index = _entry.Values.Length;
        }

        return null;
    }
}
