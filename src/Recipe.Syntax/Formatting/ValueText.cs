using System.Collections.Immutable;
using System.Text;
using Recipe.Syntax.Findings;
using Recipe.Text;

namespace Recipe.Syntax.Formatting;

/// <summary>Writes values in their one spelling: one blank between number and unit, <c>+/-</c> for its sign, no blanks inside pairs and ratios.</summary>
internal sealed class ValueText(SourceText source, ImmutableArray<Token> tokens)
{
    private readonly StringBuilder _text = new();

    /// <summary>One value.</summary>
    public string Of(ValueSyntax value) => value is WordSyntax word ? word.Text : Of([value]);

    /// <summary>Values with one blank between them.</summary>
    public string Of(ReadOnlySpan<ValueSyntax> values)
    {
        _text.Clear();
        foreach (var value in values)
        {
            if (_text.Length > 0)
            {
                _text.Append(' ');
            }

            Write(_text, value);
        }

        return _text.ToString();
    }

    private void Write(StringBuilder text, ValueSyntax value)
    {
        switch (value)
        {
            case QuantitySyntax { UnitSpan: { } unit } quantity:
                Copy(text, quantity.NumberSpan);
                text.Append(BeforeUnit(unit));
                Copy(text, unit);
                break;
            case CompoundSyntax compound:
                Join(text, compound.Parts, " ");
                break;
            case RatioSyntax ratio:
                Join(text, ratio.Parts, ":");
                break;
            case SignedSyntax signed:
                text.Append(signed.Negative ? '-' : '+');
                Write(text, signed.Quantity);
                break;
            case PlusMinusSyntax plusMinus:
                text.Append(BothSigns(plusMinus.Span.Start, plusMinus.Quantity.Span.Start));
                Write(text, plusMinus.Quantity);
                break;
            case RangeSyntax range:
                Write(text, range.Low);
                text.Append(" to ");
                Write(text, range.High);
                break;
            case ToleranceSyntax tolerance:
                Write(text, tolerance.Value);
                text.Append(' ').Append(BothSigns(tolerance.Value.Span.End, tolerance.Tolerance.Span.Start)).Append(' ');
                Write(text, tolerance.Tolerance);
                break;
            case ParenthesisSyntax parenthesis:
                text.Append('(');
                Write(text, parenthesis.Inner);
                text.Append(')');
                WriteUnitAfter(text, parenthesis);
                break;
            case BinarySyntax binary:
                Write(text, binary.Left);
                text.Append(' ').Append(binary.Operator).Append(' ');
                Write(text, binary.Right);
                break;
            case NegateSyntax negate:
                text.Append('-');
                Write(text, negate.Operand);
                break;
            case PairSyntax:
                WritePair(text, value.Span);
                break;
            case WordSyntax word:
                text.Append(word.Text);
                break;
            default:
                Copy(text, value.Span);
                break;
        }
    }

    private void Copy(StringBuilder text, TextSpan span) => text.Append(source.Text, span.Start, span.Length);

    // What was answered with a finding is laid out as it was written, so that the lines round it can be laid out: a mark behind a blank would open a text.
    private string BeforeUnit(TextSpan unit) => InchMark.Read(source.Text, unit.Start) is null ? " " : "";

    private string BothSigns(int start, int end) => source.Text.AsSpan(start, end - start).Contains("+-", StringComparison.Ordinal) ? "+-" : "+/-";

    private void Join(StringBuilder text, ImmutableArray<QuantitySyntax> parts, string separator)
    {
        for (var i = 0; i < parts.Length; i++)
        {
            text.Append(i == 0 ? "" : separator);
            Write(text, parts[i]);
        }
    }

    private void WriteUnitAfter(StringBuilder text, ParenthesisSyntax parenthesis)
    {
        if (parenthesis.Unit is not null)
        {
            var unit = tokens[TokenSearch.At(tokens, parenthesis.Span.End - 1)];
            text.Append(' ');
            Copy(text, unit.Span);
        }
    }

    private void WritePair(StringBuilder text, TextSpan span)
    {
        for (var i = TokenSearch.At(tokens, span.Start); tokens[i].Span.Start < span.End; i++)
        {
            if (tokens[i].Kind is TokenKind.Unit)
            {
                text.Append(BeforeUnit(tokens[i].Span));
            }

            if (tokens[i].Kind is not (TokenKind.Blank or TokenKind.LineEnd))
            {
                Copy(text, tokens[i].Span);
            }
        }
    }
}
