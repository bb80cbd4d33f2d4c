using System.Collections.Immutable;
using Recipe.Documents.Layout;

namespace Recipe.Documents;

/// <summary>A kind of paper: what it is called and what it can be written as.</summary>
public sealed class PaperKind
{
    private readonly Func<PaperInput, bool> _applies;

    internal PaperKind(string name, string title, string what, Func<PaperInput, Document> build, params ImmutableArray<PaperFormat> formats)
        : this(name, title, what, build, _ => true, formats)
    {
    }

    internal PaperKind(
        string name, string title, string what, Func<PaperInput, Document> build, Func<PaperInput, bool> applies, params ImmutableArray<PaperFormat> formats)
    {
        (Name, Title, What, _applies, Formats) = (name, title, what, applies, formats);
        Build = input => build(input.Wording is null && !Languages.Contains(input.Language, StringComparer.Ordinal) ? input with { Language = "en" } : input);
    }

    /// <summary>Its name on the command line: <c>traveller</c>.</summary>
    public string Name { get; }

    /// <summary>Its title: "Traveller".</summary>
    public string Title { get; }

    /// <summary>What it is for, in one line.</summary>
    public string What { get; }

    /// <summary>What it can be written as by itself; sets of papers are written by <see cref="PaperSet"/> too.</summary>
    public ImmutableArray<PaperFormat> Formats { get; }

    /// <summary>BCP 47 tags of the languages it is written in. In any other it is English from top to bottom: nobody is served by half a sheet.</summary>
    public ImmutableArray<string> Languages { get; internal init; } = ["en"];

    internal Func<PaperInput, Document> Build { get; }

    /// <summary>Whether a part has use for it: a part without a bag has no bag sheet.</summary>
    public bool AppliesTo(PaperInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return _applies(input);
    }

    /// <summary>
    /// A file name for the paper of a part: <c>hatch-lid.traveller.html</c>. Characters of the part's name that some file system
    /// would refuse become a hyphen.
    /// </summary>
    public string FileName(string partName, PaperFormat format)
    {
        ArgumentNullException.ThrowIfNull(partName);
        return $"{Safe(partName)}.{Name}.{Extension(format)}";
    }

    /// <summary>The name with nothing in it that some file system would refuse.</summary>
    internal static string Safe(string name)
    {
        var safe = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
        return safe.Length == 0 ? "part" : safe;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static string Extension(PaperFormat format) => format switch
    {
        PaperFormat.Markdown => "md",
        PaperFormat.Html => "html",
        PaperFormat.Csv => "csv",
        PaperFormat.Json => "json",
        _ => throw new ArgumentOutOfRangeException(nameof(format), format, "There is no such format."),
    };
}
