using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Documents;
using Recipe.Planning;

namespace Recipe.Compiler;

/// <summary>Which papers are wanted.</summary>
public sealed record PaperWish
{
    /// <summary>Only this part or variant; all of them when null.</summary>
    public string? Part { get; init; }

    /// <summary>Names of papers; all of them when empty.</summary>
    public ImmutableArray<string> Papers { get; init; } = [];

    /// <summary>Names of formats; all of them when empty.</summary>
    public ImmutableArray<string> Formats { get; init; } = [];

    /// <summary>The day printed on them, or null to print none, so that the same recipe gives the same bytes on any day.</summary>
    public DateOnly? Printed { get; init; }

    /// <summary>The day they are checked for, as the workspace was given it.</summary>
    public DateOnly? Today { get; init; }
}

/// <summary>One paper in one format, as text.</summary>
/// <param name="FileName">A name for the file, without a folder.</param>
/// <param name="Text">All of it.</param>
public sealed record WrittenPaper(string FileName, string Text);

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
        });

    /// <summary>Names of the papers there are.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Papers.All.Select(kind => kind.Name)];

    /// <summary>Names of the formats there are.</summary>
    public static ImmutableArray<string> Formats { get; } = [.. FormatsByName.Keys];

    /// <summary>Writes the wanted papers; none when the file has no such part.</summary>
    /// <exception cref="ArgumentException">A paper or format has no such name.</exception>
    public static IEnumerable<WrittenPaper> Write(CompiledFile file, PaperWish wish)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(wish);
        var kinds = wish.Papers.IsEmpty ? Papers.All : [.. wish.Papers.Select(KindOf).Distinct()];
        var formats = (wish.Formats.IsEmpty ? Formats : wish.Formats).Select(FormatOf).ToHashSet();
        return
            from part in file.Parts
            where wish.Part is null || wish.Part == part.Part.Name
            let plan = part.Plan
            let input = InputFor(file, plan, wish)
            from kind in kinds
            where kind.AppliesTo(input)
            from format in kind.Formats
            where formats.Contains(format)
            select new WrittenPaper(kind.FileName(plan.Part.Name, format), Papers.Write(input, kind, format));
    }

    /// <summary>What the plan says of a part, as Markdown; null when the file has no such part.</summary>
    public static string? Summary(CompiledFile file, string part, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Parts.FirstOrDefault(known => known.Part.Name == part)?.Plan is { } found
            ? PartSummary.Write(InputFor(file, found, new PaperWish { Part = part, Today = today }))
            : null;
    }

    /// <summary>
    /// Of the file's findings a paper carries those that its part earns by itself, so that the traveller of a part does not repeat the
    /// troubles of its variants.
    /// </summary>
    private static PaperInput InputFor(CompiledFile file, Plan plan, PaperWish wish)
    {
        var own = CheckRunner.Run(plan, file.Bound.Model, wish.Today);
        var earned = own.Findings.Concat(own.Accepted).Select(f => (f.Descriptor.Code, f.Where, f.Message)).ToHashSet();
        return new PaperInput(
            plan,
            [.. file.Report.Findings.Concat(file.Report.Accepted).Where(f => earned.Contains((f.Descriptor.Code, f.Where, f.Message)))],
            own.NotChecked,
            file.Revision,
            wish.Printed,
            file.Source.Name);
    }

    private static PaperKind KindOf(string name) =>
        Papers.Find(name) ?? throw new ArgumentException($"There is no paper '{name}'.", nameof(name));

    private static PaperFormat FormatOf(string name) =>
        FormatsByName.TryGetValue(name, out var format) ? format : throw new ArgumentException($"There is no format '{name}'.", nameof(name));
}
