using Recipe.Semantics.Binding;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Reads the lines of a block through its schema: unknown words, regional words and repetitions are found here.</summary>
internal sealed class BlockReader
{
    private readonly BlockSyntax? _block;
    private readonly BlockSchema _schema;
    private readonly LineContext _context;
    private readonly List<Line> _lines = [];
    private readonly Dictionary<string, Line> _byKey = new(StringComparer.Ordinal);
    private SourceNote? _source;

    private BlockReader(BlockSyntax? block, BlockSchema schema, LineContext context, SourceNote? outer)
    {
        _block = block;
        _schema = schema;
        _context = context;
        _source = outer;
    }

    /// <summary>Reads a block; one that is not there has no lines.</summary>
    /// <param name="block">The block, or null.</param>
    /// <param name="schema">Its words.</param>
    /// <param name="context">Where it stands.</param>
    /// <param name="outer">The source that holds outside, for lines that have none of their own.</param>
    public static Lines Read(BlockSyntax? block, BlockSchema schema, LineContext context, SourceNote? outer = null)
    {
        var reader = new BlockReader(block, schema, context, outer);
        if (block is not null)
        {
            reader.ReadAll(block);
        }

        return new Lines(reader._lines);
    }

    /// <summary>The block of a line, through the schema of its word; a source on the line stands for its block.</summary>
    public static Lines Read(Line line) => Read(line.Entry.Block, line.Word.Block!, line.Context, line.Source);

    /// <summary>A statement as an entry with its block, and whether part of it could not be read; null when nothing could.</summary>
    public static (EntrySyntax Entry, bool HalfRead)? EntryOf(StatementSyntax statement) => statement switch
    {
        EntrySyntax entry => (entry, false),
        ErrorSyntax { Entry: { } half } error => (half.Block is null && error.Block is not null ? half with { Block = error.Block } : half, true),
        _ => null,
    };

    private void ReadAll(BlockSyntax block)
    {
        foreach (var statement in block.Statements)
        {
            if (EntryOf(statement) is { Entry.Head.Text: "source" } source)
            {
                // Read once more in its turn, where its faults are reported.
                var reading = LineReader.Read(source.Entry, MaterialWords.Source, _schema, _context.Quietly(), source.HalfRead, out _);
                _source = new SourceNote(reading.Find("assumed") is not null, reading.Find(Define.Value)?.Word);
                break;
            }
        }

        foreach (var statement in block.Statements)
        {
            if (statement is LetSyntax let)
            {
                _context.Sink.Report(NotUnderstood.NotHere(_context.At(let.Name.Span), "A `let`", "named values stand at the top level of the file"));
            }
            else if (EntryOf(statement) is { } entry)
            {
                ReadEntry(entry.Entry, entry.HalfRead);
            }
        }
    }

    private void ReadEntry(EntrySyntax? entry, bool halfRead)
    {
        while (entry is not null)
        {
            entry = ReadOne(entry, halfRead);
        }
    }

    /// <summary>Reads an entry and gives back a second one that stood on its line.</summary>
    private EntrySyntax? ReadOne(EntrySyntax entry, bool halfRead)
    {
        var head = entry.Head;
        var word = _schema.Find(head.Text);
        var isNameLine = false;
        Declaration? declaration = null;
        if (word is null)
        {
            var where = _context.At(head.Span);
            if (_schema.NameHead is NameRefKind reference && WordReader.IsKnown(_context, head.Text, reference))
            {
                word = _schema.NameLine;
                isNameLine = true;
                declaration = WordReader.Resolve(_context, head, reference);
            }
            else if (_schema.FindRegional(head.Text) is { } canonical)
            {
                word = canonical;
                _context.Sink.Report(RegionalWord.Create(where, head.Text, canonical.Word));
            }
            else if (_schema.NameHead is not NewNameKind && MeantAtTheBench(entry) is { } meant)
            {
                _context.Sink.Report(UnknownWord.Line(_context.At(meant.Written), meant.Word, _schema));
            }
            else if (_schema.NameLine is null || IsSlip(head.Text) || BelongsElsewhere(head.Text))
            {
                _context.Sink.Report(UnknownWord.Line(where, head.Text, _schema));
                word = _schema.NameHead is NewNameKind ? _schema.NameLine : null;
                isNameLine = word is not null;
            }
            else
            {
                word = _schema.NameLine;
                isNameLine = true;
                if (_schema.NameHead is NameRefKind wanted)
                {
                    declaration = WordReader.Resolve(_context, head, wanted);
                }
            }
        }

        if (word is null)
        {
            return null;
        }

        var reading = LineReader.Read(entry, word, _schema, _context, halfRead, out var rest);
        if (rest is not null && entry.Block is { } block && BlockIsOf(rest, word))
        {
            rest = rest with { Block = block };
            entry = entry with { Block = null };
        }

        CheckBlock(entry, word, halfRead);
        Add(new Line(word, entry, reading, _context, _source) { IsNameLine = isNameLine, HeadDeclaration = declaration, Inside = _block });
        return rest;
    }

    /// <summary>What the bench means by the first word of a line, or by its first two: <c>heat lamp</c>.</summary>
    private (BenchWord Word, TextSpan Written)? MeantAtTheBench(EntrySyntax entry)
    {
        if (entry.Values is [WordSyntax second, ..])
        {
            var joined = $"{entry.Head.Text}-{second.Text}";
            if ((BenchWords.Find(joined, _schema, null) ?? WrittenApart(joined)) is { } two)
            {
                return (two, entry.Head.Span.Union(second.Span));
            }
        }

        return BenchWords.Find(entry.Head.Text, _schema, null) is { } one ? (one, entry.Head.Span) : null;
    }

    /// <summary>A word of the block whose hyphen is missing: <c>bag film</c>.</summary>
    private BenchWord? WrittenApart(string joined) => (_schema.Find(joined) ?? _schema.FindRegional(joined)) is { } word
        ? new BenchWord(joined, $"it is one word here, `{word.Word}`") { Write = word.Word }
        : null;

    /// <summary>Whose block it is, of two entries on one line: the second one's, unless only the first takes one.</summary>
    private bool BlockIsOf(EntrySyntax second, WordSchema first) =>
        first.Block is null || (_schema.Find(second.Head.Text) ?? _schema.FindRegional(second.Head.Text))?.Block is not null;

    /// <summary>Where a name may begin a line: whether it is a word of another block, and no name that is nearly right.</summary>
    private bool BelongsElsewhere(string word) =>
        _schema.NameHead is NameRefKind reference && RecipeSchema.BlocksWith(word).Any() && !WordReader.IsNearlyKnown(_context, word, reference);

    /// <summary>Where any word may begin a line, or a name may: whether it is one letter away from a word of the schema.</summary>
    private bool IsSlip(string word) =>
        word.Length >= 4 && _schema.Words.Any(w => w.Word.Length >= 4 && Spelling.Distance(word, w.Word) == 1);

    private void CheckBlock(EntrySyntax entry, WordSchema word, bool halfRead)
    {
        if (entry.Block is { } block && word.Block is null)
        {
            _context.Sink.Report(NotUnderstood.NoBlock(_context.At(block.OpenBrace), entry.Head.Text));
        }
        else if (entry.Block is null && word.NeedsBlock && !halfRead)
        {
            _context.Sink.Report(MissingValue.Create(_context.At(entry.Head.Span), entry.Head.Text, "a block in braces", word.Example));
        }
    }

    private void Add(Line line)
    {
        if ((line.IsNameLine && !_schema.NamesOnce) || (line.Word.IsRepeatable && !line.Word.NameIsKey))
        {
            _lines.Add(line);
            return;
        }

        var key = line.IsNameLine ? line.Head : line.Key;
        if (!_byKey.TryAdd(key, line))
        {
            _context.Sink.Report(SaidTwice.Create(line.HeadWhere, key, _byKey[key].HeadWhere));
            return;
        }

        _lines.Add(line);
    }
}
