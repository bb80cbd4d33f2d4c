using System.Collections.Immutable;
using Recipe.Documents.CutPlans;
using Recipe.Documents.Shared;
using Recipe.Engineering;
using Recipe.Planning;

namespace Recipe.Documents;

/// <summary>The cut plan: every piece of cloth in true size where it lies on its roll, to be printed, taped together and cut along, or given to a cutter.</summary>
public static class ClothCutPlan
{
    /// <summary>The formats it is written in: a file for each roll as <c>svg</c> or <c>dxf</c>, one file of pages as <c>pdf</c> or <c>html</c>.</summary>
    public static ImmutableArray<string> Formats { get; } = ["svg", "dxf", "pdf", "html"];

    /// <summary>Writes it.</summary>
    /// <param name="input">The part.</param>
    /// <param name="layouts">Each cloth with its layout.</param>
    /// <param name="formats">Some of <see cref="Formats"/>.</param>
    public static IEnumerable<(string FileName, ReadOnlyMemory<byte> Bytes)> Write(
        PaperInput input, IReadOnlyList<(ClothLayout Cloth, OutlineNest Nest)> layouts, IReadOnlyCollection<string> formats)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(layouts);
        ArgumentNullException.ThrowIfNull(formats);
        var context = new PaperContext(input);
        var name = context.Part.Name;
        var plan = new CutPlan(context.Part.Label, [.. layouts.SelectMany(layout => Sheets(layout.Cloth, layout.Nest))]);
        var numbered = plan.Sheets.Select((sheet, i) => (Sheet: sheet, Name: $"{name}-cut-{Quantities.Numbers.Whole(i + 1)}")).ToList();
        if (formats.Contains("svg"))
        {
            foreach (var (sheet, file) in numbered)
            {
                yield return ($"{file}.svg", Utf8(CutSvg.Write(plan, sheet)));
            }
        }

        if (formats.Contains("dxf"))
        {
            foreach (var (sheet, file) in numbered)
            {
                yield return ($"{file}.dxf", Utf8(CutDxf.Write(plan, sheet)));
            }
        }

        var identity = context.Identity(ofOneBuild: false);
        if (formats.Contains("pdf"))
        {
            yield return ($"{name}-cut-plan.pdf", CutPages.WritePdf(plan, identity, context.Paper));
        }

        if (formats.Contains("html"))
        {
            yield return ($"{name}-cut-plan.html", Utf8(CutPages.WriteHtml(plan, identity, context.Paper)));
        }
    }

    private static IEnumerable<CutSheet> Sheets(ClothLayout cloth, OutlineNest nest) => nest.Uses.Select(use =>
    {
        var stock = cloth.Stock[use.Stock];
        var roll = stock.Name == cloth.Cloth.Name ? stock.Name : $"{cloth.Cloth.Name}, {stock.Name}";
        return new CutSheet(roll, stock.Width, use.LengthUsed, [.. nest.Placements.Where(place => place.Stock == use.Stock).Select(place => Piece(cloth.Pieces[place.Piece], place))]);
    });

    private static CutPiece Piece(PieceToCut piece, OutlinePlacement place)
    {
        var warp = piece.Warp ?? (piece.Label, piece.Label);
        var marks = new CutMarks(piece.Label, warp.Item1, warp.Item2, [.. piece.Notches.Select(notch => new CutNotch(notch.At, notch.Inward))]);
        return CutPiece.At(place, marks, piece.Mark, piece.Ply, piece.MouldSideUp != place.IsMirrored);
    }

    private static ReadOnlyMemory<byte> Utf8(string text) => System.Text.Encoding.UTF8.GetBytes(text);
}
