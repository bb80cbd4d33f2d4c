using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;

namespace Recipe.Semantics.Reading;

/// <summary>What a line needs and does not have. The first of its values that is missing is reported, not the ones behind it.</summary>
internal static class MissingPieces
{
    public static void Report(EntrySyntax entry, WordSchema word, LinePattern pattern, LineReading reading, LineContext context, string example)
    {
        var head = entry.Head.Text;
        if (!word.Forms.IsEmpty && reading.Form is null)
        {
            if (entry.Values.Length == 0)
            {
                context.Sink.Report(MissingValue.Create(context.At(entry.Head.Span), head, "a form", example));
            }

            return;
        }

        foreach (var argument in pattern.Arguments)
        {
            if (!argument.IsOptional && !reading.WasTried(argument.Name))
            {
                context.Sink.Report(MissingValue.Create(context.At(entry.Head.Span), head, argument.Kind.Noun, example));
                return;
            }
        }

        foreach (var clause in pattern.Clauses)
        {
            if (clause.IsRequired && !reading.WasTried(clause.Phrase) && !HasWord(entry, clause.Words[0]))
            {
                context.Sink.Report(MissingValue.Create(context.At(entry.Head.Span), head, $"`{clause.Phrase}` and {clause.Kind.Noun}", example));
                return;
            }
        }
    }

    // Also inside a range: in `ramp 2 degC to 50 degC` the rate is wrong and the end is there.
    private static bool HasWord(EntrySyntax entry, string word)
    {
        foreach (var value in entry.Values)
        {
            if ((value is WordSyntax found && found.Text == word) || (value is RangeSyntax && word == "to"))
            {
                return true;
            }
        }

        return false;
    }
}
