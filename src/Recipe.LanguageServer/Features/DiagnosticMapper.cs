using System.Collections.Immutable;
using System.Text;
using Recipe.Compiler;
using Recipe.LanguageServer.Protocol;
using Recipe.Text.Findings;

namespace Recipe.LanguageServer.Features;

/// <summary>Findings in the protocol's terms.</summary>
internal static class DiagnosticMapper
{
    /// <summary>The waiver that nothing needs: an editor shows it faintly.</summary>
    private const string UnusedWaiver = "unused-waiver";

    public static Diagnostic[] All(Session session, CompiledFile file) =>
        [.. file.Findings.Where(finding => finding.Where.Source.Name == file.Source.Name).Select(finding => One(session, finding))];

    public static Diagnostic One(Session session, Finding finding) => new(session.Positions.Range(finding.Where), MessageOf(finding))
    {
        Severity = finding.Severity switch
        {
            Severity.Error => Diagnostic.Error,
            Severity.Warning => Diagnostic.Warning,
            _ => Diagnostic.Information,
        },
        Code = finding.Descriptor.Code,
        CodeDescription = session.Settings.Documentation is { } address
            ? new CodeDescription(address
                .Replace("{code}", finding.Descriptor.Code, StringComparison.Ordinal)
                .Replace("{name}", finding.Descriptor.Name, StringComparison.Ordinal))
            : null,
        Source = "recipe",
        Tags = finding.Descriptor.Name == UnusedWaiver ? [Diagnostic.UnnecessaryTag] : null,
        RelatedInformation = session.Client.TextDocument?.PublishDiagnostics?.RelatedInformation == true ? Related(session, finding.Labels) : null,
        Data = new FindingData(finding.Descriptor.Name, [.. finding.Fixes.Select(fix => fix.Title)]),
    };

    /// <summary>The facts first, then why it matters and what to do about it, as a checker on the command line says it.</summary>
    private static string MessageOf(Finding finding) => new StringBuilder(finding.Message)
        .Append('\n').Append(finding.Descriptor.Reason)
        .Append('\n').Append(finding.Descriptor.Remedy)
        .ToString();

    /// <summary>Places in the shipped book are no documents, so an editor could not go there.</summary>
    private static DiagnosticRelatedInformation[]? Related(Session session, ImmutableArray<FindingLabel> labels)
    {
        DiagnosticRelatedInformation[] related =
        [
            .. labels
                .Where(label => !BookTexts.IsOne(label.Where.Source.Name))
                .Select(label => new DiagnosticRelatedInformation(session.LocationOf(label.Where), label.Text)),
        ];
        return related.Length == 0 ? null : related;
    }
}
