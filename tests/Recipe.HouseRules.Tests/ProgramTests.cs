using Recipe.Compiler;
using Recipe.TestKit;
using Recipe.Text.Findings;

namespace Recipe.HouseRules.Tests;

/// <summary>Rules of the house in the whole program: they are findings like all others.</summary>
public class ProgramTests
{
    private const string Rule = "rule light-cloth {\n  title \"Heavy cloth\"\n  must every ply { areal-weight at-most 250 g/m2 }\n  SEVERITY\n}\n";

    private readonly Files _files = new();

    [Fact]
    public void A_rule_counts_for_the_files_that_use_it()
    {
        Write("rules/light.recipe", Rule);
        Write("tray.recipe", "use \"rules/light.recipe\"\n" + Bench.Tray);
        Assert.Equal(["house/light-cloth"], House("tray.recipe"));
        Write("other.recipe", Bench.Tray);
        Assert.Empty(House("other.recipe"));
    }

    [Fact]
    public void Rules_of_the_settings_count_for_every_recipe_of_the_folder_and_below()
    {
        Write("shop/rules/light.recipe", Rule);
        Write("shop/settings.recipe", "use \"rules/light.recipe\"\nrule few { title \"Many plies\"\n must count ply at-most 4 }\n");
        Write("shop/lids/tray.recipe", Bench.Tray);
        Write("tray.recipe", Bench.Tray);
        Assert.Equal(["house/few", "house/light-cloth"], House("shop/lids/tray.recipe").Order(StringComparer.Ordinal));
        Assert.Empty(House("tray.recipe"));
    }

    [Fact]
    public void Two_used_files_with_a_rule_of_one_name_are_told()
    {
        Write("a.recipe", Rule);
        Write("b.recipe", Rule);
        Write("tray.recipe", "use \"a.recipe\"\nuse \"b.recipe\"\n" + Bench.Tray);
        Assert.Contains(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Name == "duplicate-name");
        Assert.Single(_files.Compile("tray.recipe").HouseRules);
    }

    [Fact]
    public void A_rule_has_severity_waivers_and_settings_like_all_findings()
    {
        Write("tray.recipe", Rule.Replace("SEVERITY", "severity error", StringComparison.Ordinal) + Bench.Tray);
        Assert.Equal(Severity.Error, One("tray.recipe").Severity);

        Write("tray.recipe", "findings { light-cloth advice }\n" + Rule + Bench.Tray);
        Assert.Equal(Severity.Advice, One("tray.recipe").Severity);

        Write("tray.recipe", Rule + Bench.Tray.Replace("trim     15 mm", "trim     15 mm\n  accept light-cloth because \"tried on a flat lid\"", StringComparison.Ordinal));
        var file = _files.Compile("tray.recipe");
        Assert.Empty(file.Findings.Where(f => f.Descriptor.IsHouseRule));
        Assert.Equal("tried on a flat lid", Assert.Single(file.Accepted, f => f.Descriptor.IsHouseRule).AcceptedBecause);

        Write("tray.recipe", Rule.Replace("SEVERITY", "acceptable no", StringComparison.Ordinal) + Bench.Tray.Replace("trim     15 mm", "trim     15 mm\n  accept light-cloth because \"we are quick\"", StringComparison.Ordinal));
        Assert.Equal(["house/light-cloth", "RC9004"], _files.Compile("tray.recipe").Findings.Select(f => f.Descriptor.Code).Where(c => c[0] == 'h' || c == "RC9004"));
    }

    [Fact]
    public void A_waiver_that_no_rule_needs_is_unused()
    {
        Write("tray.recipe", "rule calm { must every ply { areal-weight at-most 2 kg/m2 } }\n" + Bench.Tray.Replace("trim     15 mm", "trim     15 mm\n  accept calm because \"no\"", StringComparison.Ordinal));
        Assert.Contains(_files.Compile("tray.recipe").Findings, f => f.Descriptor.Name == "unused-waiver");
    }

    [Fact]
    public void What_rests_on_an_assumed_figure_is_at_most_a_warning()
    {
        Write("tray.recipe", "rule warm { severity error\n must room at-least 25 degC }\n" + Bench.Tray.Replace("room 20 degC; ", "", StringComparison.Ordinal));
        var found = One("tray.recipe");
        Assert.Equal(Severity.Warning, found.Severity);
        Assert.Contains("(assumed: ", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("finish {\n    trim  # to the line {\n    wash  \"warm } water\"\n  }", "    wash  \"warm } water\"\n    weigh\n  }")]
    [InlineData("finish { trim; wash \"warm } water\" }", "finish { trim; wash \"warm } water\"; weigh }")]
    public void Fixes_settle_what_they_are_offered_for(string finish, string mended)
    {
        Write("tray.recipe", "rule warm { must room at-least 23 degC\n fix write room 24 degC }\nrule weighed { must any finish-step { step is weigh }\n fix add finish \"weigh\" }\n" + Bench.Tray
            .Replace("finish { trim; wash \"warm water\"; weigh }", finish, StringComparison.Ordinal));
        var file = _files.Compile("tray.recipe");
        var found = file.Findings.Where(f => f.Descriptor.IsHouseRule).ToArray();
        Assert.Equal(["warm", "weighed"], found.Select(f => f.Descriptor.Name).Order(StringComparer.Ordinal));
        Write("tray.recipe", TextEdit.Apply(file.Source, found.SelectMany(f => f.Fixes).SelectMany(f => f.Edits)));
        Assert.Empty(House("tray.recipe"));
        Assert.Contains(mended, _files.Texts["tray.recipe"], StringComparison.Ordinal);
    }

    // A change takes the place of the word or figure alone, and none is offered where that does not stand in the recipe.
    [Theory]
    [InlineData("must process is infused\n fix write process infused", "process  bagged", "process  infused")]
    [InlineData("must every release { kind is wax }\n fix write agent carnauba-wax", "pva-film      coats 2", "carnauba-wax      coats 2")]
    [InlineData("must no finish-step { step is wash }\n fix write step abrade", "wash \"warm water\"", "abrade \"warm water\"")]
    [InlineData("must no bag-layer { material is breather-150 }\n fix write material felt", "breather breather-150;", "breather felt;")]
    [InlineData("must resin-content at-most 10 %\n fix write resin-content 38 % by weight", "resin-content 45 % by weight", "resin-content 38 % by weight")]
    public void A_change_leaves_the_rest_of_its_line(string rule, string written, string mended)
    {
        Assert.Contains(written, Bench.Tray, StringComparison.Ordinal);
        Write("tray.recipe", $"rule tried {{ {rule} }}\n" + Bench.Tray);
        var file = _files.Compile("tray.recipe");
        var fix = Assert.Single(file.Findings.Where(f => f.Descriptor.IsHouseRule).SelectMany(f => f.Fixes));
        Assert.Equal(file.Source.Text.Replace(written, mended, StringComparison.Ordinal), TextEdit.Apply(file.Source, fix.Edits));
    }

    [Theory]
    [InlineData("must process is infused\n fix write process infused", "  process  bagged\n", "")]
    [InlineData("must no bag-layer { class is peel-ply }\n fix write material felt", "", "")]
    [InlineData("must resin-content at-most 10 %\n fix write resin-content 38 % by weight", "resin-content 45 % by weight", "fibre-content 50 % by volume")]
    public void No_change_is_offered_where_something_else_stands(string rule, string written, string instead)
    {
        Write("tray.recipe", $"rule tried {{ {rule} }}\n" + (written.Length == 0 ? Bench.Tray : Bench.Tray.Replace(written, instead, StringComparison.Ordinal)));
        Assert.Empty(One("tray.recipe").Fixes);
    }

    [Fact]
    public void A_rule_that_is_changed_changes_what_was_kept_of_its_recipes()
    {
        Write("rules.recipe", Rule);
        Write("tray.recipe", "use \"rules.recipe\"\n" + Bench.Tray);
        var live = new LiveWorkspace(_files);
        Assert.Contains(live.Compile("tray.recipe", null)!.Findings, f => f.Descriptor.Name == "light-cloth");
        Write("rules.recipe", Rule.Replace("250", "300", StringComparison.Ordinal));
        Assert.DoesNotContain(live.Compile("tray.recipe", null)!.Findings, f => f.Descriptor.Name == "light-cloth");
        Write("tray.recipe", Rule + Bench.Tray);
        Assert.Contains(live.Compile("tray.recipe", null)!.Findings, f => f.Descriptor.Name == "light-cloth");
        Write("tray.recipe", Rule.Replace("250", "300", StringComparison.Ordinal) + Bench.Tray);
        Assert.DoesNotContain(live.Compile("tray.recipe", null)!.Findings, f => f.Descriptor.Name == "light-cloth");
    }

    [Fact]
    public void Explain_shows_a_rule_as_it_shows_a_finding()
    {
        Write("tray.recipe", Rule + Bench.Tray);
        var file = _files.Compile("tray.recipe");
        var page = Explainer.Explain("light-cloth", file, null);
        Assert.StartsWith("house rule light-cloth (warning)\nHeavy cloth.\n", page, StringComparison.Ordinal);
        Assert.Contains(Explainer.List(file), line => line == "house rule      light-cloth");
        Assert.Equal("light-cloth", Explainer.Nearest("light-clot", file));
        Assert.Null(Explainer.Explain("light-cloth", null, null));
    }

    [Fact]
    public void Reports_for_programs_hold_rules_of_the_house()
    {
        Write("tray.recipe", Rule + Bench.Tray);
        var file = _files.Compile("tray.recipe");
        Assert.Contains("\"house/light-cloth\"", CompiledFile.FindingsAsSarif([file], "1"), StringComparison.Ordinal);
        Assert.Contains("house/light-cloth", CompiledFile.FindingsAsJson([file]), StringComparison.Ordinal);
        Assert.Contains("house rule light-cloth", CompiledFile.FindingsAsJUnit([file]), StringComparison.Ordinal);
    }

    [Fact]
    public void Slips_in_an_example_are_shown_where_they_stand()
    {
        Write("rule.recipe", "rule a {\n  must mass at-most 1 kg\n  good {\n    part p {\n      resin nothing-such\n    }\n  }\n}\n");
        var found = Assert.Single(_files.Compile("rule.recipe").Findings);
        Assert.Equal(("unknown-name", "nothing-such"), (found.Descriptor.Name, found.Where.Text));
    }

    [Fact]
    public void An_example_sees_what_its_file_declares_and_uses()
    {
        Write("shop.recipe", "fabric our-cloth like glass-twill-163 { areal-weight 170 g/m2 }\n");
        Write("rule.recipe", "use \"shop.recipe\"\nlet most = 165 g/m2\nrule a {\n  must every ply { areal-weight at-most most }\n  bad { part p { plies { a our-cloth 0/90 } } }\n  good { part p { plies { a glass-twill-163 0/90 } } }\n}\n");
        Assert.Empty(_files.Compile("rule.recipe").Findings);
    }

    [Fact]
    public void The_samples_keep_their_rules_and_their_examples_agree()
    {
        foreach (var path in Directory.EnumerateFiles(Repository.PathOf("samples/house-rules"), "*.recipe", SearchOption.AllDirectories))
        {
            _files.Texts[path.Replace('\\', '/')] = File.ReadAllText(path);
        }

        Assert.All(_files.Texts.Keys, name => Assert.Empty(_files.Compile(name).Findings));
        var lid = _files.Texts.Keys.Single(name => name.EndsWith("locker-lid.recipe", StringComparison.Ordinal));
        Assert.Equal(["calm-pots", "warm-carbon", "weighed-last"], _files.Compile(lid).HouseRules.Select(r => r.Name).Order(StringComparer.Ordinal));
        _files.Texts[lid] = _files.Texts[lid].Replace("21 degC", "17 degC", StringComparison.Ordinal);
        Assert.Contains("house/warm-carbon", House(lid));
    }

    [Fact]
    public void Every_condition_of_the_page_can_be_written()
    {
        var lines = Repository.Read("grammar/house-rules.md").Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal)).Select(line => line.Split('`')[1]).ToArray();
        Assert.True(lines.Length >= 10);
        Assert.All(lines, line => Assert.True(Bench.Rule($"must {line}").IsWhole));
    }

    [Fact]
    public void The_rule_to_start_from_is_sound()
    {
        Write("start.recipe", ShippedTexts.RuleTemplates.Single(t => t.Name == "rules/rule.recipe").Text);
        Assert.Empty(_files.Compile("start.recipe").Findings);
    }

    private void Write(string name, string text) => _files.Texts[name] = text.Replace("SEVERITY", "", StringComparison.Ordinal);

    private Finding One(string name) => Assert.Single(_files.Compile(name).Findings, f => f.Descriptor.IsHouseRule);

    private string[] House(string name) => [.. _files.Compile(name).Findings.Where(f => f.Descriptor.IsHouseRule).Select(f => f.Descriptor.Code).Distinct()];
}
