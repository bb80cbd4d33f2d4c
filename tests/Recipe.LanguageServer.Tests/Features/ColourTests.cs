using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests.Features;

public sealed class ColourTests
{
    [Fact]
    public void The_numbers_cover_the_words_of_the_text()
    {
        using var bench = new Bench();
        var words = Words(bench, bench.Ask("textDocument/semanticTokens/full")!["data"]!.AsArray());
        Assert.Contains(("glass-twill-280", 3), words);
        Assert.Contains(("part", 0), words);
        Assert.DoesNotContain(words, word => word.Text.Contains('\n') || word.Text.Length == 0);
    }

    [Fact]
    public void A_range_gets_its_own_colours_only()
    {
        using var bench = new Bench();
        var line = "body   glass-twill-280   +/-45   overlap lap";
        var words = Words(bench, bench.Ask("textDocument/semanticTokens/range", ("range", bench.Range(line)))!["data"]!.AsArray());
        Assert.NotEmpty(words);
        Assert.All(words, word => Assert.Contains(word.Text, line));
    }

    [Fact]
    public void A_difference_leads_from_the_last_colours_to_the_present_ones()
    {
        using var bench = new Bench();
        var before = bench.Ask("textDocument/semanticTokens/full")!;
        bench.Client.Change(bench.Uri, 2, new JsonObject { ["range"] = bench.Range("carbon-veil-8     random"), ["text"] = "glass-plain-80 0/90 overlap 3 mm" });
        var delta = bench.Ask("textDocument/semanticTokens/full/delta", ("previousResultId", (string)before["resultId"]!))!;
        var edit = Assert.Single(delta["edits"]!.AsArray())!;
        var data = before["data"]!.AsArray().Select(n => (int)n!).ToList();
        data.RemoveRange((int)edit["start"]!, (int)edit["deleteCount"]!);
        data.InsertRange((int)edit["start"]!, edit["data"]!.AsArray().Select(n => (int)n!));
        var now = bench.Ask("textDocument/semanticTokens/full")!["data"]!.AsArray().Select(n => (int)n!);
        Assert.Equal(now, data);
        Assert.True(edit["data"]!.AsArray().Count < data.Count / 2);
    }

    [Fact]
    public void Without_a_change_there_is_no_difference_and_an_unknown_id_gets_all()
    {
        using var bench = new Bench();
        var full = bench.Ask("textDocument/semanticTokens/full")!;
        var same = bench.Ask("textDocument/semanticTokens/full/delta", ("previousResultId", (string)full["resultId"]!))!;
        Assert.Empty(same["edits"]!.AsArray());
        var all = bench.Ask("textDocument/semanticTokens/full/delta", ("previousResultId", "unknown"))!;
        Assert.Equal(full["data"]!.ToJsonString(), all["data"]!.ToJsonString());
    }

    private static List<(string Text, int Type)> Words(Bench bench, JsonArray data)
    {
        var lines = bench.Text.Split('\n');
        var words = new List<(string, int)>();
        var (line, column) = (0, 0);
        for (var i = 0; i < data.Count; i += 5)
        {
            line += (int)data[i]!;
            column = (int)data[i]! == 0 ? column + (int)data[i + 1]! : (int)data[i + 1]!;
            words.Add((lines[line].Substring(column, (int)data[i + 2]!), (int)data[i + 3]!));
        }

        return words;
    }
}
