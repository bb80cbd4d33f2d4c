using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Reads one value of each kind. Returns null after having reported why; never leaves the reader where it was.</summary>
internal static class ValueReader
{
    /// <summary>Reads a value of a kind.</summary>
    public static Argument? Read(LineReader line, string name, ValueKind kind)
    {
        switch (kind)
        {
            case QuantityKind quantity:
                return QuantityReader.Read(line, name, quantity);
            case ShareKind share:
                return QuantityReader.ReadShare(line, name, share.Noun, share.AtMost, share.AtLeast);
            case CountKind count:
                return NumberReader.ReadCount(line, name, count);
            case NumberKind number:
                return NumberReader.ReadNumber(line, name, number);
            case ContentKind content:
                return MixtureReader.ReadContent(line, name, content);
            case ContentRangeKind:
                return MixtureReader.ReadContentRange(line, name);
            case MixKind:
                return MixtureReader.ReadMix(line, name);
            case VacuumKind vacuum:
                return VacuumReader.Read(line, name, vacuum);
            case SizeKind size:
                return SizeReader.Read(line, name, size);
            case OrientationKind:
                return OrientationReader.Read(line, name);
            case PriceKind:
                return AmountReader.ReadPrice(line, name);
            case AmountKind:
                return AmountReader.ReadAmount(line, name);
            case WeightKind:
                return AmountReader.ReadWeight(line, name, kind.Noun);
            case CoverKind:
                return AmountReader.ReadCover(line, name);
            case AnyQuantityKind:
                return AmountReader.ReadAny(line, name);
            case ChoiceKind choice:
                return WordReader.ReadChoice(line, name, choice);
            case NameRefKind reference:
                return WordReader.ReadName(line, name, reference);
            case AnyWordKind or NewNameKind:
                return WordReader.ReadWord(line, name, kind.Noun);
            case TextKind:
                return WordReader.ReadText(line, name, kind.Noun);
            case FreeKind:
                return WordReader.ReadFree(line, name);
            case DateKind:
                return WordReader.ReadDate(line, name, kind.Noun);
            case TimeOfDayKind:
                return NumberReader.ReadTimeOfDay(line, name);
            default:
                throw new ArgumentOutOfRangeException(nameof(kind), kind, "No reader for this kind of value.");
        }
    }

    /// <summary>Whether a value that may be left out begins here.</summary>
    public static bool CanStart(ValueKind kind, ValueSyntax value, LineContext context) => kind switch
    {
        ChoiceKind choice => value is WordSyntax word && choice.Find(word.Text) is not null,
        NameRefKind or AnyWordKind or NewNameKind => value is WordSyntax,
        OrientationKind => value is QuantitySyntax { Unit: null } or QuantitySyntax { Unit.Symbol: "deg" } or SignedSyntax or PairSyntax or PlusMinusSyntax or WordSyntax { Text: "random" },
        TextKind => value is TextSyntax,
        DateKind => value is DateSyntax,
        FreeKind => true,
        QuantityKind { OrWord: { } or } when value is WordSyntax word => word.Text == or || context.Scope.FindLet(word.Text) is not null,
        _ => value is WordSyntax word ? context.Scope.FindLet(word.Text) is not null : value is not (TextSyntax or DateSyntax),
    };

    /// <summary>Reports a value of the wrong shape.</summary>
    public static Argument? Wrong(LineReader line, ValueSyntax value, string noun)
    {
        line.Report(NotUnderstood.Shape(line.Context.At(value.Span), line.Head, noun, line.Example));
        return null;
    }

    /// <summary>The place of a value, as a span of the text.</summary>
    public static SourceSpan At(this LineReader line, SyntaxNode node) => line.Context.At(node.Span);

    /// <summary>A value as the author wrote it.</summary>
    public static string Slice(this LineReader line, TextSpan span) => line.Context.Source.Slice(span);
}
