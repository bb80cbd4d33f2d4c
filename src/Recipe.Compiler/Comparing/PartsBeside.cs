using System.Collections.Immutable;
using Recipe.Documents;

namespace Recipe.Compiler.Comparing;

/// <summary>Parts and variants side by side, in figures and as a picture.</summary>
public sealed class PartsBeside
{
    private readonly ImmutableArray<PartOnReport> _parts;

    private PartsBeside(ImmutableArray<PartOnReport> parts) => _parts = parts;

    /// <summary>The formats, by their names.</summary>
    public static ImmutableArray<string> Formats { get; } = ["text", "md", "html", "csv", "json", "svg"];

    /// <summary>How many there are.</summary>
    public int Count => _parts.Length;

    /// <summary>Puts parts of files beside each other.</summary>
    /// <param name="files">The files.</param>
    /// <param name="names">Names of parts and variants, the one that the others are compared with first; all parts of the files, in order, when there are none.</param>
    /// <param name="today">The day, as the workspace was given it.</param>
    /// <param name="missing">The first name that no file has; null when all were found.</param>
    public static PartsBeside Of(IReadOnlyList<CompiledFile> files, IReadOnlyList<string> names, DateOnly? today, out string? missing)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(names);
        var all = files.SelectMany(file => file.Parts.Select(part => (File: file, Part: part))).ToList();
        var wanted = names.Count == 0 ? all : [.. names.Distinct(StringComparer.Ordinal).SelectMany(name => all.Where(pair => pair.Part.Part.Name == name))];
        missing = names.FirstOrDefault(name => !all.Exists(pair => pair.Part.Part.Name == name));

        // Files may have parts of one name: then each says where it stands.
        var twice = wanted.GroupBy(pair => pair.Part.Part.Name, StringComparer.Ordinal).Where(group => group.Skip(1).Any()).Select(group => group.Key).ToHashSet(StringComparer.Ordinal);
        return new([
            .. wanted.Select(pair => new PartOnReport(
                twice.Contains(pair.Part.Part.Name) ? $"{pair.Part.Part.Name} ({pair.File.Source.Name})" : pair.Part.Part.Name,
                BenchPapers.InputFor(pair.File, pair.Part, new PaperWish { Today = today }))),
        ]);
    }

    /// <summary>Writes them in one of the <see cref="Formats"/>; null for a picture for which no part has the figures. There must be a part.</summary>
    /// <exception cref="ArgumentException">There is no such format.</exception>
    public string? Write(string format) => format switch
    {
        "text" => PartsReport.AsText(_parts),
        "md" => PartsReport.AsMarkdown(_parts),
        "html" => PartsReport.AsHtml(_parts),
        "csv" => PartsReport.AsCsv(_parts),
        "json" => PartsReport.AsJson(_parts),
        "svg" => PartsReport.AsSvg(_parts),
        _ => throw new ArgumentException($"There is no format {format}.", nameof(format)),
    };
}
