using Recipe.RuleApi;
using Recipe.RulesProcess;
using Process = Recipe.RulesProcess.RulesProcess;

namespace Recipe.RulesHost.Tests;

/// <summary>Whatever the host does, the client neither throws nor waits for ever, and says what happened.</summary>
public sealed class FalseHostTests
{
    private const string Answer = "\"rules\":[],\"diagnostics\":[],\"notChecked\":[],\"problems\":[],\"compiled\":[],\"assemblies\":[]";

    [Fact]
    public void No_host_is_said() => Expect(new RulesProcessOptions { HostPath = "/none/recipe-rules-host" }, RuleProblemKind.NotInstalled, "There is no rules host at /none/recipe-rules-host");

    [Fact]
    public void A_file_that_is_no_program_is_said()
    {
        var path = Path.GetTempFileName();
        Expect(new RulesProcessOptions { HostPath = path }, RuleProblemKind.DidNotStart, "could not be started");
        File.Delete(path);
    }

    [Theory]
    [InlineData("exit 3", RuleProblemKind.DidNotStart, "ended before it said anything")]
    [InlineData("echo 'cannot load the runtime' >&2; exit 3", RuleProblemKind.DidNotStart, "(cannot load the runtime)")]
    [InlineData("echo hello; sleep 30", RuleProblemKind.DidNotStart, "is no rules host")]
    [InlineData("echo '[]'; sleep 30", RuleProblemKind.DidNotStart, "is no rules host")]
    [InlineData("echo '{\"protocol\":99,\"host\":\"9\"}'; sleep 30", RuleProblemKind.WrongVersion, "of another version")]
    [InlineData(Hosts.Greets + "exit 1", RuleProblemKind.HostFailed, "")]
    [InlineData(Hosts.Greets + "exec <&-; sleep 30", RuleProblemKind.HostFailed, "")]
    [InlineData(Hosts.Greets + "read x; echo nonsense; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo 7; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"answer\":1}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"answer\":2,\"findings\":[]," + Answer + "}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"answer\":1,\"findings\":[{\"file\":\"one.rule.cs\",\"rule\":\"a\",\"part\":9,\"index\":0,\"severity\":1,\"message\":\"m\"}]," + Answer + "}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"answer\":1,\"findings\":[{\"file\":\"one.rule.cs\",\"rule\":\"a\",\"part\":0,\"group\":\"ply\",\"index\":3,\"severity\":1,\"message\":\"m\"}]," + Answer + "}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"answer\":1,\"findings\":[{\"file\":\"other\",\"rule\":\"a\",\"part\":0,\"index\":0,\"severity\":1,\"message\":\"m\"}]," + Answer + "}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"answer\":1,\"findings\":[{\"file\":\"one.rule.cs\",\"rule\":\"a\",\"part\":0,\"index\":0,\"severity\":7,\"message\":\"m\"}]," + Answer + "}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"at\":1,\"file\":\"other\"}'; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; yes '{\"at\":1,\"file\":\"one.rule.cs\"}'", RuleProblemKind.HostFailed, "comes to no end")]
    [InlineData(Hosts.Greets + "read x; head -c 30000000 /dev/zero", RuleProblemKind.HostFailed, "wrote more than 100,000 bytes in a line")]
    [InlineData(Hosts.Greets + "read x; echo '[[[[[[[[[[[[[[[[[[[[[[[[[[[[[['; sleep 30", RuleProblemKind.HostFailed, "no answer")]
    [InlineData(Hosts.Greets + "read x; echo '{\"at\":1,\"file\":\"one.rule.cs\"}'; exit 134", RuleProblemKind.CompileStopped, "one.rule.cs was compiled when the rules host ended")]
    public void What_the_host_did_is_said(string shell, RuleProblemKind kind, string says) => Expect(Hosts.Shell(shell), kind, says);

    [Theory]
    [InlineData("sleep 30", RuleProblemKind.DidNotStart, "said nothing for 0.3 s")]
    [InlineData("head -c 1000 /dev/zero; sleep 30", RuleProblemKind.DidNotStart, "said nothing for 0.3 s")]
    [InlineData(Hosts.Greets + "sleep 30", RuleProblemKind.HostFailed, "did not answer for 2 s")]
    [InlineData(Hosts.Greets + "read x; echo '{\"at\":1,\"file\":\"one.rule.cs\"}'; sleep 30", RuleProblemKind.CompileStopped, "compiling one.rule.cs took longer than 0.3 s")]
    [InlineData(Hosts.Greets + "read x; echo '{\"at\":1,\"file\":\"one.rule.cs\",\"rule\":\"warm\",\"part\":0}'; sleep 30", RuleProblemKind.RuleStopped, "rule warm ran longer than 0.3 s and was stopped")]
    public void A_host_that_waits_is_stopped(string shell, RuleProblemKind kind, string says)
    {
        // One that greets must have the time to do so.
        var brief = TimeSpan.FromSeconds(0.3);
        var start = !shell.StartsWith(Hosts.Greets, StringComparison.Ordinal) ? brief : kind == RuleProblemKind.HostFailed ? TimeSpan.FromSeconds(2) : TimeSpan.FromSeconds(20);
        Expect(Hosts.Shell(shell) with { StartTime = start, CompileTime = brief, RuleTime = brief, MostRestarts = 0 }, kind, says);
    }

    [Fact]
    public void A_host_that_reads_nothing_is_stopped()
    {
        using var client = new Process(Hosts.Shell(Hosts.Greets + "sleep 30") with { StartTime = TimeSpan.FromSeconds(0.5) });
        var answer = client.Describe([Hosts.File(new string('x', 3_000_000))], CancellationToken.None);
        Assert.Contains("did not take the question", Assert.Single(answer.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_that_was_stopped_is_left_out_of_the_next_attempt()
    {
        // The false host loops until it is asked to leave the rule out.
        using var client = new Process(Hosts.Shell(
            Hosts.Greets + """read x; case "$x" in *'"rule":"warm"'*) echo '{"answer":2,"findings":[],"rules":[],"diagnostics":[],"notChecked":[],"problems":[],"compiled":[],"assemblies":[]}';; *) echo '{"at":1,"file":"one.rule.cs","rule":"warm","part":0}';; esac; sleep 30""") with
        { RuleTime = TimeSpan.FromSeconds(0.3) });
        var answer = client.Examine([Hosts.File("")], [new FactSheet("part")], CancellationToken.None);
        var problem = Assert.Single(answer.Problems);
        Assert.Equal(("one.rule.cs", "warm", 0), (problem.File, problem.Rule, problem.Part));
        Assert.Equal(2, client.Starts);
    }

    [Fact]
    public void A_caller_can_stop()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(0.3));
        using var client = new Process(Hosts.Shell(Hosts.Greets + "sleep 30"));
        Assert.Equal(RuleProblemKind.Cancelled, Assert.Single(client.Describe([Hosts.File("")], stop.Token).Problems).Kind);
    }

    [Fact]
    public void Without_rules_no_host_is_started()
    {
        using var client = new Process(new RulesProcessOptions { HostPath = "/none/recipe-rules-host" });
        Assert.Empty(client.Describe([], CancellationToken.None).Problems);
        Assert.Empty(client.Examine([], [new FactSheet("part")], CancellationToken.None).Problems);
        Assert.Equal(0, client.Starts);
    }

    private static void Expect(RulesProcessOptions options, RuleProblemKind kind, string says)
    {
        using var client = new Process(options with { MostRestarts = 0 });
        var answer = client.Examine([Hosts.File("")], [new FactSheet("part")], CancellationToken.None);
        Assert.Empty(answer.Rules);
        Assert.Empty(answer.Findings);
        Assert.Equal(kind, answer.Problems[0].Kind);
        Assert.Contains(says, answer.Problems[0].Message, StringComparison.Ordinal);
    }
}
