using System.Collections.Immutable;
using QRCoder;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Labels;

/// <summary>
/// A code of squares that a telephone reads: QR model 2, error correction M, ISO/IEC 18004. The squares are shapes of a drawing, dark ones
/// next to each other in one.
/// </summary>
internal static class QrCode
{
    // ISO/IEC 18004: four modules of white all round.
    private const int Quiet = 4;

    /// <summary>The code of a text, its white border included.</summary>
    /// <param name="text">The text, as UTF-8.</param>
    /// <param name="x">Left edge, mm.</param>
    /// <param name="y">Upper edge, mm.</param>
    /// <param name="side">Its side, mm.</param>
    public static ImmutableArray<Shape> Draw(string text, double x, double y, double side)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        var rows = data.ModuleMatrix;
        var module = side / rows.Count;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        for (var row = Quiet; row < rows.Count - Quiet; row++)
        {
            for (var column = Quiet; column < rows.Count - Quiet; column++)
            {
                var from = column;
                while (column < rows.Count - Quiet && rows[row][column])
                {
                    column++;
                }

                if (column > from)
                {
                    shapes.Add(PathShape.Box(x + (from * module), y + (row * module), (column - from) * module, module, null, Fill.Black));
                }
            }
        }

        return shapes.ToImmutable();
    }
}
