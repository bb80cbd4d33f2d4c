using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Documents.Shared;

/// <summary>
/// What stands behind the numbers of a paper: every default with its source, what could not be computed, what the checks found,
/// what was accepted and why, and what nobody checked. The same on every paper.
/// </summary>
internal static class Notes
{
    public const string Title = "What the numbers rest on";

    /// <summary>For the desk: with what to write to replace each assumption.</summary>
    public static Station ForDesk(PaperContext context) => new(Title, [.. Rest(context), new Heading("Assumed"), .. AssumptionTables.All(context)]);

    /// <summary>For another paper of the desk: only the assumptions that its own figures rest on, with their sources; the cover lists all, and how to replace them.</summary>
    public static Station Of(PaperContext context, IEnumerable<ImmutableArray<string>> restsOn)
    {
        var keys = restsOn.Where(list => !list.IsDefault).SelectMany(list => list).ToHashSet(StringComparer.Ordinal);
        return new Station(Title,
        [
            new Paragraph(context.Wording.Say("Findings, waivers and what could not be computed stand on the cover, and what to write to replace an assumption. These are the assumptions behind the figures of this paper."), Fine: true),
            .. AssumptionTables.Of(context, keys),
        ]);
    }

    /// <summary>For the bench: what somebody must know there. Assumptions and their sources are for the desk, where they can be replaced.</summary>
    public static IEnumerable<Block> ForBench(PaperContext context) =>
        [.. Rest(context), new Paragraph(context.Wording.Say("Figures that nobody stated or measured are listed with their sources on the cover."), Fine: true)];

    /// <summary>Every waiver of the part and every accepted finding, in words.</summary>
    public static ImmutableArray<Phrase> WaiverLines(PaperContext context)
    {
        var lines = ImmutableArray.CreateBuilder<Phrase>();
        var accepted = context.Input.Findings.Where(finding => finding.AcceptedBecause is not null).ToList();
        foreach (var waiver in context.Part.Waivers)
        {
            var named = context.Input.Findings.Where(finding => IsNamedBy(waiver, finding)).ToList();
            var what = named.Count == 0 ? waiver.Code : $"{named[0].Descriptor.ShortCode}, {named[0].Descriptor.Title}";
            var here = string.Concat(named.Where(accepted.Contains).Select(finding => " " + context.Wording.Say($"Here: {finding.Message}")));
            lines.Add(Waived(context, waiver, what) + here);
            accepted.RemoveAll(finding => IsNamedBy(waiver, finding));
        }

        lines.AddRange(accepted.Select(finding => context.Wording.SayPhrase($"{Accepted(context)}: {Said(context, finding)} Because “{finding.AcceptedBecause}”.")));
        return lines.ToImmutable();
    }

    /// <summary>Findings that nobody accepted, worst first.</summary>
    public static IEnumerable<Finding> Open(PaperContext context) => context.Input.Findings
        .Where(finding => finding.AcceptedBecause is null).OrderByDescending(finding => finding.Severity);

    private static bool IsNamedBy(Waiver waiver, Finding finding) =>
        finding.Descriptor.Code == waiver.Code || finding.Descriptor.Name == waiver.Code;

    private static Phrase Accepted(PaperContext context) => Phrase.Strong(context.Wording.Say("Accepted"));

    private static Phrase Waived(PaperContext context, Waiver waiver, string what)
    {
        var (say, accepted) = (context.Wording, Accepted(context));
        return (waiver.Because, waiver.Until) switch
        {
            ({ } because, { } day) => say.SayPhrase($"{accepted}: {what}; because “{because}”, until {Numbers.Day(day)}."),
            ({ } because, null) => say.SayPhrase($"{accepted}: {what}; because “{because}”."),
            (null, { } day) => say.SayPhrase($"{accepted}: {what}; without a reason, until {Numbers.Day(day)}."),
            (null, null) => say.SayPhrase($"{accepted}: {what}; without a reason."),
        };
    }

    private static string Said(PaperContext context, Finding finding) =>
        $"{finding.Descriptor.ShortCode} ({Words.Of(finding.Severity, context.Wording)}) {finding.Message.TrimEnd('.')}.";

    private static IEnumerable<Block> Rest(PaperContext context) => [.. Gaps(context), .. Findings(context), .. Waivers(context), .. NotChecked(context)];

    private static IEnumerable<Block> Gaps(PaperContext context)
    {
        if (context.Plan.Gaps.IsEmpty)
        {
            yield break;
        }

        yield return new Heading(context.Wording.Say("Not computed"));
        yield return new BulletList([.. context.Plan.Gaps.Select(gap => Phrase.Strong(gap.Subject) + $": {gap.Missing}")]);
    }

    private static IEnumerable<Block> Findings(PaperContext context)
    {
        var open = Open(context).ToList();
        if (open.Count == 0)
        {
            yield return new Paragraph(context.Wording.Say("Findings of the checks: none open."));
            yield break;
        }

        yield return new Heading(context.Wording.Say("Findings of the checks"));
        yield return new BulletList([.. open.Select(finding => Phrase.Strong(Words.Of(finding.Severity, context.Wording)) + $" {finding.Descriptor.ShortCode}: " + Phrase.WithCode(Words.Sentence(finding.Message)) + " " + Phrase.WithCode(finding.Descriptor.Remedy))]);
    }

    private static IEnumerable<Block> Waivers(PaperContext context)
    {
        var lines = WaiverLines(context);
        if (!lines.IsEmpty)
        {
            yield return new Heading(context.Wording.Say("Waivers"));
            yield return new BulletList(lines);
        }
    }

    private static IEnumerable<Block> NotChecked(PaperContext context)
    {
        if (context.Input.NotChecked.IsEmpty)
        {
            yield break;
        }

        yield return new Heading(context.Wording.Say("Not checked"));
        yield return new BulletList([.. context.Input.NotChecked.Select(check => Phrase.Strong(check.Descriptor.ShortCode) + $" {check.Descriptor.Title}: {check.Missing}")]);
    }
}
