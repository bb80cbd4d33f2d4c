using System.Text;
using Recipe.Documents.Layout;
using Recipe.Documents.Writing;
using Recipe.Documents.Writing.Pdf;

namespace Recipe.Documents;

/// <summary>
/// Writes the papers of a part: each by itself in the formats of text, and as a set what holds several papers in one file: PDF, XLSX,
/// and the drawings of all of them as SVG. Each paper is built once.
/// </summary>
public static class PaperSet
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>
    /// The files of the wanted papers in the wanted formats, in the order of the papers, the sets last. A paper that the part has no use for
    /// is left out.
    /// </summary>
    public static IReadOnlyList<PaperFile> Write(PaperInput input, IEnumerable<PaperKind> kinds, IReadOnlySet<PaperFormat> formats)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(formats);
        var part = input.Plan.Part.Name;
        var papers = new BuiltPapers(input);
        var built = kinds.Where(kind => kind.AppliesTo(input)).Select(kind => (Kind: kind, Document: papers.Of(kind))).ToList();
        var documents = built.Select(paper => paper.Document).ToList();
        var files = new List<PaperFile>();
        foreach (var (kind, document) in built)
        {
            files.AddRange(kind.Formats.Where(formats.Contains).Select(format => Text(
                kind.FileName(part, format), format == PaperFormat.Json ? PlanJson.Write(input) : Papers.Write(document, format))));
        }

        if (formats.Contains(PaperFormat.Pdf) && documents.Count > 0)
        {
            files.Add(new PaperFile($"{PaperKind.Safe(part)}.pdf", PdfWriter.Write(documents)));
        }

        if (formats.Contains(PaperFormat.Xlsx) && documents.Any(document => document.Data is not null))
        {
            files.Add(new PaperFile($"{PaperKind.Safe(part)}.xlsx", XlsxWriter.Write(documents)));
        }

        if (formats.Contains(PaperFormat.Svg))
        {
            files.AddRange(Drawings(part, documents));
        }

        return files;
    }

    // Two papers may show the same drawing: one file is enough. A different one of the same name gets a number.
    private static IEnumerable<PaperFile> Drawings(string part, List<Document> documents)
    {
        var written = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var drawing in documents.SelectMany(document => document.Stations).SelectMany(station => station.Blocks).OfType<Drawing>())
        {
            var svg = SvgWriter.WriteFile(drawing);
            var name = drawing.Name;
            for (var i = 2; written.TryGetValue(name, out var other) && other != svg; i++)
            {
                name = $"{drawing.Name}-{i}";
            }

            if (written.TryAdd(name, svg))
            {
                yield return Text($"{PaperKind.Safe(part)}.{PaperKind.Safe(name)}.svg", svg);
            }
        }
    }

    private static PaperFile Text(string name, string text) => new(name, Utf8.GetBytes(text));
}
