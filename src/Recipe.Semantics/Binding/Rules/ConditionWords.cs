using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Binding;

/// <summary>The values of a line of conditions, one after the other.</summary>
internal sealed class ConditionWords(EntrySyntax entry, int first, LineContext context)
{
    private int _taken;

    public bool AtEnd => Next >= entry.Values.Length;

    public ValueSyntax? Peek => AtEnd ? null : At(Next);

    /// <summary>The word ahead; null when something else is.</summary>
    public string? Word => (Peek as WordSyntax)?.Text;

    /// <summary>The word behind the one ahead.</summary>
    public string? WordAfter => Next + 1 < entry.Values.Length ? (At(Next + 1) as WordSyntax)?.Text : null;

    /// <summary>The value taken last.</summary>
    public ValueSyntax Before => At(Next - 1);

    /// <summary>Just behind it: where a missing piece would stand.</summary>
    public SourceSpan End => context.At(new TextSpan((_taken > 0 ? Before.Span : entry.Head.Span).End, 0));

    public ValueSyntax Take() => At(first + _taken++);

    /// <summary>A name with something behind it; null when there is none.</summary>
    public WordSyntax? TakeName() => Next + 1 < entry.Values.Length && Peek is WordSyntax name && Take() is not null ? name : null;

    /// <summary>Whether nothing is left; what is left is reported.</summary>
    public bool Done()
    {
        if (Peek is { } extra)
        {
            context.Sink.Report(ExtraValue.Create(context.At(extra.Span), context.At(extra.Span).Text, entry.Head.Text, "must every ply { areal-weight at-most 300 g/m2 }"));
        }

        return AtEnd;
    }

    /// <summary>Steps over <c>by weight</c> or <c>by volume</c> behind a percentage: the fact says of what it is.</summary>
    public void SkipByWeight(ValueSyntax value)
    {
        if (value is QuantitySyntax { Unit.Symbol: "%" } && Word == "by" && WordAfter is "weight" or "volume")
        {
            _taken += 2;
        }
    }

    private int Next => first + _taken;

    private ValueSyntax At(int index) => index < 0 ? entry.Head : entry.Values[index];
}
