using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Numbers that can be read from a metre away, and named values.</summary>
internal static class PdfNumbers
{
    // A paper on its side has room for four numbers beside each other.
    private const double FourWide = 220;

    /// <summary>A number that matters: its digits large, its unit less so; no unit is parted from its number, and none is set in small type to fit unless nothing else helps.</summary>
    public static Piece Big(string value, double width, PdfMeasures measures, Align align = Align.Left)
    {
        var size = measures.Big;
        var (least, _) = PdfLines.Widths(Inks(value, size));
        if (least > width)
        {
            size = Math.Max(size * width / least, measures.Body);
        }

        return TextPiece.Of(Inks(value, size), width, size, Math.Min(measures.Leading, 1.1), align);
    }

    /// <summary>The same as inks.</summary>
    public static IEnumerable<PdfLines.Ink> Inks(string value, double sizePt)
    {
        var words = value.Split(' ', '\u00A0');
        var at = 0;
        foreach (var word in words)
        {
            var between = at + word.Length < value.Length ? value[at + word.Length].ToString() : "";
            at += word.Length + 1;
            var isNumber = word.Length > 0 && (char.IsAsciiDigit(word[0]) || word[0] == '-');
            yield return new PdfLines.Ink(word + between, Strong: true, isNumber ? sizePt : 0.65 * sizePt);
        }
    }

    /// <summary>A panel of large numbers: two to four beside each other; at the bench the last one has a row of its own to its end.</summary>
    public static IEnumerable<Piece> Panel(KeyNumbers numbers, double width, PdfMeasures measures)
    {
        yield return Heading(numbers.Caption, width, measures);
        var most = measures.IsBench ? PanelColumns.AtTheBench(numbers) : numbers.Items.Length == 4 && width > FourWide ? 4 : 3;
        var rows = numbers.Items.Chunk(numbers.Items.Length == 1 ? 1 : most).ToList();
        for (var i = 0; i < rows.Count; i++)
        {
            var wide = width / (rows[i].Length == 1 && (measures.IsBench || numbers.Items.Length == 1) ? 1 : most);
            var cards = rows[i].Select(number => Card(number, wide, measures)).ToList();
            var height = cards.Max(card => card.Height);
            var pieces = rows[i].Select((number, k) => new Beside(k * wide, new FramedPiece(cards[k], 0, 0, 0, (sheet, x, y, h) => sheet.Frame(x, y, wide, h, new Pen(number.Alarm ? 1.2 : 0.4)), height)));
            yield return new RowPiece([.. pieces], isTop: true)
            {
                Keep = i < rows.Count - 1 ? Keep.Together : Keep.None,
                After = i < rows.Count - 1 ? 0 : measures.Gap(3),
            };
        }
    }

    /// <summary>Named values, two beside each other where they have a space to write in.</summary>
    public static IEnumerable<Piece> Facts(ImmutableArray<Fact> facts, double width, PdfMeasures measures)
    {
        var gap = measures.IsBench ? 6.0 : 8.0;
        var half = (width - gap) / 2;
        for (var i = 0; i < facts.Length; i++)
        {
            // At the desk short values stand two beside each other too, as in a browser.
            var isPair = i + 1 < facts.Length && (facts[i].Blank, facts[i + 1].Blank) switch
            {
                ({ }, { }) => true,
                (null, null) => !measures.IsBench && IsShort(facts[i]) && IsShort(facts[i + 1]),
                _ => false,
            };
            var isWide = facts[i].Blank is null && !isPair;
            var left = Ruled(facts[i], isWide ? width : half, measures);
            yield return isPair
                ? new RowPiece([new Beside(0, left), new Beside(half + gap, Ruled(facts[++i], half, measures, left.Height))], isTop: true) { After = i == facts.Length - 1 ? measures.Gap(3) : 0 }
                : new RowPiece([new Beside(0, left)]) { After = i == facts.Length - 1 ? measures.Gap(3) : 0 };
        }

        bool IsShort(Fact fact) => PdfLines.Widths([.. PdfLines.Inks(fact.Value, measures.Body)]).Whole <= half - measures.LabelWide - 3;
    }

    /// <summary>A heading inside a station.</summary>
    public static Piece Heading(string text, double width, PdfMeasures measures)
    {
        var heading = TextPiece.Of(text, width, measures.Heading, 1.15, strong: true);
        (heading.Before, heading.After, heading.Keep) = (measures.Gap(measures.IsBench ? 2 : 3), measures.Gap(1), Keep.Firmly);
        return heading;
    }

    private static FramedPiece Card(KeyNumber number, double width, PdfMeasures measures)
    {
        const double side = PanelColumns.Side;
        var inner = width - (2 * side);
        var isBeside = number.Blank is not null;
        var room = isBeside ? inner - PdfMeasures.BlankWide - 2 : inner;
        var left = new StackPiece([
            TextPiece.Of((number.Alarm ? "▲ " : "") + number.Label, room, measures.Body, measures.Leading),
            Big(number.Value, room, measures)]);
        var lines = new List<Piece>
        {
            number.Blank is { } blank
                ? new RowPiece(
                    [
                        new Beside(0, left),
                        new Beside(room + 2, new StackPiece([TextPiece.Of(blank.What, PdfMeasures.BlankWide, measures.Note, 1.1), PdfMarks.Blank(blank, PdfMeasures.BlankWide)])),
                    ],
                    isTop: true)
                : left,
        };
        if (number.Note is { } note)
        {
            lines.Add(TextPiece.Of(note, inner, measures.Note, measures.Leading));
        }

        return new FramedPiece(new StackPiece(lines), side, measures.Gap(1.5), measures.Gap(1.5), (_, _, _, _) => { });
    }

    private static FramedPiece Ruled(Fact fact, double width, PdfMeasures measures, double least = 0)
    {
        var pad = measures.Gap(0.8);
        Piece label = TextPiece.Of(fact.Label, measures.LabelWide, measures.Label, measures.Leading);
        var at = measures.LabelWide + 3;
        var value = Value(fact, width - at, measures);

        // Where the space to write in has gone under the value, the label stays beside the value, on its line.
        var isHigh = value is StackPiece;
        if (isHigh)
        {
            label = new FramedPiece(label, 0, (measures.Body - measures.Label) * Lettering.MmPerPoint, 0, (_, _, _, _) => { });
        }

        var row = new RowPiece([new Beside(0, label), new Beside(at, value)], isTop: isHigh);
        return new FramedPiece(row, 0, pad, pad, (sheet, x, y, height) => sheet.Line(x, y + height, x + width, y + height, 0.2), Math.Max(least, 0));
    }

    private static Piece Value(Fact fact, double width, PdfMeasures measures)
    {
        var inks = PdfLines.Inks(fact.Value, measures.Body, strong: fact.Blank is not null).ToList();
        if (fact.Blank is not { } blank)
        {
            return TextPiece.Of(inks, width, measures.Body, measures.Leading);
        }

        if (fact.Value.IsEmpty)
        {
            return PdfMarks.Blank(blank, width);
        }

        var beside = width - PdfMeasures.BlankWide - 3;
        return PdfLines.Widths(inks).Whole <= beside
            ? new RowPiece([new Beside(0, TextPiece.Of(inks, beside, measures.Body, measures.Leading)), new Beside(beside + 3, PdfMarks.Blank(blank, PdfMeasures.BlankWide))])
            : new StackPiece([TextPiece.Of(inks, width, measures.Body, measures.Leading), new RowPiece([new Beside(width - PdfMeasures.BlankWide, PdfMarks.Blank(blank, PdfMeasures.BlankWide))]) { Before = measures.Gap(1) }]);
    }
}
