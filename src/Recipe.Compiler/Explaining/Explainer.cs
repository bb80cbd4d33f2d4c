using System.Text;
using Recipe.Checks;
using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>Answers "what is this?" for a finding, a material of the book, or a part of a file.</summary>
public static class Explainer
{
    /// <summary>The page about a name: the code or name of a finding, a part, or a material; null when nothing is known of it.</summary>
    /// <param name="name">What is asked about.</param>
    /// <param name="within">A file whose parts and own materials count too, or null for the book alone.</param>
    /// <param name="today">Today, for what lapses; null leaves it unspoken.</param>
    public static string? Explain(string name, CompiledFile? within, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(name);
        return within is not null && BenchPapers.Summary(within, name, today) is { } summary ? summary
            : (FindingCatalogue.Find(name) ?? RuleOf(name, within)) is { } finding ? Finding(finding)
            : MaterialsOf(within).TryGetValue(name, out var material) ? Material(material)
            : null;
    }

    /// <summary>What there are pages about, by group, with how to see more.</summary>
    /// <param name="within">A file whose parts and own materials count too, or null for the book alone.</param>
    public static string Index(CompiledFile? within) => ExplainIndex.Write(PagesOf(within));

    /// <summary>Everything there is a page about, a line each.</summary>
    /// <param name="within">A file whose parts and own materials count too, or null for the book alone.</param>
    public static IEnumerable<string> List(CompiledFile? within) => PagesOf(within).Select(page => page.Line);

    /// <summary>
    /// What is near a name that no page has: the words of the language, the findings of a family (<c>RC70</c>), the materials of a kind (<c>fabric</c>), and all
    /// that has the word in its name, its title or what is seen at the bench; null when nothing has.
    /// </summary>
    /// <param name="word">What is asked about.</param>
    /// <param name="within">A file whose parts and own materials count too, or null for the book alone.</param>
    public static string? Search(string word, CompiledFile? within)
    {
        ArgumentNullException.ThrowIfNull(word);
        return ExplainSearch.Find(word, [.. PagesOf(within)]);
    }

    private static IEnumerable<ExplainedPage> PagesOf(CompiledFile? within)
    {
        var materials = MaterialsOf(within);
        return FindingCatalogue.All.Select(descriptor => new ExplainedPage(descriptor.Code, descriptor.Name, descriptor.Title))
            .Concat((within?.HouseRules ?? []).Select(rule => new ExplainedPage(rule.ShortCode, rule.Name, rule.Title)))
            .Concat(PartsOf(within).Select(part => new ExplainedPage(ExplainedPage.Part, part, "")))
            .Concat(materials.Keys.Order(StringComparer.Ordinal).Select(key => new ExplainedPage(materials[key].Keyword, key, materials[key].Title ?? "")));
    }

    /// <summary>The name that was probably meant, among findings, parts and materials, or null.</summary>
    public static string? Nearest(string name, CompiledFile? within) => Spelling.Nearest(name, Names(within));

    /// <summary>Every name there is a page about: materials, parts, findings by code and by name.</summary>
    public static IEnumerable<string> Names(CompiledFile? within) =>
        MaterialsOf(within).Keys.Concat(PartsOf(within)).Concat(FindingCatalogue.All.SelectMany(d => new[] { d.Code, d.Name })).Concat((within?.HouseRules ?? []).Select(rule => rule.Name));

    private static FindingDescriptor? RuleOf(string name, CompiledFile? within) => within?.HouseRules.FirstOrDefault(rule => rule.Name == name || rule.Code == name);

    /// <summary>The page about a finding: why, what to do, where it comes from, a bad and a good example.</summary>
    private static string Finding(FindingDescriptor descriptor)
    {
        var page = new StringBuilder();
        page.Append(descriptor.Label).Append(" (").Append(Word(descriptor.Severity)).Append(")\n");
        page.Append(descriptor.Title).Append(".\n\n");
        page.Append("Why: ").Append(descriptor.Reason).Append('\n');
        page.Append("Do:  ").Append(descriptor.Remedy).Append('\n');
        if (descriptor.Exceptions.Length > 0)
        {
            page.Append("Silent when: ").Append(descriptor.Exceptions).Append('\n');
        }

        page.Append("From: ").Append(descriptor.Source).Append('\n');
        if (descriptor.BadExample.Length > 0 && descriptor.GoodExample.Length > 0)
        {
            return page.Append("\nThe lines with - earn it, those with + mend it:\n\n").Append(ExamplePair.Marked(descriptor.BadExample, descriptor.GoodExample)).ToString();
        }

        if (descriptor.BadExample.Length > 0)
        {
            page.Append("\nThis earns it:\n\n").Append(Indented(descriptor.BadExample));
        }

        if (descriptor.GoodExample.Length > 0)
        {
            page.Append("\nThis does not:\n\n").Append(Indented(descriptor.GoodExample));
        }

        return page.ToString();
    }

    /// <summary>
    /// A material as the book (or a file of the user) writes it: the language is the documentation. The lines of what it is
    /// <c>like</c> are not repeated.
    /// </summary>
    private static string Material(Material material)
    {
        var source = material.Where.Source;
        var block = BlockText.BlockAfter(source, material.Where.Span.End);
        var (first, last) = (material.Where.Start.Line, source.PositionOf(block?.End ?? material.Where.Span.End).Line);
        var page = new StringBuilder();
        page.Append(material.Keyword).Append(' ').Append(material.Name)
            .Append(material.FromBook ? ", from the shipped book (" : ", from (").Append(source.Name).Append(")\n\n");
        for (var line = first; line <= last; line++)
        {
            page.Append("  ").Append(source.Slice(source.LineSpan(line)).TrimEnd()).Append('\n');
        }

        if (material.FromBook)
        {
            page.Append("\nGeneric figures. Your maker's data sheet wins: declare your own with `")
                .Append(material.Keyword).Append(" NAME like ").Append(material.Name).Append(" { ... }`.\n");
        }

        return page.ToString();
    }

    private static IReadOnlyDictionary<string, Material> MaterialsOf(CompiledFile? file) =>
        file?.Bound.Model.Materials ?? ShippedTexts.Book.Materials;

    private static IEnumerable<string> PartsOf(CompiledFile? file) => file?.PartNames ?? [];

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "advice",
    };

    private static string Indented(string text) =>
        string.Concat(text.Trim('\n').Split('\n').Select(line => line.Length == 0 ? "\n" : "    " + line + "\n"));
}
