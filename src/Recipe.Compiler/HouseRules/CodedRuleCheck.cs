using Recipe.Checks;
using Recipe.HouseRules;
using Recipe.Planning;
using Recipe.RuleApi;
using Recipe.RuleProtocol;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>A rule in C# as a check like all others. What it found was asked beforehand, for all parts of a file at once.</summary>
/// <param name="rule">What the rule says of itself.</param>
/// <param name="answers">What it found of each plan; null while nobody has asked.</param>
internal sealed class CodedRuleCheck(RuleDescription rule, IReadOnlyDictionary<Plan, CodedAnswer>? answers = null) : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = FindingDescriptor.CodeOfHouseRule(rule.Name),
        Name = rule.Name,
        Severity = SeverityOf(rule.Severity),
        Title = Line(rule.Title, rule.Name).TrimEnd('.'),
        Reason = RuleDescriptors.ReasonOf(rule.Reason),
        Remedy = RuleDescriptors.RemedyOf(rule.Remedy),
        Source = Line(rule.Source, $"the shop's own rule in {rule.File}"),
        Exceptions = rule.Exceptions.Trim(),
        BadExample = rule.BadExample.Trim('\r', '\n'),
        GoodExample = rule.GoodExample.Trim('\r', '\n'),
    };

    /// <summary>What the rule says of itself.</summary>
    internal RuleDescription Rule => rule;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (answers is null || !answers.TryGetValue(context.Plan, out var answer))
        {
            return;
        }

        var facts = RuleCheck.FactsOf(context.Plan);
        foreach (var finding in answer.Findings.Where(finding => finding.File == rule.File && finding.Rule == rule.Name))
        {
            context.Report(WhereOf(finding, facts), finding.Message.TrimEnd('.'), severity: SeverityOf(finding.Severity));
        }

        foreach (var note in answer.NotChecked.Where(note => note.File == rule.File && note.Rule == rule.Name))
        {
            context.NotChecked(note.Missing);
        }
    }

    private static SourceSpan WhereOf(RuleRunFinding finding, FactNode facts) =>
        finding.Group is { } group && facts.Elements.TryGetValue(group, out var nodes) && finding.Index >= 0 && finding.Index < nodes.Length ? nodes[finding.Index].Where : facts.Where;

    private static Severity SeverityOf(RuleSeverity severity) => severity switch
    {
        RuleSeverity.Error => Severity.Error,
        RuleSeverity.Advice => Severity.Advice,
        _ => Severity.Warning,
    };

    private static string Line(string text, string otherwise) => string.IsNullOrWhiteSpace(text) ? otherwise : text.Trim();
}

/// <summary>What rules in C# said of one part.</summary>
/// <param name="Findings">What they found.</param>
/// <param name="NotChecked">What they would have needed to know.</param>
internal sealed record CodedAnswer(IReadOnlyList<RuleRunFinding> Findings, IReadOnlyList<RuleNotChecked> NotChecked);
