using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
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
    /// <param name="input">What the papers are made from.</param>
    /// <param name="kinds">The wanted papers.</param>
    /// <param name="formats">The wanted formats.</param>
    /// <param name="sideBySide">Whether to write several at a time; the files are the same.</param>
    public static IReadOnlyList<PaperFile> Write(PaperInput input, IEnumerable<PaperKind> kinds, IReadOnlySet<PaperFormat> formats, bool sideBySide = false)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(formats);
        var papers = new BuiltPapers(input);
        var wanted = kinds.Where(kind => kind.AppliesTo(input)).ToList();
        var documents = Each(wanted.Count, i => papers.Of(wanted[i]), sideBySide);
        var jobs = Jobs(input, wanted, documents, formats).ToList();

        // Begun with the last, the sets: they take the longest.
        var files = Each(jobs.Count, i => jobs[jobs.Count - 1 - i](), sideBySide);
        return [.. Enumerable.Reverse(files).SelectMany(some => some)];
    }

    private static IEnumerable<Func<IReadOnlyList<PaperFile>>> Jobs(PaperInput input, List<PaperKind> kinds, Document[] documents, IReadOnlySet<PaperFormat> formats)
    {
        var part = input.Plan.Part.Name;
        foreach (var (kind, document) in kinds.Zip(documents))
        {
            foreach (var format in kind.Formats.Where(formats.Contains))
            {
                yield return () => [Text(kind.FileName(part, format), format == PaperFormat.Json ? PlanJson.Write(input) : Papers.Write(document, format))];
            }
        }

        if (formats.Contains(PaperFormat.Pdf) && documents.Length > 0)
        {
            yield return () => [new PaperFile($"{PaperKind.Safe(part)}.pdf", PdfWriter.Write(documents))];
        }

        if (formats.Contains(PaperFormat.Xlsx) && documents.Any(document => document.Data is not null))
        {
            yield return () => [new PaperFile($"{PaperKind.Safe(part)}.xlsx", XlsxWriter.Write(documents))];
        }

        if (formats.Contains(PaperFormat.Svg))
        {
            yield return () => [.. Drawings(part, documents)];
        }
    }

    private static T[] Each<T>(int count, Func<int, T> make, bool sideBySide)
    {
        var made = new T[count];
        if (!sideBySide)
        {
            for (var i = 0; i < count; i++)
            {
                made[i] = make(i);
            }

            return made;
        }

        try
        {
            // Handed out one by one: what is made differs much in size.
            Parallel.ForEach(Partitioner.Create(Enumerable.Range(0, count), EnumerablePartitionerOptions.NoBuffering), i => made[i] = make(i));
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        return made;
    }

    // Two papers may show the same drawing: one file is enough. A different one of the same name gets a number.
    private static IEnumerable<PaperFile> Drawings(string part, IReadOnlyList<Document> documents)
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
