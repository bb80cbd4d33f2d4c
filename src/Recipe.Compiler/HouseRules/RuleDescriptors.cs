using System.Runtime.CompilerServices;
using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>Rules of the house described as all findings are.</summary>
internal static class RuleDescriptors
{
    private static readonly ConditionalWeakTable<HouseRule, FindingDescriptor> Made = [];

    /// <summary>What is the same for every finding of a rule.</summary>
    public static FindingDescriptor Of(HouseRule rule) => Made.GetValue(rule, static known => new FindingDescriptor
    {
        Code = FindingDescriptor.CodeOfHouseRule(known.Name),
        Name = known.Name,
        Severity = known.Severity,
        Title = known.Title,
        Reason = ReasonOf(known.Reason),
        Remedy = RemedyOf(known.Remedy),
        Source = known.Source ?? $"the shop's own rule in {known.Where.Source.Name}",
        Exceptions = known.Exceptions ?? "",
        BadExample = Example(known, mustFire: true),
        GoodExample = Example(known, mustFire: false),
    });

    /// <summary>Why a rule matters, as a sentence.</summary>
    /// <param name="written">What its author says; null or empty when he says nothing.</param>
    public static string ReasonOf(string? written) => Sentence(written, "The shop wants it so.");

    /// <summary>What to do about it, as a sentence.</summary>
    /// <param name="written">What its author says; null or empty when he says nothing.</param>
    public static string RemedyOf(string? written) => Sentence(written, "Keep to the rule, or accept it here with a written reason.");

    private static string Sentence(string? text, string otherwise) =>
        string.IsNullOrWhiteSpace(text) ? otherwise : char.ToUpperInvariant(text.Trim()[0]) + text.Trim()[1..].TrimEnd('.') + ".";

    private static string Example(HouseRule rule, bool mustFire) =>
        rule.Examples.FirstOrDefault(example => example.MustFire == mustFire) is { } example ? Outdented(example.Inside) : "";

    // The lines inside the braces as a file of their own.
    private static string Outdented(SourceSpan inside)
    {
        var lines = inside.Text.ReplaceLineEndings("\n").Trim('\n').Split('\n');
        var indent = lines.Where(line => line.Trim().Length > 0).Select(line => line.Length - line.TrimStart().Length).DefaultIfEmpty(0).Min();
        return string.Join('\n', lines.Select(line => line.Length >= indent ? line[indent..].TrimEnd() : line.Trim())).Trim('\n');
    }
}
