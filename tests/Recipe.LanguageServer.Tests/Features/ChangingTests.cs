using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests.Features;

/// <summary>Features that change the text, or write something.</summary>
public sealed class ChangingTests
{
    [Fact]
    public void A_rename_reaches_each_use_with_the_version_of_the_document()
    {
        using var bench = new Bench();
        var place = bench.Place("let lap", 4);
        var prepared = bench.Ask("textDocument/prepareRename", ("position", place.DeepClone()))!;
        Assert.Equal("lap", (string?)prepared["placeholder"]);
        var edit = Assert.Single(bench.Ask("textDocument/rename", ("position", place.DeepClone()), ("newName", "seam"))!["documentChanges"]!.AsArray())!;
        Assert.Equal(1, (int)edit["textDocument"]!["version"]!);
        var text = bench.With(edit["edits"]!.AsArray());
        Assert.Contains("let seam = 15 mm", text);
        Assert.Contains("overlap seam", text);
    }

    [Fact]
    public void A_rename_that_cannot_be_is_refused_with_a_reason_and_the_book_is_left_alone()
    {
        using var bench = new Bench();
        Assert.Null(bench.Ask("textDocument/prepareRename", ("position", bench.Place("glass-twill-280", 2))));
        var refused = bench.Client.Ask("textDocument/rename", new JsonObject { ["textDocument"] = bench.Document, ["position"] = bench.Place("let lap", 4), ["newName"] = "15 laps" });
        Assert.Equal(-32803, (int)refused["error"]!["code"]!);
        Assert.Contains("15 laps", (string?)refused["error"]!["message"]);
    }

    [Fact]
    public void A_client_without_document_changes_gets_a_map()
    {
        using var bench = new Bench(capabilities: "{}");
        var edit = bench.Ask("textDocument/rename", ("position", bench.Place("let lap", 4)), ("newName", "seam"))!;
        Assert.Null(edit["documentChanges"]);
        Assert.Equal(2, edit["changes"]![bench.Uri]!.AsArray().Count);
    }

    [Fact]
    public void Formatting_lays_out_as_the_command_line_does()
    {
        using var clean = new Bench();
        Assert.Empty(clean.Ask("textDocument/formatting", ("options", Options()))!.AsArray());
        using var bench = new Bench(clean.Text.Replace("    outer  glass-plain-80    0/90", "outer glass-plain-80 0/90").Replace("  trim      15 mm", " trim 15 mm"));
        Assert.Equal(clean.Text, bench.With(bench.Ask("textDocument/formatting", ("options", Options()))!.AsArray()));
        var range = bench.With(bench.Ask("textDocument/rangeFormatting", ("range", bench.Range("outer glass-plain-80 0/90")), ("options", Options()))!.AsArray());
        Assert.Contains("    outer  glass-plain-80    0/90", range);
        Assert.Contains("\n trim 15 mm", range);
    }

    [Fact]
    public void A_closing_brace_goes_to_its_place_when_typed()
    {
        using var bench = new Bench("language 1\npart a {\n  plies {\n      }\n}\n");
        var edits = bench.Ask("textDocument/onTypeFormatting", ("position", bench.Place("      }", 7)), ("ch", "}"), ("options", Options()))!.AsArray();
        Assert.Contains("\n  }\n", bench.With(edits));
    }

    [Fact]
    public void A_fix_is_offered_with_its_finding_and_settles_it()
    {
        using var clean = new Bench();
        using var bench = new Bench(clean.Text.Replace("slow-laminating-epoxy", "slow-laminating-epoxi"));
        var actions = Actions(bench, "slow-laminating-epoxi", null);
        var fix = actions.First(a => (string?)a!["kind"] == "quickfix")!;
        Assert.Equal("unknown-name", (string?)fix["diagnostics"]![0]!["data"]!["name"]);
        Assert.Contains((string?)fix["title"], fix["diagnostics"]![0]!["data"]!["fixes"]!.AsArray().Select(t => (string?)t));
        Assert.Equal(clean.Text, bench.With(fix["edit"]!["documentChanges"]![0]!["edits"]!.AsArray()));
    }

    [Fact]
    public void Only_the_wanted_kinds_are_offered()
    {
        using var clean = new Bench();
        using var bench = new Bench(clean.Text.Replace("slow-laminating-epoxy", "slow-laminating-epoxi"));
        Assert.All(Actions(bench, "slow-laminating-epoxi", "quickfix"), a => Assert.Equal("quickfix", (string?)a!["kind"]));
        Assert.All(Actions(bench, "slow-laminating-epoxi", "refactor"), a => Assert.StartsWith("refactor.", (string?)a!["kind"]));
        Assert.All(Actions(bench, "slow-laminating-epoxi", "source"), a => Assert.Equal("source.fixAll.recipe", (string?)a!["kind"]));
        Assert.Empty(Actions(bench, "slow-laminating-epoxi", "quick"));
    }

    [Fact]
    public void Papers_are_written_beside_the_recipe()
    {
        using var bench = new Bench();
        var paths = MakePapers(bench, "hatch-lid")["result"]!.AsArray().Select(path => (string)path!).ToList();
        Assert.NotEmpty(paths);
        Assert.All(paths, path => Assert.True(File.Exists(path), path));
        Assert.All(paths, path => Assert.Equal(bench.Files.PathOf("papers"), Path.GetDirectoryName(path)));
        Assert.Equal(paths.Order(), Directory.GetFiles(bench.Files.PathOf("papers")).Order());
        Assert.Contains(paths, path => path.EndsWith(".html", StringComparison.Ordinal) && File.ReadAllText(path).Contains("Kayak hatch lid"));
    }

    [Fact]
    public void Papers_are_refused_for_a_part_that_is_not_there_and_for_a_recipe_with_an_error()
    {
        using var bench = new Bench();
        Assert.Equal(-32602, (int)MakePapers(bench, "hatch-lit")["error"]!["code"]!);
        using var broken = new Bench(bench.Text.Replace("slow-laminating-epoxy", "slow-laminating-epoxi"));
        Assert.Equal(-32803, (int)MakePapers(broken, "hatch-lid")["error"]!["code"]!);
        Assert.False(Directory.Exists(broken.Files.PathOf("papers")));
        Assert.Equal(-32602, bench.Client.Refused("workspace/executeCommand", """{ "command": "recipe.makePapers", "arguments": [1] }"""));
    }

    [Fact]
    public async Task Papers_are_written_all_or_none_through_links_and_one_set_at_a_time()
    {
        using var bench = new Bench();
        var paths = MakePapers(bench, "hatch-lid")["result"]!.AsArray().Select(path => (string)path!).Order(StringComparer.Ordinal).ToList();

        // Where a link stands, what it points to is replaced.
        var elsewhere = bench.Files.PathOf("elsewhere.html");
        File.Move(paths[0], elsewhere);
        File.WriteAllText(elsewhere, "old");
        File.CreateSymbolicLink(paths[0], elsewhere);
        Assert.NotNull(MakePapers(bench, "hatch-lid")["result"]);
        Assert.Equal(elsewhere, new FileInfo(paths[0]).LinkTarget);
        Assert.NotEqual("old", File.ReadAllText(elsewhere));

        // One that is write-protected stays, and so do the others.
        File.WriteAllText(paths[0], "kept");
        File.WriteAllText(paths[1], "kept");
        File.SetAttributes(paths[1], FileAttributes.ReadOnly);
        var refused = MakePapers(bench, "hatch-lid")["error"]!;
        Assert.Equal(-32803, (int)refused["code"]!);
        Assert.Contains("write-protected", (string)refused["message"]!, StringComparison.Ordinal);
        Assert.Equal(["kept", "kept"], paths.Take(2).Select(File.ReadAllText));
        Assert.Equal(paths, Directory.GetFiles(bench.Files.PathOf("papers")).Order(StringComparer.Ordinal));
        File.SetAttributes(paths[1], FileAttributes.Normal);

        // Who holds the folder's lock is waited for.
        using (var turn = new FileStream(bench.Files.PathOf("papers/.recipe.lock"), FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose))
        {
            var asked = Task.Run(() => MakePapers(bench, "hatch-lid"));
            Assert.NotSame(asked, await Task.WhenAny(asked, Task.Delay(TimeSpan.FromSeconds(1))));
            await turn.DisposeAsync();
            Assert.NotNull((await asked)["result"]);
        }
    }

    private static JsonObject MakePapers(Bench bench, string part) => bench.Client.Ask(
        "workspace/executeCommand",
        new JsonObject { ["command"] = "recipe.makePapers", ["arguments"] = new JsonArray(bench.Uri, part) });

    private static JsonArray Actions(Bench bench, string at, string? only)
    {
        var context = new JsonObject { ["diagnostics"] = new JsonArray() };
        if (only is not null)
        {
            context["only"] = new JsonArray(only);
        }

        return bench.Ask("textDocument/codeAction", ("range", bench.Range(at)), ("context", context))!.AsArray();
    }

    private static JsonObject Options() => new() { ["tabSize"] = 8, ["insertSpaces"] = false };
}
