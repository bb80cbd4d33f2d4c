using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.RuleApi;
using Recipe.RuleProtocol;
using Recipe.Text.Findings;

namespace Recipe.HouseRules.Tests;

/// <summary>Rules in C# in the whole program, with somebody in the place of the process that runs them.</summary>
public class CodedTests
{
    private readonly Files _files = new();
    private readonly Runner _runner = new();

    public CodedTests()
    {
        _files.Rules = _runner;
        _files.Texts["heavy.rule.cs"] = "// a rule\n// in C#\n";
        _files.Texts["tray.recipe"] = "use \"heavy.rule.cs\"\n" + Bench.Tray;
    }

    [Fact]
    public void What_a_rule_finds_is_a_finding_at_the_line_it_is_about()
    {
        var found = Assert.Single(_files.Compile("tray.recipe").Findings, f => f.Descriptor.IsHouseRule);
        Assert.Equal(("house/heavy", "body", "body weighs 280"), (found.Descriptor.Code, found.Where.Text.Split(' ')[0], found.Message));
        Assert.Equal(Severity.Warning, found.Severity);
    }

    [Fact]
    public void It_is_accepted_set_and_explained_as_all_findings_are()
    {
        _files.Texts["tray.recipe"] = "use \"heavy.rule.cs\"\nfindings { heavy error }\n" + Bench.Tray;
        Assert.Equal(Severity.Error, Assert.Single(_files.Compile("tray.recipe").Findings, f => f.Descriptor.IsHouseRule).Severity);
        _files.Texts["tray.recipe"] = "use \"heavy.rule.cs\"\n" + Bench.Tray.Replace("trim     15 mm", "trim     15 mm\n  accept heavy because \"tried\"", StringComparison.Ordinal);
        var file = _files.Compile("tray.recipe");
        Assert.DoesNotContain(file.Findings, f => f.Descriptor.IsHouseRule);
        Assert.Equal("tried", Assert.Single(file.Accepted, f => f.Descriptor.IsHouseRule).AcceptedBecause);
        Assert.StartsWith("house rule heavy (warning)\nHeavy cloth.\n", Explainer.Explain("heavy", file, null), StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_nobody_agreed_to_is_not_asked()
    {
        _runner.Trusted = false;
        Assert.Equal("RC9205", Assert.Single(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Code.StartsWith("RC92", StringComparison.Ordinal)).Descriptor.Code);
        Assert.Equal(0, _runner.Asked);
    }

    [Fact]
    public void Without_rules_in_CSharp_nobody_is_asked()
    {
        _files.Texts["tray.recipe"] = Bench.Tray;
        _files.Compile("tray.recipe");
        Assert.Equal(0, _runner.Asked);
        Assert.Equal(0, _files.RulesAsked);
    }

    [Fact]
    public void Where_nobody_runs_them_that_is_said()
    {
        _files.Rules = null;
        Assert.Contains(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Code == "RC9207");
    }

    [Fact]
    public void Rules_of_the_settings_count_and_their_troubles_are_said_there()
    {
        _files.Texts["settings.recipe"] = "use \"heavy.rule.cs\"\n";
        _files.Texts["tray.recipe"] = Bench.Tray;
        Assert.Contains(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Name == "heavy");
        _runner.Trusted = false;
        var tray = _files.Compile("tray.recipe");
        Assert.DoesNotContain(tray.Findings, f => f.Descriptor.Code.StartsWith("RC92", StringComparison.Ordinal));
        Assert.Contains(tray.NotChecked, note => note.Descriptor.Code == "RC9207" && note.Missing.Contains("not trusted", StringComparison.Ordinal));
        Assert.Equal(["RC9205"], _files.Compile("settings.recipe").Findings.Select(f => f.Descriptor.Code));
    }

    [Fact]
    public void A_file_that_is_not_there_is_missed()
    {
        _files.Texts.Remove("heavy.rule.cs");
        var found = Assert.Single(_files.Compile("tray.recipe").Findings, f => f.Severity == Severity.Error);
        Assert.Equal(("RC1207", "\"heavy.rule.cs\""), (found.Descriptor.Code, found.Where.Text));
    }

    [Fact]
    public void A_fault_in_the_file_is_shown_there()
    {
        _runner.Diagnostics = [new RuleDiagnostic("heavy.rule.cs", 13, 15, "RULE001", "`File` is not allowed in a rule.")];
        var found = Assert.Single(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Code == "RC9206");
        Assert.Equal("heavy.rule.cs, line 2: `File` is not allowed in a rule (RULE001)", found.Message);
        Assert.Equal(("heavy.rule.cs", "in"), (found.Labels[0].Where.Source.Name, found.Labels[0].Where.Text));
    }

    [Fact]
    public void A_rule_that_was_stopped_is_named_and_the_rest_is_checked()
    {
        _runner.Problems = [new RuleProblem(RuleProblemKind.RuleStopped, "heavy.rule.cs", "heavy", 0, "rule heavy ran longer than 2 s and was stopped.")];
        var file = _files.Compile("tray.recipe");
        Assert.Equal("rule heavy ran longer than 2 s and was stopped", Assert.Single(file.Findings, f => f.Descriptor.Code == "RC9207").Message);
        Assert.NotEmpty(file.Parts);
    }

    [Fact]
    public void A_rule_is_held_against_its_own_examples()
    {
        _runner.Rule = _runner.Rule with { BadExample = "part p { plies { a glass-plain-49 0/90 } }", GoodExample = "part p { plies { body glass-twill-280 0/90 } }" };
        Assert.Equal(["RC9202", "RC9203"], _files.Compile("tray.recipe").Findings.Select(f => f.Descriptor.Code).Where(c => c.StartsWith("RC920", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        _runner.Rule = _runner.Rule with { BadExample = "part p { plies { body glass-twill-280 0/90 } }", GoodExample = "part p { plies { a glass-plain-49 0/90 } }" };
        Assert.DoesNotContain(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Code.StartsWith("RC92", StringComparison.Ordinal));
        _runner.Rule = _runner.Rule with { BadExample = "part p { plies { body no-such-cloth 0/90 } }" };
        Assert.Contains(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Code == "RC9202" && f.Message.Contains("no-such-cloth", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_that_is_none_is_refused_and_a_name_that_is_taken_too()
    {
        _runner.Rule = _runner.Rule with { Name = "Heavy Cloth" };
        Assert.Contains(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Code == "RC9206");
        _runner.Rule = _runner.Rule with { Name = "cold-night" };
        Assert.Contains(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Code == "RC9201");
    }

    [Fact]
    public void A_rule_of_the_language_goes_before_one_of_the_same_name()
    {
        _files.Texts["tray.recipe"] = "use \"heavy.rule.cs\"\nrule heavy { title \"Ours\"\n must mass at-most 1 g }\n" + Bench.Tray;
        var file = _files.Compile("tray.recipe");
        Assert.Equal("Ours", Assert.Single(file.HouseRules).Title);
        Assert.Equal("Ours", Assert.Single(file.Findings, f => f.Descriptor.IsHouseRule).Descriptor.Title);
        Assert.Contains(file.Findings, f => f.Descriptor.Code == "RC9206" && f.Message.Contains("another rule", StringComparison.Ordinal));
    }

    [Fact]
    public void A_rule_that_is_stopped_on_its_own_example_is_not_said_to_find_nothing()
    {
        _files.Texts["tray.recipe"] = "use \"heavy.rule.cs\"\n";
        _runner.Rule = _runner.Rule with { BadExample = "part p { plies { body glass-twill-280 0/90 } }" };
        _runner.Problems = [new RuleProblem(RuleProblemKind.RuleStopped, "heavy.rule.cs", "heavy", 0, "rule heavy ran longer than 2 s and was stopped.")];
        var found = _files.Compile("tray.recipe").Findings;
        Assert.Contains("cannot tell", Assert.Single(found, f => f.Descriptor.Code == "RC9202").Message, StringComparison.Ordinal);
        Assert.Single(found, f => f.Descriptor.Code == "RC9207");
    }

    [Fact]
    public void A_file_that_is_changed_is_asked_again()
    {
        var live = new LiveWorkspace(_files);
        var before = live.Compile("tray.recipe", null);
        Assert.Same(before, live.Compile("tray.recipe", null));
        _files.Texts["heavy.rule.cs"] += " ";
        Assert.NotSame(before, live.Compile("tray.recipe", null));
    }

    [Fact]
    public void Facts_travel_with_their_kind_and_what_they_rest_on()
    {
        _files.Compile("tray.recipe");
        var sheet = _runner.Seen!;
        Assert.Equal(0.28, sheet.Group("ply").Single(ply => ply.Find("name")!.Value.Text == "body").Find("areal-weight")!.Value.Value, 6);
        Assert.Equal("bagged", sheet.Find("process")!.Value.Text);
        Assert.Equal(0, sheet.Find("outdoors")!.Value.Value);
        Assert.Null(sheet.Find("night"));
        Assert.False(sheet.Find("room")!.Value.IsAssumed);
    }

    /// <summary>Finds each ply called body.</summary>
    private sealed class Runner : IRuleRunner
    {
        public RuleDescription Rule { get; set; } = new("heavy.rule.cs", 0, 1, "heavy", "Heavy cloth", "It bridges.", "Lay less.", "our parts", RuleSeverity.Warning, "", "", "");

        public ImmutableArray<RuleDiagnostic> Diagnostics { get; set; } = [];

        public ImmutableArray<RuleProblem> Problems { get; set; } = [];

        public bool Trusted { get; set; } = true;

        public int Asked { get; private set; }

        public FactSheet? Seen { get; private set; }

        public bool IsTrusted(string name) => Trusted;

        public RuleSetAnswer Describe(IReadOnlyList<RuleSource> files)
        {
            Asked++;
            return new RuleSetAnswer(Diagnostics.IsEmpty ? [Rule] : [], Diagnostics, []);
        }

        public RuleRunAnswer Examine(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet> parts)
        {
            Seen = parts[0];
            var findings =
                from part in Enumerable.Range(0, parts.Count)
                from ply in Enumerable.Range(0, parts[part].Group("ply").Count)
                where parts[part].Group("ply")[ply].Find("name")?.Text == "body"
                select new RuleRunFinding(Rule.File, Rule.Name, part, "ply", ply, Rule.Severity, "body weighs 280.");
            return new RuleRunAnswer([Rule], [], Problems.IsEmpty ? [.. findings] : [], [], Problems);
        }
    }
}
