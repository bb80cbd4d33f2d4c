using System.Globalization;
using System.Text;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.CutPlans;

/// <summary>
/// A length of roll as DXF of release 12, which nearly every cutter reads: closed polylines, lines and texts on four layers, millimetres,
/// y upwards. The release has no word for the unit; a comment says it.
/// </summary>
/// <remarks>Source: the published DXF reference of release 12 (group codes); from memory.</remarks>
internal static class CutDxf
{
    private const int Decimals = 4;

    private static readonly (CutLayer Layer, int Colour)[] Layers = [(CutLayer.Roll, 8), (CutLayer.Cut, 1), (CutLayer.Mark, 5), (CutLayer.Text, 7)];

    public static string Write(CutPlan plan, CutSheet sheet)
    {
        var dxf = new StringBuilder();
        var (length, width) = (sheet.Length.Millimeters, sheet.Width.Millimeters);
        Pair(dxf, 999, "Units: millimetres, true size");
        Pair(dxf, 999, Ascii($"{plan.Name}: {sheet.Roll}"));
        Pair(dxf, 999, "Measure the width of ROLL before cutting");
        Section(dxf, "HEADER", () =>
        {
            Pair(dxf, 9, "$ACADVER");
            Pair(dxf, 1, "AC1009");
            Pair(dxf, 9, "$EXTMIN");
            Place(dxf, 0, 0);
            Pair(dxf, 9, "$EXTMAX");
            Place(dxf, length, width);
        });
        Section(dxf, "TABLES", () =>
        {
            Table(dxf, "LTYPE", 1, () => Pairs(dxf, (0, "LTYPE"), (2, "CONTINUOUS"), (70, "0"), (3, "Solid line"), (72, "65"), (73, "0"), (40, "0")));
            Table(dxf, "LAYER", Layers.Length, () =>
            {
                foreach (var (layer, colour) in Layers)
                {
                    Pairs(dxf, (0, "LAYER"), (2, NameOf(layer)), (70, "0"), (62, Numbers.Whole(colour)), (6, "CONTINUOUS"));
                }
            });
        });
        Section(dxf, "ENTITIES", () =>
        {
            foreach (var shape in CutShapes.Of(sheet))
            {
                Entity(dxf, NameOf(shape.Layer), shape.Shape, width);
            }
        });
        Pair(dxf, 0, "EOF");
        return dxf.ToString();
    }

    /// <summary>
    /// Text for a file that is ASCII: other letters by their number as <c>\U+00E9</c>, which readers turn back; so also the signs
    /// that mean something in a DXF text. What has no such number is U+FFFD.
    /// </summary>
    public static string Ascii(string text)
    {
        var ascii = new StringBuilder();
        foreach (var rune in PlainText.Spaced(text).EnumerateRunes())
        {
            if (rune.Value is >= ' ' and <= '~' and not ('\\' or '^' or '%'))
            {
                ascii.Append((char)rune.Value);
            }
            else
            {
                ascii.Append("\\U+").Append((rune.IsBmp ? rune.Value : 0xFFFD).ToString("X4", CultureInfo.InvariantCulture));
            }
        }

        return ascii.ToString();
    }

    private static string NameOf(CutLayer layer) => layer.ToString().ToUpperInvariant();

    private static void Entity(StringBuilder dxf, string layer, Shape shape, double width)
    {
        switch (shape)
        {
            case PathShape { Closed: false, Points: [var from, var to] }:
                Pairs(dxf, (0, "LINE"), (8, layer));
                Place(dxf, from.X, width - from.Y);
                Place(dxf, to.X, width - to.Y, 1);
                break;
            case PathShape path:
                Pairs(dxf, (0, "POLYLINE"), (8, layer), (66, "1"));
                Place(dxf, 0, 0);
                Pair(dxf, 70, path.Closed ? "1" : "0");
                foreach (var at in path.Points)
                {
                    Pairs(dxf, (0, "VERTEX"), (8, layer));
                    Place(dxf, at.X, width - at.Y);
                }

                Pairs(dxf, (0, "SEQEND"), (8, layer));
                break;
            case TextShape text:
                // The size of a shape's letters is that of their font; a DXF text has the height of its capitals.
                Pairs(dxf, (0, "TEXT"), (8, layer));
                Place(dxf, text.At.X, width - text.At.Y);
                Pairs(dxf, (40, N(Lettering.HeightMm(text.SizePt))), (1, Ascii(text.Text)), (72, text.Anchor switch { Anchor.Middle => "1", Anchor.End => "2", _ => "0" }));
                Place(dxf, text.At.X, width - text.At.Y, 1);
                break;
            default:
                throw new ArgumentException($"No DXF for {shape.GetType().Name}.", nameof(shape));
        }
    }

    private static void Section(StringBuilder dxf, string name, Action body)
    {
        Pairs(dxf, (0, "SECTION"), (2, name));
        body();
        Pair(dxf, 0, "ENDSEC");
    }

    private static void Table(StringBuilder dxf, string name, int count, Action body)
    {
        Pairs(dxf, (0, "TABLE"), (2, name), (70, Numbers.Whole(count)));
        body();
        Pair(dxf, 0, "ENDTAB");
    }

    private static void Place(StringBuilder dxf, double x, double y, int point = 0) => Pairs(dxf, (10 + point, N(x)), (20 + point, N(y)), (30 + point, "0.0"));

    private static void Pairs(StringBuilder dxf, params ReadOnlySpan<(int Code, string Value)> pairs)
    {
        foreach (var (code, value) in pairs)
        {
            Pair(dxf, code, value);
        }
    }

    // Group codes stand right in three places.
    private static void Pair(StringBuilder dxf, int code, string value) =>
        dxf.Append(Numbers.Whole(code).PadLeft(3)).Append("\r\n").Append(value).Append("\r\n");

    private static string N(double value) => Numbers.Fixed(value, Decimals);
}
