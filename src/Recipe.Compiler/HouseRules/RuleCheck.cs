using System.Runtime.CompilerServices;
using Recipe.Checks;
using Recipe.HouseRules;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>A rule of the house as a check like all others: waivers, severities, fixes, documentation and reports come with that.</summary>
internal sealed class RuleCheck(HouseRule rule) : Check
{
    private static readonly ConditionalWeakTable<Plan, FactNode> Facts = [];

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = RuleDescriptors.Of(rule);

    /// <inheritdoc/>
    public override bool CanBeAccepted => rule.CanBeAccepted;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var outcome = RuleEngine.Apply(rule, FactsOf(context.Plan), context.Part.Where.Source);
        foreach (var breach in outcome.Broken)
        {
            var grounds = Grounds.Sure.And((Computed<bool>?)new Computed<bool>(true, breach.RestsOn));
            foreach (var assumed in breach.Assumed)
            {
                grounds = grounds.AndThat(assumed);
            }

            context.Report(
                breach.Where,
                breach.Message,
                grounds,
                breach.Rule is { } line ? [new FindingLabel(line, $"the rule, {rule.Name}")] : null,
                breach.Fixes);
        }

        if (outcome.Missing is { } missing)
        {
            context.NotChecked($"it lacks {missing}");
        }
    }

    internal static FactNode FactsOf(Plan plan) => Facts.GetValue(plan, PlanFacts.Of);
}
