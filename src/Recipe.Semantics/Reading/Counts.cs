using System.Globalization;
using Recipe.Semantics.Findings;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Reads how often a line is repeated: <c>x2</c>, and <c>2x</c>, which is answered.</summary>
internal static class Counts
{
    /// <summary>The most that one line may be repeated: our own limit, far above any part that is laid by hand.</summary>
    public const int Most = 1_000;

    /// <summary>The number of <c>x2</c>, or null.</summary>
    public static int? Of(string word) =>
        word.Length > 1 && word[0] is 'x' or '×' && word.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0
            ? int.TryParse(word.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : int.MaxValue
            : null;

    /// <summary>Whether a count with its sign behind the number is ahead, <c>2x</c>; a value behind the sign makes it a size.</summary>
    public static bool IsTurnedRound(LineReader line) =>
        line.Ahead(0) is QuantitySyntax { Unit: null, Number: >= 0 and <= int.MaxValue } number && number.Number == Math.Floor(number.Number)
        && line.Ahead(1) is WordSyntax { Text: "x" }
        && line.Ahead(2) is not (QuantitySyntax or CompoundSyntax or ParenthesisSyntax);

    /// <summary>Reads a count that is ahead, turned round or not; what it is, or null when there is none or it cannot be.</summary>
    /// <param name="line">The line.</param>
    /// <param name="count">The count; null when it cannot be.</param>
    /// <returns>Whether there was one.</returns>
    public static bool TryTake(LineReader line, out int? count)
    {
        count = null;
        if (line.Ahead(0) is WordSyntax word && Of(word.Text) is { } straight)
        {
            count = Within(line, line.Take().Span, straight);
            return true;
        }

        if (line.Ahead(0) is WordSyntax { Text: "x" or "×" } sign && line.Ahead(1) is QuantitySyntax { Unit: null, Number: >= 0 and <= int.MaxValue } apart
            && apart.Number == Math.Floor(apart.Number))
        {
            line.Take();
            var both = sign.Span.Union(line.Take().Span);
            line.Report(NotUnderstood.Habit(line.Context.At(both), string.Create(CultureInfo.InvariantCulture, $"x{apart.Number}")));
            count = Within(line, both, (int)apart.Number);
            return true;
        }

        if (!IsTurnedRound(line))
        {
            return false;
        }

        var number = (QuantitySyntax)line.Take();
        var where = number.Span.Union(line.Take().Span);
        line.Report(NotUnderstood.CountTurnedRound(line.Context.At(where), (int)number.Number));
        count = Within(line, where, (int)number.Number);
        return true;
    }

    private static int? Within(LineReader line, TextSpan where, int count)
    {
        if (count is > 0 and <= Most)
        {
            return count;
        }

        line.Report(OutOfRange.Create(line.Context.At(where), line.Head, line.Slice(where), count == 0 ? "at least x1" : $"at most x{Most.ToString(CultureInfo.InvariantCulture)}"));
        return null;
    }
}
