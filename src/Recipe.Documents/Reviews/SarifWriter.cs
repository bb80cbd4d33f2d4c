using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Recipe.Documents.Quantities;
using Recipe.Documents.Reviews;
using Recipe.Documents.Shared;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Documents;

/// <summary>Findings for systems that review code: SARIF 2.1.0 (OASIS standard).</summary>
public static class SarifWriter
{
    // 3.13.3 allows any address of the schema; this is the standard's own.
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json";

    private static readonly SarifShapes Shapes = new(new JsonSerializerOptions(SarifShapes.Default.Options) { NewLine = "\n" });

    /// <summary>Writes them.</summary>
    /// <param name="findings">The findings; an accepted one is a suppressed result.</param>
    /// <param name="notChecked">Checks that could not speak: notes about the run.</param>
    /// <param name="version">Version of the program.</param>
    public static string Write(IReadOnlyCollection<Finding> findings, IReadOnlyCollection<NotChecked> notChecked, string version)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(notChecked);
        var rules = findings.Select(finding => finding.Descriptor).Concat(notChecked.Select(check => check.Descriptor))
            .DistinctBy(descriptor => descriptor.Code).OrderBy(descriptor => descriptor.Code, StringComparer.Ordinal).ToImmutableArray();
        var index = rules.Select((rule, i) => (rule.Code, i)).ToDictionary(pair => pair.Code, pair => pair.i, StringComparer.Ordinal);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var log = new SarifLog(Schema, "2.1.0",
        [
            new SarifRun(
                new SarifTool(new SarifDriver("recipe", version, [.. rules.Select(Rule)])),
                "utf16CodeUnits",
                [new SarifInvocation(ExecutionSuccessful: true, [.. notChecked.Select(check => Notification(check, index))])],
                [.. findings.Select(finding => Result(finding, index, Fingerprint(finding, seen)))]),
        ]);
        return JsonSerializer.Serialize(log, Shapes.SarifLog) + "\n";
    }

    private static SarifRule Rule(FindingDescriptor rule) => new(
        rule.Code,
        string.Concat(rule.Name.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..])),
        new SarifText(Words.Sentence(rule.Title)),
        new SarifText(rule.Reason),
        new SarifText($"{rule.Reason} {rule.Remedy} From: {rule.Source}"),
        new SarifConfiguration(Level(rule.Severity)));

    private static SarifNotification Notification(NotChecked check, Dictionary<string, int> index) => new(
        new SarifText($"Not checked: {check.Missing}"), "note", new SarifRuleReference(check.Descriptor.Code, index[check.Descriptor.Code]), [new SarifLocation(Place(check.Where))]);

    private static SarifResult Result(Finding finding, Dictionary<string, int> index, string fingerprint) => new(
        finding.Descriptor.Code,
        index[finding.Descriptor.Code],
        Level(finding.Severity),
        new SarifText(Words.Sentence(finding.Message)), // 3.11.3 asks for a sentence
        [new SarifLocation(Place(finding.Where))],
        [.. finding.Labels.Select((label, i) => new SarifLocation(Place(label.Where), i + 1, new SarifText(label.Text)))],
        ImmutableDictionary<string, string>.Empty.Add("recipeLine/v1", fingerprint),
        [.. finding.Fixes.Select(Fix)],
        finding.AcceptedBecause is { } because ? [new SarifSuppression("inSource", because)] : null);

    private static SarifFix Fix(Fix fix) => new(
        new SarifText(fix.Title),
        [
            .. fix.Edits.GroupBy(edit => edit.Where.Source.Name, StringComparer.Ordinal).Select(file => new SarifArtifactChange(
                Artifact(file.First().Where.Source),
                [.. file.OrderBy(edit => edit.Where.Span.Start).Select(edit => new SarifReplacement(Region(edit.Where), new SarifText(edit.NewText)))])),
        ]);

    private static SarifPhysicalLocation Place(SourceSpan where) => new(Artifact(where.Source), Region(where));

    // 3.10.1: a valid URI reference; names of the book and of files alike.
    private static SarifArtifact Artifact(SourceText source) => new(string.Join('/', source.Name.Split('/').Select(Uri.EscapeDataString)));

    private static SarifRegion Region(SourceSpan where)
    {
        var end = where.Source.PositionOf(where.Span.End);
        return new(where.Start.Line + 1, where.Start.Column + 1, end.Line + 1, end.Column + 1, where.Span.Start, where.Span.Length);
    }

    // The line without its layout: the same finding is known again when lines above it come and go.
    private static string Fingerprint(Finding finding, Dictionary<string, int> seen)
    {
        var line = finding.Where.Source.Slice(finding.Where.Source.LineSpan(finding.Where.Start.Line));
        var words = string.Join(' ', line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var key = $"{finding.Descriptor.Code}\0{finding.Where.Source.Name}\0{words}";
        seen[key] = seen.GetValueOrDefault(key) + 1;
        return $"{Hash(key).ToString("x16", CultureInfo.InvariantCulture)}:{Numbers.Whole(seen[key])}";
    }

    // FNV-1a of 64 bits (Fowler, Noll, Vo; RFC 9923): the same on every machine and in every version.
    private static ulong Hash(string text) => Encoding.UTF8.GetBytes(text).Aggregate(14695981039346656037, (hash, b) => unchecked((hash ^ b) * 1099511628211));

    private static string Level(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}
