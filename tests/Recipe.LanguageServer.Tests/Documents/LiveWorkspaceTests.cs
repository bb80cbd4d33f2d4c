using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.LanguageServer.Tests.Documents;

/// <summary>What was compiled before is answered again as long as nothing that it rests on has changed, and never longer.</summary>
public sealed class LiveWorkspaceTests
{
    private const string Lid = "bench/lids/hatch-lid.recipe";
    private const string Shop = "bench/lids/shop.recipe";
    private static readonly DateOnly Today = new(2026, 6, 1);

    private readonly Texts _texts = new()
    {
        [Lid] = Repository.Read("samples/hatch-lid.recipe"),
        [Shop] = Repository.Read("samples/shop.recipe"),
        ["bench/other.recipe"] = "language 1\n",
    };

    private LiveWorkspace Live => field ??= new LiveWorkspace(_texts);

    [Fact]
    public void Nothing_changed_and_nothing_is_compiled()
    {
        var first = Live.Compile(Lid, Today)!;
        _texts["bench/other.recipe"] = "language 1\nlet a = 1 mm\n";
        Assert.Same(first, Live.Compile(Lid, Today));
        Assert.Same(first, Live.Compile("bench/./lids/hatch-lid.recipe", Today));
        Assert.Equal(
            [Lid, "bench/lids/settings.recipe", Shop, "bench/settings.recipe", "settings.recipe"],
            first.RestsOn.Select(text => text.Name));
    }

    [Fact]
    public void The_file_of_a_shape_counts_like_a_text()
    {
        _texts[Lid] = "language 1\nmould lid {\n  surface mesh \"lid.stl\" unit mm\n}\n";
        var first = Live.Compile(Lid, Today)!;
        _texts.Shape = new ShapeBytes("bench/lids/lid.stl", new byte[] { 1 });
        var second = Live.Compile(Lid, Today)!;
        Assert.NotSame(first, second);
        Assert.NotEqual(first.Revision, second.Revision);

        // The same bytes, read again.
        _texts.Shape = new ShapeBytes("bench/lids/lid.stl", new byte[] { 1 });
        Assert.Same(second, Live.Compile(Lid, Today));
        _texts.Shape = new ShapeBytes("bench/lids/lid.stl", new byte[] { 2 });
        Assert.NotEqual(second.Revision, Live.Compile(Lid, Today)!.Revision);
    }

    [Fact]
    public void A_used_text_changes_goes_and_comes()
    {
        var first = Live.Compile(Lid, Today)!;
        _texts[Shop] += "\nlet another-length = 1 mm\n";
        var second = Live.Compile(Lid, Today)!;
        Assert.NotSame(first, second);
        Assert.NotEqual(first.Revision, second.Revision);
        Assert.Same(first.Tree, second.Tree);
        _texts.Remove(Shop);
        Assert.Contains(Live.Compile(Lid, Today)!.Findings, f => f.Descriptor.Name == "import-missing");
        _texts[Shop] = Repository.Read("samples/shop.recipe");
        Assert.DoesNotContain(Live.Compile(Lid, Today)!.Findings, f => f.Descriptor.Name == "import-missing");
    }

    [Theory]
    [InlineData("bench/lids/settings.recipe")]
    [InlineData("bench/settings.recipe")]
    [InlineData("settings.recipe")]
    public void Settings_that_appear_in_a_folder_above_count(string name)
    {
        var first = Live.Compile(Lid, Today);
        _texts[name] = "language 1\n";
        var second = Live.Compile(Lid, Today);
        Assert.NotSame(first, second);
        Assert.Same(second, Live.Compile(Lid, Today));
    }

    [Fact]
    public void Another_day_is_another_answer()
    {
        var first = Live.Compile(Lid, Today);
        Assert.NotSame(first, Live.Compile(Lid, Today.AddDays(1)));
    }

    [Fact]
    public void A_file_that_is_gone_is_null_and_no_longer_held()
    {
        Assert.NotNull(Live.Compile(Lid, Today));
        _texts.Remove(Lid);
        Assert.Null(Live.Compile(Lid, Today));
        Assert.Equal([false, true], Live.CompileAll([Lid, Shop], Today).Select(file => file is not null));
    }

    [Fact]
    public void It_says_what_a_fresh_workspace_says()
    {
        var live = Live.Compile(Lid, Today)!;
        _texts[Lid] = _texts[Lid].Replace("slow-laminating-epoxy", "slow-laminating-epoxi", StringComparison.Ordinal);
        live = Live.Compile(Lid, Today)!;
        Assert.True(new Workspace(_texts, Today).TryCompile(Lid, out var fresh));
        Assert.NotEmpty(fresh.Findings);
        Assert.Equal(
            fresh.Findings.Select(f => (f.Descriptor.Code, f.Where.Span, f.Message)),
            live.Findings.Select(f => (f.Descriptor.Code, f.Where.Span, f.Message)));
        Assert.Equal(fresh.Revision, live.Revision);
    }

    private sealed class Texts : Dictionary<string, string>, IFileStore
    {
        public ShapeBytes? Shape { get; set; }

        public bool TryRead(string name, [NotNullWhen(true)] out string? text) => TryGetValue(name, out text);

        public ShapeBytes? ShapeOf(string name) => name == "bench/lids/lid.stl" ? Shape : null;
    }
}
