using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>A text taken through all stages: read, bound, planned, checked.</summary>
internal sealed record Bench(SourceText Source, RecipeModel Model, ImmutableArray<Plan> Plans, ImmutableArray<Finding> Before, CheckReport Report)
{
    public static readonly DateOnly Today = new(2026, 5, 14);

    /// <summary>What all stages found, accepted findings left out.</summary>
    public IEnumerable<Finding> All => Before.Concat(Report.Findings);

    public IEnumerable<string> Codes => All.Select(f => f.Descriptor.Code);

    /// <param name="text">The recipe.</param>
    /// <param name="today">The day; one of May 2026 when not given.</param>
    /// <param name="dated">Whether there is a day at all.</param>
    /// <param name="book">The book of materials; the small one of these tests when not given.</param>
    /// <param name="checks">The checks to run; all when not given.</param>
    public static Bench Of(string text, DateOnly? today = null, bool dated = true, Book? book = null, IReadOnlyList<Check>? checks = null)
    {
        var source = new SourceText("part.recipe", text);
        var tree = SyntaxTree.Parse(source);
        var bound = Binder.Bind(tree, book ?? TestBook.Book, UseScope.Alone());
        var plans = bound.Model.Parts.Select(p => Planner.Plan(p, bound.Model)).ToImmutableArray();
        ImmutableArray<Finding> before = [.. tree.Findings, .. bound.Findings];
        var examiner = new Examiner(bound.Model, dated ? today ?? Today : null, checks, before);
        var rules = bound.Model.OwnRules.Select(rule => RuleExamples.Judge(rule, tree, book ?? TestBook.Book, UseScope.Alone()).Judged);
        var report = examiner.Conclude([.. plans.Select(examiner.Examine)], rules: [.. rules], coded: [.. Coded(tree)]);
        return new Bench(source, bound.Model, plans, before, report);
    }

    // Rules in C# are run by another process. What keeps them from it is here told by the name of their file.
    private static IEnumerable<CodedRuleNote> Coded(SyntaxTree tree)
    {
        foreach (var path in tree.Root.Statements.OfType<EntrySyntax>().Where(entry => entry.Head.Text == "use").SelectMany(entry => entry.Values.OfType<TextSyntax>()).Where(path => path.Text.EndsWith(".rule.cs", StringComparison.Ordinal)))
        {
            var where = new SourceSpan(tree.Source, path.Span);
            yield return Path.GetFileName(path.Text) switch
            {
                "untrusted.rule.cs" => new CodedRuleNote(CodedRuleTrouble.NotTrusted, where, $"the rules of {path.Text} are not run: its folder is not trusted"),
                "faulty.rule.cs" => new CodedRuleNote(CodedRuleTrouble.Faulty, where, $"{path.Text}, line 3: a rule may not read files (RULE0001)"),
                _ => new CodedRuleNote(CodedRuleTrouble.NotRun, where, "rule endless ran longer than 2 s and was stopped"),
            };
        }
    }

    /// <summary>The only finding of a check in a text.</summary>
    public static Finding Fires(string code, string text)
    {
        var bench = Of(text, checks: Only(code));
        Assert.True(bench.Before.IsEmpty, bench.Story());
        var found = bench.Report.Findings.Where(f => f.Descriptor.Code == code || f.Descriptor.Name == code).ToList();
        Assert.True(found.Count == 1, $"{code} fires {found.Count} times\n{bench.Story()}");
        return found[0];
    }

    /// <summary>A check says nothing about a text, and the text is understood.</summary>
    public static void Silent(string code, string text)
    {
        var bench = Of(text, checks: Only(code));
        Assert.True(bench.Before.IsEmpty, bench.Story());
        Assert.False(bench.Report.Findings.Any(f => f.Descriptor.Code == code || f.Descriptor.Name == code), bench.Story());
    }

    /// <summary>A check fires on a text, and each fix that it or an earlier stage offers there settles it and is understood.</summary>
    /// <param name="code">Code or name of the finding, of any stage.</param>
    /// <param name="text">The text.</param>
    /// <param name="also">Names of findings that no fix may bring.</param>
    public static void Settles(string code, string text, params string[] also)
    {
        var bench = Of(text);
        var found = bench.All.Where(f => f.Descriptor.Code == code || f.Descriptor.Name == code).ToList();
        Assert.True(found.Count == 1, $"{code} fires {found.Count} times\n{bench.Story()}");
        Assert.False(found[0].Fixes.IsEmpty, $"{code} has no fix\n{bench.Story()}");
        foreach (var fix in found[0].Fixes)
        {
            var after = Of(TextEdit.Apply(bench.Source, fix.Edits));
            Assert.True(after.Before.IsEmpty, $"{fix.Title}\n{after.Story()}");
            Assert.False(after.All.Any(f => f.Descriptor == found[0].Descriptor || also.Contains(f.Descriptor.Name)), $"{fix.Title}\n{after.Story()}");
        }
    }

    /// <summary>
    /// The check of a code or name by itself: what a test of one check runs is then that check and no other, so that a fault put into a check
    /// (<c>.ci/mutants</c>) is held against its own tests. All of them where a check looks at what the others said.
    /// </summary>
    public static IReadOnlyList<Check>? Only(string code) =>
        CheckCatalogue.All.FirstOrDefault(c => c.Descriptor.Code == code || c.Descriptor.Name == code) is { } check and not (WaiverCheck or ElsewhereCheck) ? [check] : null;

    /// <summary>Nothing at all is found in a text.</summary>
    public static void Clean(string text)
    {
        var bench = Of(text);
        Assert.True(!bench.All.Any(), bench.Story());
    }

    /// <summary>A check fires on a tray, with this severity.</summary>
    public static Finding Fires(string code, Tray tray, Severity severity)
    {
        var found = Fires(code, tray.ToString());
        Assert.True(found.Severity == severity, $"{found.Severity}: {found.Message}\n{tray}");
        return found;
    }

    /// <summary>A check says nothing about a tray.</summary>
    public static void Silent(string code, Tray tray) => Silent(code, tray.ToString());

    /// <summary>Nothing at all is found in a tray.</summary>
    public static void Clean(Tray tray) => Clean(tray.ToString());

    /// <summary>Everything found, for a failed test.</summary>
    public string Story() =>
        string.Join("\n", All.Select(f => $"{f.Where.Start} {f.Severity} {f.Descriptor.Code} {f.Descriptor.Name}: {f.Message}"))
        + "\nnot checked: " + string.Join("; ", Report.NotChecked.Select(n => $"{n.Descriptor.Code} {n.Missing}"))
        + "\n" + Source.Text;
}
