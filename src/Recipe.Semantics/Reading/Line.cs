using Recipe.Model;
using Recipe.Semantics.Binding;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>One line of a block, read.</summary>
/// <param name="Word">Its word in the schema; for a line that begins with a name, the schema of such lines.</param>
/// <param name="Entry">The entry.</param>
/// <param name="Reading">Its values.</param>
/// <param name="Context">Where it stands.</param>
/// <param name="BlockSource">The <c>source</c> of its block.</param>
internal sealed record Line(WordSchema Word, EntrySyntax Entry, LineReading Reading, LineContext Context, SourceNote? BlockSource)
{
    /// <summary>What the name at its head stands for, when it is a reference that was found.</summary>
    public Declaration? HeadDeclaration { get; init; }

    /// <summary>The block it stands in; null for a line of the top level.</summary>
    public BlockSyntax? Inside { get; init; }

    /// <summary>Whether it begins with a name and not with a word of the schema.</summary>
    public bool IsNameLine { get; init; }

    public string Head => Entry.Head.Text;

    public SourceSpan HeadWhere => Context.At(Entry.Head.Span);

    /// <summary>The line without its block.</summary>
    public SourceSpan Where => Context.At(Entry.LineSpan);

    public SourceNote? Source => Reading.Source ?? BlockSource;

    public Basis Basis => SourceNote.BasisOf(Source, Context.IsBook);

    /// <summary>The key under which a copy or variant replaces it.</summary>
    public string Key
    {
        get
        {
            if (!Word.OncePerFirstWord && !Word.NameIsKey)
            {
                return Word.Word;
            }

            return Reading.Arguments.Count > 0 && Reading.Arguments[0].Word is { } first ? Word.Word + " " + first : Word.Word;
        }
    }

    /// <summary>A value of the line as a figure that knows who says so; null when it is not there.</summary>
    public Figure<T>? Figure<T>(string name, Func<double, T> make) =>
        Reading.Find(name) is { } argument ? new Figure<T>(make(argument.Si), Basis, argument.Written, argument.Where, Source?.Text) : null;

    /// <summary>A value whose kind has a type of its own.</summary>
    public Figure<T>? Payload<T>(string name)
        where T : struct =>
        Reading.Find(name) is { Payload: T value } argument ? new Figure<T>(value, Basis, argument.Written, argument.Where, Source?.Text) : null;

    /// <summary>The upper end of a range.</summary>
    public Figure<T>? High<T>(string name, Func<double, T> make) =>
        Reading.Find(name)?.High is { } high ? new Figure<T>(make(high.Si), Basis, high.Written, high.Where, Source?.Text) : null;

    /// <summary>The tolerance behind a value.</summary>
    public Figure<T>? Tolerance<T>(string name, Func<double, T> make) =>
        Reading.Find(name)?.Tolerance is { } tolerance ? new Figure<T>(make(tolerance.Si), Basis, tolerance.Written, tolerance.Where, Source?.Text) : null;

    /// <summary>A word as a figure.</summary>
    public Figure<T>? Choice<T>(string name, Func<string, T> make) =>
        Reading.Find(name) is { Word: { } word } argument ? new Figure<T>(make(word), Basis, argument.Written, argument.Where, Source?.Text) : null;

    /// <summary>Word, name or text, or null.</summary>
    public string? Text(string name) => Reading.Find(name)?.Word;

    /// <summary>What a name on the line stands for, or null.</summary>
    public T? Named<T>(string name)
        where T : Declaration => Reading.Find(name)?.Payload as T;

    /// <summary>What stands behind the head, as written.</summary>
    public string Rest => Entry.Values.Length == 0
        ? ""
        : Context.Source.Slice(Entry.Values[0].Span.Union(Entry.Values[^1].Span));
}
