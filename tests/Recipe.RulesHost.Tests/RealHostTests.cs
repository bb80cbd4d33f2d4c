using Recipe.RuleApi;
using Process = Recipe.RulesProcess.RulesProcess;

namespace Recipe.RulesHost.Tests;

/// <summary>The program and the real host together. One host serves all tests that do not need their own.</summary>
public sealed class RealHostTests(RealHostTests.Shared shared) : IClassFixture<RealHostTests.Shared>
{
    private const string Reports = """report.Finding(part.Plies[1], $"{part.Plies[1].Name} of {part.Name}"); report.NotChecked("the cost");""";

    /// <summary>A host that is kept, without a cache.</summary>
    public sealed class Shared : IDisposable
    {
        internal Process Client { get; } = new(Hosts.Real);

        public void Dispose() => Client.Dispose();
    }

    [Fact]
    public void Rules_are_described()
    {
        var text = Write.Rule("");
        var rule = Assert.Single(shared.Client.Describe([Hosts.File(text)], CancellationToken.None).Rules);
        Assert.Equal(("one.rule.cs", "one", "a title", "a reason", "a remedy", RuleSeverity.Warning), (rule.File, rule.Name, rule.Title, rule.Reason, rule.Remedy, rule.Severity));
        Assert.Equal("One", text[rule.Start..rule.End]);
    }

    [Fact]
    public void Findings_come_back_with_their_element()
    {
        var answer = shared.Client.Examine([Hosts.File(Write.Rule(Reports))], [Lid.Of(2), Lid.Sheet], CancellationToken.None);
        Assert.Empty(answer.Problems);
        Assert.Equal<RuleRunFinding>(
            [new RuleRunFinding("one.rule.cs", "one", 0, "ply", 1, RuleSeverity.Warning, "veil of lid"), new RuleRunFinding("one.rule.cs", "one", 1, "ply", 1, RuleSeverity.Warning, "veil of lid")],
            [.. answer.Findings]);
        Assert.Equal<RuleNotChecked>([new RuleNotChecked("one.rule.cs", "one", 0, "the cost"), new RuleNotChecked("one.rule.cs", "one", 1, "the cost")], [.. answer.NotChecked]);
    }

    [Fact]
    public void The_same_facts_give_the_same_answer()
    {
        var text = Write.Rule("foreach (var ply in part.Plies.GroupBy(p => p.Fibre)) report.Finding($\"{ply.Key} {ply.Count()}\");");
        var first = shared.Client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        var second = shared.Client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        Assert.Equal(2, first.Findings.Length);
        Assert.Equal<RuleRunFinding>([.. first.Findings], [.. second.Findings]);
    }

    [Fact]
    public void An_error_in_one_file_leaves_the_others()
    {
        var answer = shared.Client.Examine([Hosts.File("class", "bad.rule.cs"), Hosts.File(Write.Rule(Reports), "good.rule.cs")], [Lid.Sheet], CancellationToken.None);
        Assert.All(answer.Diagnostics, one => Assert.Equal("bad.rule.cs", one.File));
        Assert.NotEmpty(answer.Diagnostics);
        Assert.Single(answer.Findings);
    }

    [Fact]
    public void A_rule_that_throws_leaves_the_others()
    {
        var text = Write.Rule("throw new InvalidOperationException(\"no\\u001b[31m ply\");", name: "bad") + Write.Rule(Reports, name: "good");
        var answer = shared.Client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        var problem = Assert.Single(answer.Problems);
        Assert.Equal((RuleProblemKind.RuleFailed, "bad", 0), (problem.Kind, problem.Rule, problem.Part));
        Assert.StartsWith("rule bad failed with InvalidOperationException: no", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', problem.Message);
        Assert.Single(answer.Findings);
    }

    [Fact]
    public void A_rule_without_end_is_stopped_by_its_steps()
    {
        var text = Write.Rule("while (true) { }", name: "endless") + Write.Rule(Reports, name: "good");
        var answer = shared.Client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        Assert.Contains("rule endless took more than 5,000,000 steps", Assert.Single(answer.Problems).Message, StringComparison.Ordinal);
        Assert.Single(answer.Findings);
    }

    [Fact]
    public void Memory_without_end_is_stopped_by_the_cap()
    {
        // Lists double in thirty steps, which no counter sees.
        var text = Write.Rule("var l = new List<long> { 1 }; while (true) l.AddRange(l);", name: "greedy") + Write.Rule(Reports, name: "good");
        var answer = shared.Client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        Assert.Contains("rule greedy used more memory than it may", Assert.Single(answer.Problems).Message, StringComparison.Ordinal);
        Assert.Single(answer.Findings);
    }

    [Fact]
    public void A_flood_of_findings_is_cut()
    {
        var text = Write.Rule("for (var i = 0; i < 10000; i++) report.Finding(string.Concat(Enumerable.Repeat(\"long\", 100)) + i);");
        var answer = shared.Client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        Assert.Equal(RuleReport.MostFindings, answer.Findings.Length);
        Assert.Equal(RuleProblemKind.TooMuch, Assert.Single(answer.Problems).Kind);
    }

    // 25 parts of 200 findings are the 5,000 that one answer holds.
    [Theory]
    [InlineData(25, 0)]
    [InlineData(26, 1)]
    public void Only_a_rule_of_which_something_is_cut_is_said_to_report_too_much(int parts, int cut)
    {
        var text = Write.Rule("for (var i = 0; i < 200; i++) report.Finding($\"no {i}\");", name: "loud") + Write.Rule("", name: "quiet");
        var answer = shared.Client.Examine([Hosts.File(text)], [.. Enumerable.Repeat(Lid.Sheet, parts)], CancellationToken.None);
        Assert.Equal(5_000, answer.Findings.Length);
        Assert.Equal(Enumerable.Repeat("loud", cut), answer.Problems.Select(problem => problem.Rule));
    }

    [Fact]
    public void A_rule_without_end_that_nothing_counts_is_stopped_by_the_clock()
    {
        // Equality that the compiler writes has no counter, and here it follows a circle. Compiled with all optimisations, as methods are sooner or
        // later, it calls itself last and takes no stack.
        const string body = "var a = new R(); a.Next = a; var b = new R(); b.Next = b; report.Finding($\"{a == b}\");";
        const string types = "sealed record R { public R? Next { get; set; } }";
        using var client = new Process(Hosts.Real with { HostPath = "/usr/bin/env", HostArguments = ["DOTNET_TieredCompilation=0", Hosts.Real.HostPath], RuleTime = TimeSpan.FromSeconds(1) });
        var answer = client.Examine([Hosts.File(Write.Rule(body, types: types, name: "slow") + Write.Rule(Reports, name: "good"))], [Lid.Sheet], CancellationToken.None);
        var problem = Assert.Single(answer.Problems);
        Assert.Equal("rule slow ran longer than 1 s and was stopped.", problem.Message);
        Assert.Single(answer.Findings);
        Assert.Equal(2, client.Starts);
    }

    [Fact]
    public void A_rule_that_ends_the_process_is_named()
    {
        // The same, with something to compare after it: now each turn takes some of the stack, and its overflow ends any process.
        var text = Write.Rule("var a = new R(); a.Next = a; var b = new R(); b.Next = b; report.Finding($\"{a == b}\");", types: "sealed record R { public R? Next { get; set; } public int N { get; set; } }", name: "deep") + Write.Rule(Reports, name: "good");
        using var client = new Process(Hosts.Real);
        var answer = client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        var problem = Assert.Single(answer.Problems);
        Assert.Equal((RuleProblemKind.RuleStopped, "deep", 0), (problem.Kind, problem.Rule, problem.Part));
        Assert.Contains("rule deep ran when the rules host ended", problem.Message, StringComparison.Ordinal);
        Assert.Single(answer.Findings);
    }

    [Fact]
    public void Two_clients_at_once_do_not_disturb_each_other()
    {
        using var folder = new TemporaryFolder();
        var text = Write.Rule(Reports);
        var answers = new RuleRunAnswer[2];
        var threads = answers.Select((_, i) => new Thread(() =>
        {
            using var client = new Process(Hosts.Real with { CacheFolder = folder.Path });
            answers[i] = client.Examine([Hosts.File(text)], [Lid.Sheet], CancellationToken.None);
        })).ToList();
        threads.ForEach(thread => thread.Start());
        threads.ForEach(thread => thread.Join());
        Assert.All(answers, answer => Assert.Single(answer.Findings));
        Assert.All(answers, answer => Assert.Empty(answer.Problems));
        Assert.DoesNotContain(Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories), file => file.EndsWith(".part", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_callers_of_one_client_wait_for_each_other()
    {
        var found = new int[4];
        var threads = found.Select((_, i) => new Thread(() => found[i] = shared.Client.Examine([Hosts.File(Write.Rule(Reports))], [Lid.Sheet], CancellationToken.None).Findings.Length)).ToList();
        threads.ForEach(thread => thread.Start());
        threads.ForEach(thread => thread.Join());
        Assert.All(found, count => Assert.Equal(1, count));
    }
}
