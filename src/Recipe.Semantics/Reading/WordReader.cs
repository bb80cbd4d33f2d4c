using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Reads words, names, texts and dates.</summary>
internal static class WordReader
{
    public static Argument? ReadChoice(LineReader line, string name, ChoiceKind kind)
    {
        var value = line.Take();
        if (value is not WordSyntax word)
        {
            return ValueReader.Wrong(line, value, kind.Noun);
        }

        if (kind.Find(word.Text) is not { } choice)
        {
            line.Report(NotUnderstood.Choice(line.At(word), word.Text, line.Head, [.. kind.Choices.Select(c => c.Word)]));
            return null;
        }

        if (choice.Word != word.Text)
        {
            line.Report(RegionalWord.Create(line.At(word), word.Text, choice.Word));
        }

        return new Argument(name, line.At(word), word.Text) { Word = choice.Word };
    }

    /// <summary>A name; a ply is only noted here, the ply list knows whether it is there.</summary>
    public static Argument? ReadName(LineReader line, string name, NameRefKind kind)
    {
        var value = line.Take();
        if (value is TextSyntax text)
        {
            line.Report(NotUnderstood.Quoted(line.At(text), line.Head, text.Text));
            return null;
        }

        if (value is not WordSyntax word)
        {
            return ClothByWeight.Report(line, value, kind) ? null : ValueReader.Wrong(line, value, kind.Noun);
        }

        var where = line.At(word);
        if (kind.Space == NameKind.Ply)
        {
            return new Argument(name, where, word.Text) { Word = word.Text };
        }

        if (NamesApart.ReadKnown(line, word, kind))
        {
            return null;
        }

        // A slip in an option reads like a name: `release-film perforatd`.
        if (Find(line.Context, word.Text, kind.Space) is null
            && Spelling.Nearest(word.Text, line.ClauseWords()) is { } option
            && Spelling.Nearest(word.Text, line.Context.Scope.NamesOf(kind.Space)) is null)
        {
            line.Report(UnknownWord.OnLine(where, word.Text, line.LineHead, [option], line.Example));
            return null;
        }

        return Resolve(line.Context, word, kind) is { } declaration
            ? new Argument(name, where, word.Text) { Word = word.Text, Payload = declaration }
            : null;
    }

    /// <summary>What a name stands for, or null after a report that there is nothing of that name or not of that kind.</summary>
    public static Binding.Declaration? Resolve(LineContext context, WordSyntax word, NameRefKind kind)
    {
        var where = context.At(word.Span);
        var declaration = Find(context, word.Text, kind.Space);
        context.Sink.Use(kind.Space, word.Text, where, declaration?.Where);
        if (declaration is null)
        {
            if (FindElsewhere(context, word.Text, kind.Space) is { } other)
            {
                context.Sink.Report(WrongKindOfName.Create(where, word.Text, kind.Noun, other.Kind, other.Declaration.Where));
                return null;
            }

            context.Sink.Report(UnknownName.Create(where, word.Text, kind.Noun, Candidates(context.Scope, kind)));
            return null;
        }

        if (declaration is Binding.MaterialDeclaration material && !kind.Keywords.IsEmpty && !kind.Keywords.Contains(material.Word.Word))
        {
            context.Sink.Report(WrongKindOfName.Create(where, word.Text, kind.Noun, Values.Numbers.A(material.Word.Word), declaration.Where));
            return null;
        }

        return declaration;
    }

    /// <summary>Whether something in scope has this name.</summary>
    public static bool IsKnown(LineContext context, string name, NameRefKind kind) => Find(context, name, kind.Space) is not null;

    /// <summary>Whether a name of the kind that is wanted is spelt nearly so.</summary>
    public static bool IsNearlyKnown(LineContext context, string name, NameRefKind kind) => Spelling.Nearest(name, Candidates(context.Scope, kind)) is not null;

    public static Argument? ReadWord(LineReader line, string name, string noun)
    {
        var value = line.Take();
        return value is WordSyntax word
            ? new Argument(name, line.At(word), word.Text) { Word = word.Text }
            : ValueReader.Wrong(line, value, noun);
    }

    public static Argument? ReadText(LineReader line, string name, string noun)
    {
        var value = line.Take();
        return value is TextSyntax text
            ? new Argument(name, line.At(text), text.Text) { Word = text.Text }
            : ValueReader.Wrong(line, value, noun);
    }

    /// <summary>Everything up to the next clause, as written; a lone text without its quotes.</summary>
    public static Argument? ReadFree(LineReader line, string name)
    {
        var first = line.Take();
        var span = first.Span;
        var alone = true;
        while (!line.AtEnd && !line.AtClause())
        {
            span = span.Union(line.Take().Span);
            alone = false;
        }

        var text = alone && first is TextSyntax quoted ? quoted.Text : line.Slice(span);
        return new Argument(name, line.Context.At(span), text) { Word = text };
    }

    public static Argument? ReadDate(LineReader line, string name, string noun)
    {
        var value = line.Take();
        if (value is not DateSyntax date)
        {
            return ValueReader.Wrong(line, value, noun);
        }

        // A day that no calendar has was reported by the grammar.
        return date.Date == DateOnly.MinValue
            ? null
            : new Argument(name, line.At(date), line.Slice(date.Span)) { Date = date.Date };
    }

    private static Binding.Declaration? Find(LineContext context, string name, NameKind space) => space switch
    {
        NameKind.Material => context.Scope.FindMaterial(name),
        NameKind.Mould => context.Scope.FindMould(name),
        NameKind.Part => context.Scope.FindPart(name),
        NameKind.Value => context.Scope.FindLet(name),
        _ => null,
    };

    private static (string Kind, Binding.Declaration Declaration)? FindElsewhere(LineContext context, string name, NameKind space)
    {
        if (space != NameKind.Material && context.Scope.FindMaterial(name) is { } material)
        {
            return (Values.Numbers.A(material.Word.Word), material);
        }

        if (space != NameKind.Mould && context.Scope.FindMould(name) is { } mould)
        {
            return (Values.Numbers.A(mould.Word.Word), mould);
        }

        return space != NameKind.Part && context.Scope.FindPart(name) is { } part ? (Values.Numbers.A(part.Word.Word), part) : null;
    }

    /// <summary>The names that would fit: of a material's kinds only.</summary>
    public static IEnumerable<string> Candidates(Binding.INameScope scope, NameRefKind kind) =>
        kind.Space == NameKind.Material && !kind.Keywords.IsEmpty
            ? kind.Keywords.SelectMany(scope.MaterialsOf).Select(d => d.Name)
            : scope.NamesOf(kind.Space);
}
