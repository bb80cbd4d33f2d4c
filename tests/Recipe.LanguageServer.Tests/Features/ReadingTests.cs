using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests.Features;

/// <summary>Features that show something and change nothing.</summary>
public sealed class ReadingTests
{
    [Fact]
    public void Hover_shows_a_material_with_its_place()
    {
        using var bench = new Bench();
        var hover = bench.Ask("textDocument/hover", ("position", bench.Place("glass-twill-280", 3)))!;
        Assert.Equal("markdown", (string?)hover["contents"]!["kind"]);
        Assert.Contains("280", (string?)hover["contents"]!["value"]);
        Assert.Equal("glass-twill-280", bench.Slice(hover["range"]!));
        Assert.Null(bench.Ask("textDocument/hover", ("position", new JsonObject { ["line"] = 3, ["character"] = 0 })));
    }

    [Fact]
    public void Hover_is_plain_for_a_plain_client()
    {
        using var bench = new Bench(capabilities: """{ "textDocument": { "hover": { "contentFormat": ["plaintext"] } } }""");
        Assert.Equal("plaintext", (string?)bench.Ask("textDocument/hover", ("position", bench.Place("glass-twill-280", 3)))!["contents"]!["kind"]);
    }

    [Fact]
    public void Completion_offers_materials_and_resolves_their_pages()
    {
        using var bench = new Bench();
        var list = bench.Ask("textDocument/completion", ("position", bench.Place("glass-plain-80", "glass-plain".Length)))!;
        Assert.Contains("glass-twill-280", list["items"]!.AsArray().Select(i => (string?)i!["label"]));
        var item = list["items"]!.AsArray().Single(i => (string?)i!["label"] == "glass-twill-280")!.AsObject();
        Assert.Equal("glass-twill-280", (string?)item["textEdit"]!["newText"]);
        Assert.Contains("280", (string?)item["detail"]);
        var resolved = bench.Client.Request("completionItem/resolve", item.DeepClone())!;
        Assert.Contains("280", (string?)resolved["documentation"]!["value"]);
        Assert.Equal((string?)item["label"], (string?)resolved["label"]);
    }

    [Fact]
    public void A_snippet_loses_its_places_for_a_client_that_knows_none()
    {
        const string empty = "language 1\n\n";
        using var rich = new Bench(empty);
        using var plain = new Bench(empty, "{}");
        var position = new JsonObject { ["line"] = 1, ["character"] = 0 };
        var snippet = rich.Ask("textDocument/completion", ("position", position.DeepClone()))!["items"]!.AsArray().First(i => (int?)i!["insertTextFormat"] == 2)!;
        Assert.Contains("$", (string?)snippet["textEdit"]!["newText"]);
        var bare = plain.Ask("textDocument/completion", ("position", position.DeepClone()))!["items"]!.AsArray().First(i => (string?)i!["label"] == (string?)snippet["label"])!;
        Assert.Null(bare["insertTextFormat"]);
        Assert.DoesNotContain("${", (string?)bare["textEdit"]!["newText"]);
    }

    [Fact]
    public void Help_with_a_line_marks_the_value_at_the_cursor()
    {
        using var bench = new Bench();
        var help = bench.Ask("textDocument/signatureHelp", ("position", bench.Place("draw        25 inHg", 12)))!;
        var signature = Assert.Single(help["signatures"]!.AsArray())!;
        var label = (string)signature["label"]!;
        Assert.Contains("draw", label);
        Assert.All(signature["parameters"]!.AsArray(), p => Assert.InRange((int)p!["label"]![1]!, (int)p["label"]![0]!, label.Length));
    }

    [Fact]
    public void Hints_stand_behind_the_lines_of_the_range_that_was_asked_for()
    {
        using var bench = new Bench();
        var all = bench.Ask("textDocument/inlayHint", ("range", bench.All))!.AsArray();
        var few = bench.Ask("textDocument/inlayHint", ("range", bench.Range("    body   glass-twill-280   +/-45   overlap lap\n")))!.AsArray();
        Assert.NotEmpty(few);
        Assert.True(few.Count < all.Count);
        Assert.All(few, hint => Assert.Equal((int)bench.Place("body   glass-twill-280")["line"]!, (int)hint!["position"]!["line"]!));
    }

    [Fact]
    public void Lenses_carry_commands_that_the_server_knows()
    {
        using var bench = new Bench();
        var lenses = bench.Ask("textDocument/codeLens")!.AsArray();
        Assert.Contains(lenses, lens => (string?)lens!["command"]!["command"] == "recipe.makePapers" && (string?)lens["command"]!["arguments"]![1] == "hatch-lid");
        Assert.All(lenses, lens => Assert.StartsWith("recipe.", (string?)lens!["command"]!["command"]));
        var numbers = lenses.First(lens => (string?)lens!["command"]!["command"] == "recipe.showNumbers")!["command"]!;
        var page = bench.Client.Request("workspace/executeCommand", new JsonObject { ["command"] = "recipe.showNumbers", ["arguments"] = numbers["arguments"]!.DeepClone() })!;
        Assert.Contains("hatch-lid", (string?)page[0]);
    }

    [Fact]
    public void Definition_goes_to_the_declaration_here_and_in_the_shop()
    {
        using var bench = new Bench();
        var mould = bench.Ask("textDocument/definition", ("position", bench.Place("mould     hatch-lid-mould", 12)))!;
        Assert.Equal(bench.Uri, (string?)mould["uri"]);
        Assert.Equal("hatch-lid-mould", bench.Slice(mould["range"]!));
        Assert.Null(bench.Ask("textDocument/definition", ("position", bench.Place("glass-twill-280", 2))));
        var resin = bench.Ask("textDocument/definition", ("position", bench.Place("slow-laminating-epoxy", 2)));
        Assert.True(resin is null || (string?)resin["uri"] == bench.Files.UriOf("shop.recipe"));
    }

    [Fact]
    public void Definition_of_what_the_book_declares_is_a_copy_that_cannot_be_changed()
    {
        using var cache = new SampleFolder();
        using var bench = new Bench(bookFolder: cache.PathOf("book"));
        var place = bench.Ask("textDocument/definition", ("position", bench.Place("glass-twill-280", 2)))!;
        var path = new Uri((string)place["uri"]!).LocalPath;
        var lines = File.ReadAllLines(path);
        var (line, from, to) = ((int)place["range"]!["start"]!["line"]!, (int)place["range"]!["start"]!["character"]!, (int)place["range"]!["end"]!["character"]!);

        Assert.StartsWith(cache.PathOf("book"), path, StringComparison.Ordinal);
        Assert.Equal("glass-twill-280", lines[line][from..to]);
        Assert.True(File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly));

        // The copy is a recipe like any other, and nothing is wrong with it.
        bench.Client.Open((string)place["uri"]!, File.ReadAllText(path));
        Assert.Empty(bench.Client.Diagnostics((string)place["uri"]!, 1));
        File.SetAttributes(path, FileAttributes.Normal);
    }

    [Fact]
    public void Without_a_cache_the_book_has_no_place_to_go_to()
    {
        using var bench = new Bench();
        Assert.Null(bench.Ask("textDocument/definition", ("position", bench.Place("glass-twill-280", 2))));
    }

    [Fact]
    public void References_and_highlights_find_each_use()
    {
        using var bench = new Bench();
        var place = bench.Place("let lap", 4);
        var with = bench.Ask("textDocument/references", ("position", place.DeepClone()), ("context", new JsonObject { ["includeDeclaration"] = true }))!.AsArray();
        var without = bench.Ask("textDocument/references", ("position", place.DeepClone()), ("context", new JsonObject { ["includeDeclaration"] = false }))!.AsArray();
        Assert.Equal(2, with.Count);
        Assert.Single(without);
        Assert.All(with, location => Assert.Equal("lap", bench.Slice(location!["range"]!)));
        var highlights = bench.Ask("textDocument/documentHighlight", ("position", place.DeepClone()))!.AsArray();
        Assert.Equal([3, 2], highlights.Select(h => (int)h!["kind"]!));
    }

    [Fact]
    public void The_outline_is_nested_or_flat_as_the_client_can()
    {
        using var bench = new Bench();
        var part = bench.Ask("textDocument/documentSymbol")!.AsArray().First(s => (string?)s!["name"] == "hatch-lid")!;
        Assert.Contains("plies", part["children"]!.AsArray().Select(child => (string?)child!["name"]));
        using var simple = new Bench(capabilities: "{}");
        var flat = simple.Ask("textDocument/documentSymbol")!.AsArray();
        Assert.Contains(flat, s => (string?)s!["name"] == "plies" && (string?)s["containerName"] == "hatch-lid" && (string?)s["location"]!["uri"] == simple.Uri);
    }

    [Fact]
    public void Symbols_of_the_workspace_are_found_by_some_of_their_letters()
    {
        using var bench = new Bench();
        var found = bench.Client.Request("workspace/symbol", """{ "query": "HLMOULD" }""")!.AsArray();
        Assert.Equal("hatch-lid-mould", (string?)Assert.Single(found)!["name"]);
    }

    [Fact]
    public void Blocks_fold_so_that_the_closing_brace_stays()
    {
        using var bench = new Bench();
        var line = (int)bench.Place("plies {")["line"]!;
        var fold = Assert.Single(bench.Ask("textDocument/foldingRange")!.AsArray(), f => (int)f!["startLine"]! == line)!;
        Assert.Equal((int)bench.Place("  }\n\n  wet-out")["line"]! - 1, (int)fold["endLine"]!);
    }

    [Fact]
    public void A_selection_grows_from_the_word_to_the_file()
    {
        using var bench = new Bench();
        var selection = bench.Ask("textDocument/selectionRange", ("positions", new JsonArray(bench.Place("glass-twill-280", 3))))![0]!;
        Assert.Equal("glass-twill-280", bench.Slice(selection["range"]!));
        var last = selection;
        while (last["parent"] is { } parent)
        {
            Assert.Contains(bench.Slice(last["range"]!), bench.Slice(parent["range"]!));
            last = parent;
        }

        Assert.Equal(bench.Text.TrimEnd(), bench.Slice(last["range"]!).TrimEnd());
    }

    [Fact]
    public void A_use_line_leads_to_its_file()
    {
        using var bench = new Bench();
        var link = Assert.Single(bench.Ask("textDocument/documentLink")!.AsArray())!;
        Assert.Equal("\"shop.recipe\"", bench.Slice(link["range"]!));
        Assert.Equal(bench.Files.PathOf("shop.recipe"), new Uri((string)link["target"]!).LocalPath);
    }
}
