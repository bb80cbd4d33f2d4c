using Process = Recipe.RulesProcess.RulesProcess;

namespace Recipe.RulesHost.Tests;

/// <summary>What is kept on disk: compiled rules, and answers.</summary>
public sealed class CacheTests : IDisposable
{
    private static readonly string Text = Write.Rule("report.Finding($\"{part.Name}\");");
    private readonly TemporaryFolder _folder = new();

    private string[] Compiled => Directory.GetFiles(_folder.Path, "*.rules");

    private string[] Answers => Directory.Exists(_folder.Of("answers")) ? Directory.GetFiles(_folder.Of("answers"), "*.answer") : [];

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Rules_that_did_not_change_load_no_compiler()
    {
        using (var first = Ask(out _))
        {
            Assert.Equal(["one.rule.cs"], first.LastAnswer!.Compiled.ToArray());
            Assert.Contains("Microsoft.CodeAnalysis.CSharp", first.LastAnswer.Assemblies);
        }

        Assert.Single(Compiled);
        DropAnswers();
        using var second = Ask(out var answer);
        Assert.Empty(second.LastAnswer!.Compiled);
        Assert.DoesNotContain(second.LastAnswer.Assemblies, assembly => assembly.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal));
        Assert.Equal("lid", Assert.Single(answer.Findings).Message);
        Assert.Equal("one", Assert.Single(answer.Rules).Name);
    }

    [Fact]
    public void Each_file_is_named_before_it_is_compiled_and_none_that_was()
    {
        var said = new List<string>();
        using var client = new Process(Hosts.Real with { CacheFolder = _folder.Path }) { Compiling = file => said.Add(file is null ? "end" : $"{file.Number} of {file.Of} {file.File}") };
        var other = Hosts.File(Write.Rule("report.Finding($\"{part.Name}\");", name: "two"), "two.rule.cs");
        client.Examine([Hosts.File(Text), other], [Lid.Sheet], CancellationToken.None);
        Assert.Equal(["1 of 2 one.rule.cs", "2 of 2 two.rule.cs", "end"], said);
        said.Clear();
        client.Examine([Hosts.File(Text), other], [Lid.Of(1)], CancellationToken.None);
        Assert.Empty(said);
    }

    [Fact]
    public void The_same_question_starts_no_host()
    {
        using var first = Ask(out var asked);
        Assert.Single(Answers);
        using var second = Ask(out var kept);
        Assert.Equal((1, 0), (first.Starts, second.Starts));
        Assert.Equal<RuleRunFinding>([.. asked.Findings], [.. kept.Findings]);
        Assert.Equal<RuleDescription>([.. asked.Rules], [.. kept.Rules]);
    }

    [Fact]
    public void Other_facts_and_other_text_are_another_question()
    {
        using var client = new Process(Hosts.Real with { CacheFolder = _folder.Path });
        Assert.Equal("lid", Assert.Single(client.Examine([Hosts.File(Text)], [Lid.Sheet], CancellationToken.None).Findings).Message);
        Assert.Equal(2, client.Examine([Hosts.File(Text)], [Lid.Sheet, Lid.Of(1)], CancellationToken.None).Findings.Length);
        Assert.Equal("lid!", Assert.Single(client.Examine([Hosts.File(Text.Replace("{part.Name}", "{part.Name}!", StringComparison.Ordinal))], [Lid.Sheet], CancellationToken.None).Findings).Message);
        Assert.Equal(2, Compiled.Length);
        Assert.Equal(3, Answers.Length);
    }

    [Fact]
    public void What_was_cut_or_changed_is_made_anew()
    {
        Ask(out _).Dispose();
        foreach (var damage in (Action<string>[])[path => File.WriteAllBytes(path, File.ReadAllBytes(path)[..100]), path => File.WriteAllText(path, ""), Flip])
        {
            damage(Assert.Single(Compiled));
            damage(Assert.Single(Answers));
            using var again = Ask(out var answer);
            Assert.Equal(1, again.Starts);
            Assert.Equal(["one.rule.cs"], again.LastAnswer!.Compiled.ToArray());
            Assert.Equal("lid", Assert.Single(answer.Findings).Message);
        }
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_done_without()
    {
        File.WriteAllText(_folder.Of("rules"), "a file where the folder should be");
        using var client = new Process(Hosts.Real with { CacheFolder = _folder.Of("rules") });
        var answer = client.Examine([Hosts.File(Text)], [Lid.Sheet], CancellationToken.None);
        Assert.Empty(answer.Problems);
        Assert.Single(answer.Findings);
    }

    private static void Flip(string path)
    {
        var bytes = File.ReadAllBytes(path);
        bytes[^20] ^= 1;
        File.WriteAllBytes(path, bytes);
    }

    private Process Ask(out RuleRunAnswer answer)
    {
        var client = new Process(Hosts.Real with { CacheFolder = _folder.Path });
        answer = client.Examine([Hosts.File(Text)], [Lid.Sheet], CancellationToken.None);
        return client;
    }

    private void DropAnswers() => Directory.Delete(_folder.Of("answers"), recursive: true);
}
