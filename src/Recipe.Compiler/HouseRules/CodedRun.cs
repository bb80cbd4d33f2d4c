using System.Collections.Immutable;
using System.Globalization;
using Recipe.Checks;
using Recipe.Model;
using Recipe.Planning;
using Recipe.RuleProtocol;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>
/// The rules in C# that count for a text, and what they say of its parts. Nothing of theirs is compiled or run unless the user agreed to the folder
/// they stand in. What keeps them from being run is said where they are named; elsewhere it is a check that could not speak.
/// </summary>
internal sealed class CodedRun
{
    private readonly IRuleRunner? _runner;
    private readonly ImmutableArray<CodedFile> _files;
    private readonly ImmutableArray<RuleSource> _sources;
    private readonly List<CodedRuleNote> _notes = [];

    /// <summary>Finds out which rules there are.</summary>
    /// <param name="files">The files of rules; with none, nothing is asked.</param>
    /// <param name="runner">Runs them; null where nobody can.</param>
    /// <param name="taken">Names of rules in the language that count for the text too: of two with one name they count.</param>
    public CodedRun(ImmutableArray<CodedFile> files, IRuleRunner? runner, IEnumerable<string> taken)
    {
        (_files, _runner) = (files, runner);
        var sources = ImmutableArray.CreateBuilder<RuleSource>();
        foreach (var file in files)
        {
            if (runner is null || !runner.IsTrusted(file.Name))
            {
                _notes.Add(new CodedRuleNote(runner is null ? CodedRuleTrouble.NotRun : CodedRuleTrouble.NotTrusted, file.Where, runner is null ? $"rules in C# are not run here, so those of {file.Name} are not" : $"the rules of {file.Name} are not run: its folder is not trusted"));
            }
            else if (file.Text is { } text)
            {
                sources.Add(new RuleSource(file.Name, text));
            }
        }

        _sources = sources.ToImmutable();
        if (_sources.IsEmpty)
        {
            return;
        }

        var set = runner!.Describe(_sources);
        Note(set.Diagnostics, set.Problems);
        var names = taken.ToHashSet(StringComparer.Ordinal);
        foreach (var rule in set.Rules)
        {
            if (FindingDescriptor.IsName(rule.Name) && names.Add(rule.Name))
            {
                Checks.Add(new CodedRuleCheck(rule));
            }
            else if (FindingDescriptor.IsName(rule.Name))
            {
                _notes.Add(new CodedRuleNote(CodedRuleTrouble.Faulty, WhereOf(rule.File), $"another rule is called {rule.Name} too; that of {rule.File} is not applied"));
            }
            else
            {
                _notes.Add(new CodedRuleNote(CodedRuleTrouble.Faulty, WhereOf(rule.File), $"a rule of {rule.File} is called '{rule.Name}'; a name is small letters a to z, figures and hyphens"));
            }
        }
    }

    /// <summary>The rules as checks, for their names and severities; they say nothing until <see cref="Examine"/>.</summary>
    public List<CodedRuleCheck> Checks { get; } = [];

    /// <summary>What keeps rules from being run, as far as it stands in a text.</summary>
    public IEnumerable<CodedRuleNote> NotesIn(SourceText text) => _notes.Where(note => ReferenceEquals(note.Where.Source, text));

    /// <summary>The same as far as it stands elsewhere.</summary>
    public IEnumerable<CodedRuleNote> NotesElsewhere(SourceText text) => _notes.Where(note => !ReferenceEquals(note.Where.Source, text));

    /// <summary>The checks with what they found of some plans.</summary>
    public IReadOnlyList<Check> Examine(IReadOnlyList<Plan> plans)
    {
        if (Checks.Count == 0 || plans.Count == 0)
        {
            return [];
        }

        var answer = _runner!.Examine(_sources, [.. plans.Select(plan => FactSheets.Of(RuleCheck.FactsOf(plan)))]);
        Note([], answer.Problems);
        var byPlan = new Dictionary<Plan, CodedAnswer>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < plans.Count; i++)
        {
            byPlan[plans[i]] = new CodedAnswer([.. answer.Findings.Where(finding => finding.Part == i)], [.. answer.NotChecked.Where(note => note.Part == i)]);
        }

        return [.. Checks.Select(check => new CodedRuleCheck(check.Rule, byPlan))];
    }

    /// <summary>The rules held against their own examples; only of files that are named in a text.</summary>
    public IEnumerable<JudgedRule> Judge(SourceText text, Book book, UseScope uses)
    {
        var examples = Checks
            .Where(check => ReferenceEquals(WhereOf(check.Rule.File).Source, text))
            .SelectMany(check => (IEnumerable<(CodedRuleCheck, bool, string)>)[(check, true, check.Rule.BadExample), (check, false, check.Rule.GoodExample)])
            .Where(example => example.Item3.Length > 0)
            .Select(example => (Check: example.Item1, MustFire: example.Item2, Bound: Binder.Bind(SyntaxTree.Parse(new SourceText($"{example.Item1.Rule.File}, {(example.Item2 ? "BadExample" : "GoodExample")}", example.Item3)), book, uses)))
            .ToArray();
        var plans = examples.Select(example => example.Bound.Model.Parts.Select(part => Planner.Plan(part, example.Bound.Model)).ToArray()).ToArray();
        var answers = plans.Any(some => some.Length > 0)
            ? _runner!.Examine(_sources, [.. plans.SelectMany(some => some).Select(plan => FactSheets.Of(RuleCheck.FactsOf(plan)))])
            : null;
        Note([], answers?.Problems ?? []);
        var first = 0;
        var judged = new List<(CodedRuleCheck Check, JudgedExample Example)>();
        for (var i = 0; i < examples.Length; i++)
        {
            judged.Add((examples[i].Check, Judge(examples[i].Check, examples[i].MustFire, examples[i].Bound, first, plans[i].Length, answers)));
            first += plans[i].Length;
        }

        return Checks.Where(check => ReferenceEquals(WhereOf(check.Rule.File).Source, text)).Select(check => new JudgedRule(
            new HouseRule
            {
                Name = check.Rule.Name,
                Title = check.Descriptor.Title,
                Where = WhereOf(check.Rule.File),
                IsWhole = true,
                Examples = [.. judged.Where(one => one.Check == check).Select(one => one.Example.Example)],
            },
            [.. judged.Where(one => one.Check == check).Select(one => one.Example)]));
    }

    private JudgedExample Judge(CodedRuleCheck check, bool mustFire, BoundFile bound, int first, int count, RuleRunAnswer? answers)
    {
        var example = new RuleExample(mustFire, WhereOf(check.Rule.File), WhereOf(check.Rule.File));
        if (bound.Tree.Findings.Concat(bound.Findings).FirstOrDefault(finding => finding.Severity == Severity.Error) is { } fault)
        {
            return new JudgedExample(example, null, $"a text that is understood: {fault.Message.TrimEnd('.')}");
        }

        if (count == 0 || answers is null)
        {
            return new JudgedExample(example, null, "a part");
        }

        if (answers.Findings.FirstOrDefault(finding => Is(finding.File, finding.Rule) && finding.Part >= first && finding.Part < first + count) is { } found)
        {
            return new JudgedExample(example, true, found.Message.TrimEnd('.'));
        }

        if (answers.Problems.FirstOrDefault(problem => problem.File is null || (problem.File == check.Rule.File && (problem.Rule ?? check.Rule.Name) == check.Rule.Name)) is { } problem)
        {
            return new JudgedExample(example, null, $"an answer: {Lower(problem.Message.TrimEnd('.'))}");
        }

        var missing = answers.NotChecked.FirstOrDefault(note => Is(note.File, note.Rule) && note.Part >= first && note.Part < first + count)?.Missing;
        return new JudgedExample(example, missing is null ? false : null, missing);

        bool Is(string file, string rule) => file == check.Rule.File && rule == check.Rule.Name;
    }

    private void Note(IEnumerable<RuleDiagnostic> diagnostics, IEnumerable<RuleProblem> problems)
    {
        foreach (var diagnostic in diagnostics)
        {
            var at = PlaceOf(diagnostic);
            var line = at is { } place ? string.Create(CultureInfo.InvariantCulture, $", line {place.Start.Line + 1}") : "";
            var said = $"{diagnostic.File}{line}: {diagnostic.Message.TrimEnd('.')} ({diagnostic.Code})";
            _notes.Add(new CodedRuleNote(CodedRuleTrouble.Faulty, WhereOf(diagnostic.File), said) { At = at });
        }

        foreach (var problem in problems)
        {
            var note = new CodedRuleNote(CodedRuleTrouble.NotRun, problem.File is { } file ? WhereOf(file) : _files[0].Where, Lower(problem.Message.TrimEnd('.')));
            if (!_notes.Contains(note))
            {
                _notes.Add(note);
            }
        }
    }

    private SourceSpan? PlaceOf(RuleDiagnostic diagnostic)
    {
        var text = _sources.FirstOrDefault(source => source.Name == diagnostic.File)?.Text;
        return text is null || diagnostic.Start < 0 || diagnostic.End < diagnostic.Start || diagnostic.End > text.Length
            ? null
            : new SourceSpan(new SourceText(diagnostic.File, text), TextSpan.FromBounds(diagnostic.Start, diagnostic.End));
    }

    private SourceSpan WhereOf(string file) => (_files.FirstOrDefault(known => known.Name == file) ?? _files[0]).Where;

    private static string Lower(string text) => text.Length > 1 && char.IsLower(text[1]) ? char.ToLowerInvariant(text[0]) + text[1..] : text;
}
