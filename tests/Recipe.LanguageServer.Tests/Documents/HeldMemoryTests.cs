using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.LanguageServer.Tests.Documents;

/// <summary>What a workspace holds when it is done. Run when nothing else is: the collector counts for all of the process.</summary>
[Collection(nameof(HeldMemoryTests))]
public sealed class HeldMemoryTests
{
    private const string Lid = "bench/hatch-lid.recipe";
    private static readonly DateOnly Today = new(2026, 8, 1);

    /// <summary>A plan is some 100 kB: kept for each part of a folder, they were most of what a check of the folder held.</summary>
    [Fact]
    public void Who_wants_findings_only_holds_no_plans()
    {
        Shop shop = new();
        var text = Repository.Read("samples/hatch-lid.recipe");
        for (var i = 0; i < 100; i++)
        {
            text += $"\nvariant more-{i} of hatch-lid {{\n  plies {{\n    remove veil\n  }}\n}}\n";
        }

        shop["bench/shop.recipe"] = Repository.Read("samples/shop.recipe");
        shop[Lid] = text;
        var (all, every) = Held(() => new Workspace(shop, Today).CompileAll([Lid]));
        var (few, findings) = Held(() => Workspace.ForFindings(shop, Today).CompileAll([Lid]));
        Assert.Equal(every[0]!.Findings.Select(finding => finding.Message), findings[0]!.Findings.Select(finding => finding.Message));
        Assert.True(few < all / 3, $"{few} bytes held for findings only, {all} with the plans");

        // One that is asked for all the same is made again.
        Assert.Equal(every[0]!.Parts[0].Plan.Resin!.ToMix.Value, findings[0]!.Parts[0].Plan.Resin!.ToMix.Value);

        static (long Bytes, T Result) Held<T>(Func<T> make)
        {
            var before = GC.GetTotalMemory(forceFullCollection: true);
            var result = make();
            return (GC.GetTotalMemory(forceFullCollection: true) - before, result);
        }
    }

    private sealed class Shop : Dictionary<string, string>, IFileStore
    {
        public bool TryRead(string name, [NotNullWhen(true)] out string? text) => TryGetValue(name, out text);
    }
}

[CollectionDefinition(nameof(HeldMemoryTests), DisableParallelization = true)]
public sealed class HeldMemoryAlone;
