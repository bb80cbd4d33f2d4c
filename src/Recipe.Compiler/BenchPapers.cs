using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Compiler.Comparing;
using Recipe.Documents;
using Recipe.Model;

namespace Recipe.Compiler;

/// <summary>Makes the papers of a compiled file.</summary>
public static class BenchPapers
{
    private static readonly ImmutableSortedDictionary<string, PaperFormat> FormatsByName =
        ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, new Dictionary<string, PaperFormat>
        {
            ["csv"] = PaperFormat.Csv,
            ["html"] = PaperFormat.Html,
            ["json"] = PaperFormat.Json,
            ["md"] = PaperFormat.Markdown,
            ["pdf"] = PaperFormat.Pdf,
            ["svg"] = PaperFormat.Svg,
            ["xlsx"] = PaperFormat.Xlsx,
        });

    /// <summary>Names of the papers there are.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Papers.All.Select(kind => kind.Name)];

    /// <summary>Names of the formats there are.</summary>
    public static ImmutableArray<string> Formats { get; } = [.. FormatsByName.Keys];

    /// <summary>Units of papers, by their names.</summary>
    public static ImmutableArray<string> Units { get; } = ["metric", "us", "both"];

    /// <summary>BCP 47 tags of the languages of papers.</summary>
    public static ImmutableArray<string> Languages { get; } = Papers.Languages;

    /// <summary>Sizes of paper, by their names.</summary>
    public static ImmutableArray<string> PaperSizes { get; } = ["A4", "Letter"];

    /// <summary>Writes the wanted papers; none when the file has no such part.</summary>
    /// <exception cref="ArgumentException">A paper, format, unit system or paper size has no such name.</exception>
    public static IEnumerable<WrittenPaper> Write(CompiledFile file, PaperWish wish)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(wish);
        return file.Parts.Where(part => IsWanted(part, wish)).SelectMany(part => Write(file, part, wish, sideBySide: true));
    }

    /// <summary>
    /// Writes the wanted papers of many files, several parts at a time. The papers of one part are handed over together, from any
    /// thread and in any order; the places say which come first.
    /// </summary>
    /// <param name="files">The files.</param>
    /// <param name="wish">What is wanted.</param>
    /// <param name="part">Called for each part with its place among all parts, how many there are, its name and its papers.</param>
    /// <exception cref="ArgumentException">A paper, format, unit system or paper size has no such name.</exception>
    public static void WriteAll(IReadOnlyList<CompiledFile> files, PaperWish wish, Action<PartPapers> part)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(part);
        var wanted = files.SelectMany(file => file.Parts.Where(part => IsWanted(part, wish)).Select(part => (File: file, Part: part))).ToList();
        if (wanted.Count == 1)
        {
            part(new PartPapers(0, 1, wanted[0].Part.Part.Name, Write(wanted[0].File, wanted[0].Part, wish, sideBySide: true)));
            return;
        }

        try
        {
            Parallel.For(0, wanted.Count, i => part(new PartPapers(i, wanted.Count, wanted[i].Part.Part.Name, Write(wanted[i].File, wanted[i].Part, wish, sideBySide: false))));
        }
        catch (AggregateException several)
        {
            // The caller knows what to do with the first; the others are most often the same.
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }
    }

    /// <summary>What the plan says of a part, as Markdown; null when the file has no such part.</summary>
    public static string? Summary(CompiledFile file, string part, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Parts.FirstOrDefault(known => known.Part.Name == part) is { } found
            ? PartSummary.Write(InputFor(file, found, new PaperWish { Part = part, Today = today }))
            : null;
    }

    /// <summary>
    /// Of the file's findings a paper carries those that its part earns by itself, so that the traveller of a part does not repeat the
    /// troubles of its variants.
    /// </summary>
    internal static PaperInput InputFor(CompiledFile file, CompiledPart part, PaperWish wish)
    {
        var own = new Examiner(file.Bound.Model, wish.Today, file.Checks).Conclude([part.Examination, .. file.CodedExaminations.Where(examination => ReferenceEquals(examination.Part, part.Part))]);
        var earned = own.Findings.Concat(own.Accepted).Select(f => (f.Descriptor.Code, f.Where, f.Message)).ToHashSet();
        return new PaperInput(
            part.Plan,
            [.. file.Report.Findings.Concat(file.Report.Accepted).Where(f => earned.Contains((f.Descriptor.Code, f.Where, f.Message)))],
            own.NotChecked,
            file.Revision,
            wish.Printed,
            file.Source.Name)
        {
            Serial = wish.Serial,
            Language = wish.Language,
            Quantity = wish.Quantity,
            Units = wish.Units is { } units ? UnitsOf(units) : null,
            Paper = wish.PaperSize is { } size ? PaperOf(size) : null,
            Earlier = wish.Earlier?.Invoke(file.Source.Name) is { } before
                ? FileComparer.EarlierOf(part.Part.Name, new FileVersions(before, wish.EarlierName, file, file.Source.Name), wish.Today)
                : null,
        };
    }

    private static bool IsWanted(CompiledPart part, PaperWish wish) =>
        (wish.Part is null || wish.Part == part.Part.Name) && (wish.Only.IsEmpty || wish.Only.Contains(part.Part.Name));

    private static List<WrittenPaper> Write(CompiledFile file, CompiledPart part, PaperWish wish, bool sideBySide)
    {
        var kinds = wish.Papers.IsEmpty ? Papers.All : [.. wish.Papers.Select(KindOf).Distinct()];
        var formats = (wish.Formats.IsEmpty ? Formats : wish.Formats).Select(FormatOf).ToHashSet();
        return [.. PaperSet.Write(InputFor(file, part, wish), kinds, formats, sideBySide).Select(written => new WrittenPaper(written.FileName, written.Bytes))];
    }

    /// <summary>The units of papers: those that are wanted, else the shop's.</summary>
    internal static UnitSystem UnitsFor(CompiledFile file, PaperWish wish) => wish.Units is { } units ? UnitsOf(units) : file.Bound.Model.Shop?.Units ?? UnitSystem.Metric;

    private static UnitSystem UnitsOf(string name) => name switch
    {
        "metric" => UnitSystem.Metric,
        "us" => UnitSystem.Us,
        "both" => UnitSystem.Both,
        _ => throw new ArgumentException($"There are no units '{name}'.", nameof(name)),
    };

    private static PaperSize PaperOf(string name) => name switch
    {
        "A4" => PaperSize.A4,
        "Letter" => PaperSize.Letter,
        _ => throw new ArgumentException($"There is no paper '{name}'.", nameof(name)),
    };

    private static PaperKind KindOf(string name) =>
        Papers.Find(name) ?? throw new ArgumentException($"There is no paper '{name}'.", nameof(name));

    private static PaperFormat FormatOf(string name) =>
        FormatsByName.TryGetValue(name, out var format) ? format : throw new ArgumentException($"There is no format '{name}'.", nameof(name));
}
