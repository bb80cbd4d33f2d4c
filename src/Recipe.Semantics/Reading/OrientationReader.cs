using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Values;
using Recipe.Syntax;

namespace Recipe.Semantics.Reading;

/// <summary>Reads how fibres lie. Degrees are understood: a bare number is an angle here.</summary>
internal static class OrientationReader
{
    public static Argument? Read(LineReader line, string name)
    {
        var value = line.Take();
        Orientation? orientation = value switch
        {
            WordSyntax { Text: "random" } => Orientation.Random,
            PairSyntax { Unit: null or { Symbol: "deg" } } pair => new Orientation(OrientationKind.Pair, pair.Left, pair.Right),
            PlusMinusSyntax { Quantity: { Unit: null or { Symbol: "deg" } } q } => new Orientation(OrientationKind.Pair, q.Number, -q.Number),
            QuantitySyntax { Unit: null or { Symbol: "deg" } } q => new Orientation(OrientationKind.Single, q.Number),
            SignedSyntax { Quantity: { Unit: null or { Symbol: "deg" } } q } s => new Orientation(OrientationKind.Single, s.Negative ? -q.Number : q.Number),
            _ => null,
        };
        if (orientation is not { } o)
        {
            return ValueReader.Wrong(line, value, "an orientation");
        }

        if (o.Kind == OrientationKind.Single && SecondAngle(line) is { } second)
        {
            ReportTwo(line, value, o.First, second);
            return null;
        }

        if (Math.Abs(o.First) > 90 || Math.Abs(o.Second) > 90)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), $"-90 to 90; {Numbers.Format(Math.Abs(o.First) > 90 ? o.First : o.Second)} degrees lies as {Numbers.Format(Folded(Math.Abs(o.First) > 90 ? o.First : o.Second))}"));
            return null;
        }

        if (o.Kind == OrientationKind.Pair && (o.First - o.Second) % 180 == 0)
        {
            line.Report(NotUnderstood.OneDirectionTwice(line.At(value), o.First % 90 == 0 ? "0/90" : "+/-" + Numbers.Format(Math.Abs(o.First))));
            return null;
        }

        return new Argument(name, line.At(value), line.Slice(value.Span)) { Payload = o };
    }

    /// <summary>A second angle behind the first; a number with an x behind it is a count.</summary>
    private static double? SecondAngle(LineReader line) => line.AtEnd ? null : line.Peek switch
    {
        QuantitySyntax { Unit: null or { Symbol: "deg" } } q when !Counts.IsTurnedRound(line) => q.Number,
        SignedSyntax { Quantity: { Unit: null or { Symbol: "deg" } } q } s => s.Negative ? -q.Number : q.Number,
        _ => null,
    };

    private static void ReportTwo(LineReader line, ValueSyntax value, double first, double second)
    {
        var where = line.Context.At(value.Span.Union(line.Take().Span));
        var written = first == -second && first != 0 ? "+/-" + Numbers.Format(Math.Abs(first)) : $"{Numbers.Format(first)}/{Numbers.Format(second)}";
        line.Report(NotUnderstood.TwoDirections(where, line.Head, written));
    }

    /// <summary>The same line of fibres within -90 to 90 degrees.</summary>
    private static double Folded(double degrees)
    {
        var within = degrees % 180;
        return within > 90 ? within - 180 : within <= -90 ? within + 180 : within;
    }
}
