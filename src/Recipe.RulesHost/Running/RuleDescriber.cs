using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Recipe.RuleApi;
using Recipe.RulesHost.Compiling;

namespace Recipe.RulesHost.Running;

/// <summary>Asks rules what they say of themselves, once, when they were compiled.</summary>
internal static partial class RuleDescriber
{
    private const int LongestLine = 1_000;
    private const int LongestText = 20_000;

    /// <summary>The descriptions, or why a rule has none.</summary>
    public static (ImmutableArray<RuleDescription> Rules, ImmutableArray<RuleDiagnostic> Diagnostics) Describe(string file, ImmutableArray<RuleClass> classes, ImmutableArray<Type> types)
    {
        var rules = ImmutableArray.CreateBuilder<RuleDescription>();
        var diagnostics = ImmutableArray.CreateBuilder<RuleDiagnostic>();
        for (var i = 0; i < classes.Length; i++)
        {
            var (place, type) = (classes[i], types[i]);
            RuleDescription? made = null;
            var problem = Guarded.Run(() => made = Ask(file, place, type));
            if (problem is { } failed)
            {
                diagnostics.Add(new RuleDiagnostic(file, place.Start, place.End, "RULE014", $"The rule `{type.Name}` cannot say what it is: it {failed.What}."));
            }
            else if (Fault(made!, rules) is { } fault)
            {
                diagnostics.Add(new RuleDiagnostic(file, place.Start, place.End, "RULE015", fault));
            }
            else
            {
                rules.Add(made!);
            }
        }

        return (rules.ToImmutable(), diagnostics.ToImmutable());
    }

    private static RuleDescription Ask(string file, RuleClass place, Type type)
    {
        var rule = LoadedRules.Make(type);
        return new RuleDescription(
            file,
            place.Start,
            place.End,
            Line(rule.Name),
            Line(rule.Title),
            Line(rule.Reason),
            Line(rule.Remedy),
            Line(rule.Source),
            rule.Severity,
            Line(rule.Exceptions),
            Bounded(rule.BadExample),
            Bounded(rule.GoodExample));
    }

    private static string? Fault(RuleDescription rule, IEnumerable<RuleDescription> others)
    {
        if (!Kebab().IsMatch(rule.Name))
        {
            return $"The rule's name '{rule.Name}' is not in kebab case. Write one like 'carbon-cure-warm'.";
        }

        if (others.Any(other => other.Name == rule.Name))
        {
            return $"There are two rules with the name '{rule.Name}'. Give one another name.";
        }

        if (!Enum.IsDefined(rule.Severity))
        {
            return $"The rule '{rule.Name}' has no severity that exists.";
        }

        return rule.Title.Length == 0 || rule.Reason.Length == 0 || rule.Remedy.Length == 0
            ? $"The rule '{rule.Name}' has an empty title, reason or remedy. Say what is wrong, why it matters and what to do."
            : null;
    }

    private static string Line(string? text) => PlainText.Of(text ?? "", LongestLine);

    private static string Bounded(string? text) => text is null ? "" : text.Length > LongestText ? text[..LongestText] : text;

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();
}
