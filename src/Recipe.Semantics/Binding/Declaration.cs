using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Binding;

/// <summary>What came out of binding one declaration.</summary>
internal sealed record Bound<T>(T Value, ImmutableArray<Finding> Findings, ImmutableArray<NameUse> Names);

/// <summary>A named thing in a text. It is bound when somebody asks; two threads that ask at once may both do the work, the first wins.</summary>
/// <remarks>What is bound is looked at before <see cref="LazyInitializer"/> is asked: what is there already costs no delegate.</remarks>
internal abstract class Declaration(string name, TextSpan nameSpan, LineContext context)
{
    public string Name { get; } = name;

    public TextSpan NameSpan { get; } = nameSpan;

    /// <summary>Its text and scope. The sink is quiet: each binding brings its own.</summary>
    public LineContext Context { get; } = context.Quietly();

    public SourceSpan Where => Context.At(NameSpan);
}

/// <summary>A declaration with a block.</summary>
internal abstract class BlockDeclaration(string name, EntrySyntax entry, WordSchema word, bool halfRead, TextSpan nameSpan, LineContext context)
    : Declaration(name, nameSpan, context)
{
    public EntrySyntax Entry { get; } = entry;

    public WordSchema Word { get; } = word;

    /// <summary>Whether the grammar could not read all of its first line.</summary>
    public bool HalfRead { get; } = halfRead;

    /// <summary>The block's schema.</summary>
    public BlockSchema Schema => Word.Block!;

    /// <summary>Reads its first line, its name declared.</summary>
    public LineReading ReadHead(LineContext context, NameKind space)
    {
        context.Sink.Use(space, Name, Where, Where);
        if (Entry.Block is null && Word.NeedsBlock && !HalfRead)
        {
            context.Sink.Report(MissingValue.Create(HeadWhere, Entry.Head.Text, "a block in braces", Word.Example));
        }

        return LineReader.Read(Entry, Word, RecipeSchema.File, context, HalfRead, out _);
    }

    /// <summary>Reads its block.</summary>
    public Lines ReadLines(LineContext context) => BlockReader.Read(Entry.Block, Schema, context, HeadSource());

    /// <summary>The name behind a word of its first line (<c>like NAME</c>, <c>of NAME</c>), or null.</summary>
    public WordSyntax? NameBehind(string word)
    {
        for (var i = 1; i + 1 < Entry.Values.Length; i++)
        {
            if (Entry.Values[i] is WordSyntax w && w.Text == word)
            {
                return Entry.Values[i + 1] as WordSyntax;
            }
        }

        return null;
    }

    /// <summary>A <c>source</c> on its first line, which stands for its block.</summary>
    private SourceNote? HeadSource()
    {
        if (NameBehind("source") is { Text: "assumed" } assumed)
        {
            return new SourceNote(true, TextBehind(assumed));
        }

        foreach (var value in Entry.Values)
        {
            if (value is WordSyntax { Text: "source" } source)
            {
                return new SourceNote(false, TextBehind(source));
            }
        }

        return null;
    }

    private string? TextBehind(WordSyntax word)
    {
        var index = Entry.Values.IndexOf(word);
        return index + 1 < Entry.Values.Length && Entry.Values[index + 1] is TextSyntax text ? text.Text : null;
    }

    /// <summary>The place of its first word.</summary>
    public SourceSpan HeadWhere => Context.At(Entry.Head.Span);
}

/// <summary>A material.</summary>
internal sealed class MaterialDeclaration(string name, EntrySyntax entry, WordSchema word, bool halfRead, TextSpan nameSpan, LineContext context)
    : BlockDeclaration(name, entry, word, halfRead, nameSpan, context)
{
    private Bound<Material>? _bound;

    public Bound<Material> Bound => Volatile.Read(ref _bound) ?? LazyInitializer.EnsureInitialized(ref _bound, () => MaterialBinder.Bind(this));

    public Material Material => Bound.Value;

    /// <summary>Whether its block says <c>default yes</c>.</summary>
    public bool IsDefault { get; init; }
}

/// <summary>A mould or pattern.</summary>
internal sealed class MouldDeclaration(string name, EntrySyntax entry, WordSchema word, bool halfRead, TextSpan nameSpan, LineContext context)
    : BlockDeclaration(name, entry, word, halfRead, nameSpan, context)
{
    private Bound<Mould>? _bound;

    public Bound<Mould> Bound => Volatile.Read(ref _bound) ?? LazyInitializer.EnsureInitialized(ref _bound, () => MouldBinder.Bind(this));

    public Mould Mould => Bound.Value;
}

/// <summary>A part or variant.</summary>
internal sealed class PartDeclaration(string name, EntrySyntax entry, WordSchema word, bool halfRead, TextSpan nameSpan, LineContext context)
    : BlockDeclaration(name, entry, word, halfRead, nameSpan, context)
{
    private Bound<Part>? _bound;

    public Bound<Part> Bound => Volatile.Read(ref _bound) ?? LazyInitializer.EnsureInitialized(ref _bound, () => PartBinder.Bind(this));

    public Part Part => Bound.Value;

    /// <summary>Whether it is a variant of another part.</summary>
    public bool IsVariant => Word.Word == "variant";
}

/// <summary>An <c>explore</c>.</summary>
internal sealed class StudyDeclaration(string name, EntrySyntax entry, WordSchema word, bool halfRead, TextSpan nameSpan, LineContext context)
    : BlockDeclaration(name, entry, word, halfRead, nameSpan, context)
{
    private Bound<Study>? _bound;

    public Bound<Study> Bound => Volatile.Read(ref _bound) ?? LazyInitializer.EnsureInitialized(ref _bound, () => StudyBinder.Bind(this));

    public Study Study => Bound.Value;
}

/// <summary>A house rule.</summary>
internal sealed class RuleDeclaration(string name, EntrySyntax entry, WordSchema word, bool halfRead, TextSpan nameSpan, LineContext context)
    : BlockDeclaration(name, entry, word, halfRead, nameSpan, context)
{
    private Bound<HouseRule>? _bound;

    public Bound<HouseRule> Bound => Volatile.Read(ref _bound) ?? LazyInitializer.EnsureInitialized(ref _bound, () => RuleBinder.Bind(this));

    public HouseRule Rule => Bound.Value;
}

/// <summary>A named value.</summary>
internal sealed class LetDeclaration(string name, LetSyntax let, LineContext context)
    : Declaration(name, let.Name.Span, context)
{
    private Bound<NamedValue?>? _bound;

    public ValueSyntax Expression { get; } = let.Value;

    public Bound<NamedValue?> Bound => Volatile.Read(ref _bound) ?? LazyInitializer.EnsureInitialized(ref _bound, () => LetBinder.Bind(this));

    public NamedValue? Value => Bound.Value;
}

/// <summary>The value of a name and how papers write it.</summary>
internal sealed record NamedValue(Value Value, string? Written);
