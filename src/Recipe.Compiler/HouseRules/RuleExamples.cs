using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.HouseRules;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>
/// Holds a rule against its own examples. An example is read as a file of its own, in which all that its file declares besides rules and parts
/// stands too. Its places are those of the file: what is left out of the text is blanked.
/// </summary>
public static class RuleExamples
{
    /// <summary>What a rule says of its examples, and what could not be understood of them.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="file">The file that declares it.</param>
    /// <param name="book">The materials always in scope.</param>
    /// <param name="uses">The files that can be used.</param>
    public static (JudgedRule Judged, ImmutableArray<Finding> NotUnderstood) Judge(HouseRule rule, SyntaxTree file, Book book, UseScope uses)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(uses);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var judged = ImmutableArray.CreateBuilder<JudgedExample>();
        foreach (var example in rule.Examples)
        {
            var tree = SyntaxTree.Parse(new SourceText(file.Source.Name, TextOf(example, file)));
            var bound = Binder.Bind(tree, book, uses);

            // What the grammar has to say of an example stands among the findings of its file, which knows on how many lines it was put.
            findings.AddRange(bound.Findings.Where(finding => Stands(finding.Where, example)).Select(finding => InFile(finding, file.Source)));
            if (rule.IsWhole && !tree.Findings.Concat(bound.Findings).Where(finding => Stands(finding.Where, example)).Any(finding => finding.Severity == Severity.Error))
            {
                judged.Add(Judge(rule, example, bound.Model, tree.Source));
            }
        }

        return (new JudgedRule(rule, judged.ToImmutable()), findings.ToImmutable());
    }

    private static JudgedExample Judge(HouseRule rule, RuleExample example, RecipeModel model, SourceText text)
    {
        string? missing = null;
        var parts = model.Parts.Where(part => Stands(part.Where, example)).ToArray();
        foreach (var part in parts)
        {
            var outcome = RuleEngine.Apply(rule, PlanFacts.Of(Planner.Plan(part, model)), text);
            if (outcome.Broken is [var first, ..])
            {
                return new JudgedExample(example, true, first.Message);
            }

            missing ??= outcome.Missing;
        }

        return parts.Length == 0 ? new JudgedExample(example, null, "a part") : new JudgedExample(example, missing is null ? false : null, missing);
    }

    private static bool Stands(SourceSpan where, RuleExample example) =>
        where.Source.Name == example.Inside.Source.Name && where.Span.Start >= example.Inside.Span.Start && where.Span.End <= example.Inside.Span.End;

    private static string TextOf(RuleExample example, SyntaxTree file)
    {
        var text = file.Source.Text.ToCharArray();
        foreach (var statement in file.Root.Statements.Where(statement => statement is ErrorSyntax or EntrySyntax { Head.Text: "rule" or "part" or "variant" or "explore" or "build" }))
        {
            for (var i = statement.Span.Start; i < statement.Span.End; i++)
            {
                text[i] = text[i] is '\r' or '\n' ? text[i] : ' ';
            }
        }

        example.Inside.Text.CopyTo(0, text, example.Inside.Span.Start, example.Inside.Span.Length);
        return new string(text);
    }

    private static Finding InFile(Finding finding, SourceText file)
    {
        return finding with
        {
            Where = Place(finding.Where),
            Labels = [.. finding.Labels.Select(label => label with { Where = Place(label.Where) })],
            Fixes = [.. finding.Fixes.Select(fix => new Fix(fix.Title, fix.Safety, [.. fix.Edits.Select(edit => edit with { Where = Place(edit.Where) })]))],
        };

        SourceSpan Place(SourceSpan where) => where.Source.Name == file.Name ? new SourceSpan(file, where.Span) : where;
    }
}
