using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.LanguageServer.Tests.Documents;

/// <summary>The records of a folder are gathered once, whoever asks, and what is found in a record is what it is when the file is compiled alone.</summary>
public sealed class FolderRecordsTests
{
    private const int Records = 12;
    private static readonly DateOnly Today = new(2026, 8, 1);
    private static readonly string Lid = "bench/hatch-lid.recipe";
    private readonly Shop _shop = new();

    public FolderRecordsTests()
    {
        _shop.Texts["bench/shop.recipe"] = Repository.Read("samples/shop.recipe");
        _shop.Texts[Lid] = Repository.Read("samples/hatch-lid.recipe");
        for (var no = 11; no < 11 + Records; no++)
        {
            _shop.Texts[Name(no)] = $"use \"hatch-lid.recipe\"\n\nbuild hatch-lid no {no} on 2026-07-{no - 10:00} {{\n  mass {120 + no} g\n}}\n";
        }
    }

    [Fact]
    public void A_folder_is_listed_once_for_all_its_files()
    {
        var files = new Workspace(_shop, Today).CompileAll([.. _shop.Texts.Keys]);
        Assert.DoesNotContain(null, files);
        Assert.Equal(1, _shop.Listed["bench"]);
    }

    [Fact]
    public void What_is_found_side_by_side_is_what_is_found_alone()
    {
        string[] names = [.. _shop.Texts.Keys.Order(StringComparer.Ordinal)];
        var together = new Workspace(_shop, Today).CompileAll(names);
        foreach (var (name, file) in names.Zip(together))
        {
            Assert.True(new Workspace(_shop, Today).TryCompile(name, out var alone));
            Assert.Equal(alone.Findings.Select(finding => (finding.Descriptor.Code, finding.Where.Span, finding.Message)), file!.Findings.Select(finding => (finding.Descriptor.Code, finding.Where.Span, finding.Message)));
            Assert.Equal(alone.RestsOn.AsEnumerable(), file.RestsOn.AsEnumerable());
        }

        // Each grows by a gram on the one before: only who sees them in their order can say so.
        Assert.Contains(together.SelectMany(file => file!.Findings), finding => finding.Descriptor.Name == "slow-drift");
    }

    [Fact]
    public void A_record_beside_is_heard_and_plans_no_part_anew()
    {
        var live = new LiveWorkspace(_shop);
        var before = live.Compile(Lid, Today)!;
        _shop.Texts[Name(11)] = _shop.Texts[Name(11)].Replace("131 g", "132 g", StringComparison.Ordinal);
        var after = live.Compile(Lid, Today)!;
        Assert.NotSame(before, after);
        Assert.Equal(before.Parts.Select(part => part.Figures), after.Parts.Select(part => part.Figures), ReferenceEqualityComparer.Instance);
        Assert.Contains(after.RestsOn, text => text.Name == Name(11) && text.Text!.Contains("132 g", StringComparison.Ordinal));
    }

    private static string Name(int no) => $"bench/hatch-lid-{no:000}.recipe";

    private sealed class Shop : IFileStore
    {
        public ConcurrentDictionary<string, string> Texts { get; } = new(StringComparer.Ordinal);

        public ConcurrentDictionary<string, int> Listed { get; } = new(StringComparer.Ordinal);

        public bool TryRead(string name, [NotNullWhen(true)] out string? text) => Texts.TryGetValue(name, out text);

        public IEnumerable<string> RecipesIn(string folder)
        {
            Listed.AddOrUpdate(folder, 1, (_, count) => count + 1);
            return Texts.Keys.Where(name => name.StartsWith(folder + "/", StringComparison.Ordinal)).Order(StringComparer.Ordinal).ToList();
        }
    }
}
