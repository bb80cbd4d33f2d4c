using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Semantics.Schema;
using Recipe.Syntax;

namespace Recipe.Editing;

/// <summary>What may be asked where a rule of the house is written.</summary>
internal static class RuleHelp
{
    /// <summary>The things whose facts a line may ask for, the innermost first; empty outside rules.</summary>
    public static ImmutableArray<FactGroup> GroupsAt(EntryPlace? owner)
    {
        var groups = ImmutableArray.CreateBuilder<FactGroup>();
        foreach (var place in owner?.Chain() ?? [])
        {
            if (place.Entry.Head.Text == "rule" && place.Parent is null)
            {
                groups.Add(FactTable.Part);
                return groups.ToImmutable();
            }

            if (GroupOf(place.Entry) is { } group)
            {
                groups.Add(group);
            }
        }

        return [];
    }

    /// <summary>The proposals in a line of conditions; null where the line is none.</summary>
    public static IEnumerable<(string Label, CompletionKind Kind, string NewText, string? Detail)>? At(CompiledFile file, LineContext line)
    {
        var groups = GroupsAt(line.Owner);
        var inConditions = line.Block?.Name == "conditions";
        if (groups.IsEmpty || (!inConditions && (line.AtHead || !RuleSchema.BeginsCondition(line.Head))))
        {
            return null;
        }

        return line.AtHead ? Facts(groups) : Behind(file, line, groups, inConditions && !RuleSchema.BeginsCondition(line.Head) ? 0 : 1);
    }

    /// <summary>What a word of a condition is; null when it is no fact.</summary>
    public static string? About(EntryPlace place, string word)
    {
        var groups = GroupsAt(place);
        var fact = groups.Select(group => group.Find(word)).FirstOrDefault(found => found is not null);
        return fact is not null ? $"**{fact.Word}**: {fact.Doc}{Shown(fact)}"
            : !groups.IsEmpty && FactTable.Find(word) is { } kind ? $"**{kind.Word}**: {kind.Doc}"
            : null;
    }

    private static IEnumerable<(string, CompletionKind, string, string?)> Behind(CompiledFile file, LineContext line, ImmutableArray<FactGroup> groups, int first)
    {
        var last = line.Before[^1];
        var word = line.TextOf(last);
        if (line.Before.Length <= first || last.Kind is TokenKind.OpenParenthesis or TokenKind.Plus or TokenKind.Minus or TokenKind.Star or TokenKind.Slash)
        {
            return Facts(groups).Concat(RuleSchema.Openings.Select(o => Clause(o.Word, o.Doc)));
        }

        if (RuleSchema.IsOfAKind(word) && line.Before.Length == first + 1)
        {
            return FactTable.Elements.Select(group => (group.Word, CompletionKind.Choice, group.Word + " ", (string?)group.Doc));
        }

        if (line.Before.Length == first + 2 && line.TextOf(line.Before[first]) is "sum" or "least" or "most" && FactTable.Find(word) is { } kind)
        {
            return Facts([kind]).Where(fact => kind.Find(fact.Label)!.IsNumeric);
        }

        if (Subject(line, groups, first) is not { } subject)
        {
            return RuleSchema.Relations.Select(r => Clause(r.Word, r.Doc));
        }

        if (last.Kind == TokenKind.Number)
        {
            return subject.Unit is { } unit ? [(unit.Symbol, CompletionKind.Unit, unit.Symbol, null)] : [];
        }

        if (word is "is" or "is-not" || (line.Before.Any(token => line.TextOf(token) is "is" or "is-not") && !subject.IsNumeric))
        {
            return Words(file, subject).Select(choice => (choice, CompletionKind.Choice, choice, (string?)null));
        }

        var known = Clause("known", "It is known.");
        return subject.IsNumeric ? [.. RuleSchema.Relations.Select(r => Clause(r.Word, r.Doc)), known] : [Clause("is", "It is one of these."), Clause("is-not", "It is none of these."), known];
    }

    private static (string, CompletionKind, string, string?) Clause(string word, string doc) => (word, CompletionKind.Clause, word + " ", doc);

    private static IEnumerable<(string Label, CompletionKind Kind, string NewText, string? Detail)> Facts(IEnumerable<FactGroup> groups) =>
        groups.SelectMany(group => group.Facts).DistinctBy(fact => fact.Word).Select(fact => (fact.Word, CompletionKind.Name, fact.Word + " ", (string?)fact.Doc));

    // What is compared: the last fact before a relation.
    private static FactWord? Subject(LineContext line, ImmutableArray<FactGroup> groups, int first)
    {
        var within = line.Before.Skip(first).Select(line.TextOf).Select(FactTable.Find).FirstOrDefault(found => found is not null) is { } kind ? groups.Insert(0, kind) : groups;
        return line.Before.Skip(first)
            .Where(token => token.Kind == TokenKind.Word)
            .Select(token => within.Select(group => group.Find(line.TextOf(token))).FirstOrDefault(fact => fact is not null))
            .LastOrDefault(fact => fact is not null);
    }

    private static IEnumerable<string> Words(CompiledFile file, FactWord fact) => fact.Kind == FactKind.YesNo ? ["yes", "no"]
        : fact.NamesMaterial ? file.Bound.Model.Materials.Values.Where(m => fact.Word == "fibre" == (m.Keyword == "fibre")).Select(m => m.Name).Order(StringComparer.Ordinal)
        : fact.Choices;

    private static FactGroup? GroupOf(EntrySyntax entry)
    {
        var words = entry.Values.OfType<WordSyntax>().Select(word => word.Text).Prepend(entry.Head.Text).ToArray();
        for (var i = 0; i + 1 < words.Length; i++)
        {
            if (RuleSchema.IsOfAKind(words[i]) && FactTable.Find(words[i + 1]) is { } group)
            {
                return group;
            }
        }

        return null;
    }

    private static string Shown(FactWord fact) => fact.Unit is { } unit ? $" ({unit.Symbol})" : fact.Choices.IsEmpty ? "" : $" ({string.Join(", ", fact.Choices)})";
}
