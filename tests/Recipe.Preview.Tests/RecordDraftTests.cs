using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Compiler.Previewing;

namespace Recipe.Preview.Tests;

/// <summary>What is typed at the bench becomes text of the language, whatever is typed.</summary>
public sealed class RecordDraftTests
{
    [Theory]
    [InlineData("19 degC", "room 19 degC")]
    [InlineData("", "room __")]
    [InlineData("   ", "room __")]
    [InlineData(" 19\n degC ", "room 19 degC")]
    [InlineData("about \"19\"", "room \"about \\\"19\\\"\"")]
    [InlineData("19 degC } part x {", "room \"19 degC } part x {\"")]
    [InlineData("a # b", "room \"a # b\"")]
    public void A_value_stays_a_value(string typed, string line) =>
        Assert.Equal($"{line}   # plan 20 degC", new RecordDraft("room __   # plan 20 degC").Fill(new Dictionary<int, ImmutableArray<string>> { [0] = [typed] }));

    [Fact]
    public void What_somebody_is_called_or_says_stands_in_quotes()
    {
        var draft = new RecordDraft("signed H1 by __ at __   # mould ready\nused x 1 g lot __");
        Assert.Equal(
            "signed H1 by \"K\" at 09:05   # mould ready\nused x 1 g lot \"E31\"",
            draft.Fill(new Dictionary<int, ImmutableArray<string>> { [0] = ["K", "09:05"], [1] = ["E31"] }));
        Assert.Equal(draft.Form, draft.Fill(new Dictionary<int, ImmutableArray<string>>()));
        Assert.Equal(draft.Form, draft.Fill(new Dictionary<int, ImmutableArray<string>> { [7] = ["nowhere"], [0] = [] }));
    }

    [Fact]
    public void Whatever_is_typed_into_every_blank_is_one_record_of_one_build()
    {
        using var shop = new Shop();
        var files = new PlainFiles();
        Assert.True(new Workspace(files, Shop.Today).TryCompile(shop.PathOf("hatch-lid.recipe"), out var file));
        var draft = RecordDraft.Of(file, file.Parts[0], RecordDraft.NextSerial(file, file.Parts[0]), Shop.Today, Path.GetFileName);
        var lines = draft.Form.Split('\n').Length;
        foreach (var typed in (string[])["}", "\"", "\\", "#", "x y z", "}\nbuild other no 1 on 2026-01-01 {", "9 } {", "\u202Eabc", "\u0000"])
        {
            var text = draft.Fill(Enumerable.Range(0, lines).ToDictionary(i => i, _ => Enumerable.Repeat(typed, 4).ToImmutableArray()));
            Assert.Equal(lines, text.Split('\n').Length);
            Assert.True(new Workspace(new TextOverlay(files, shop.PathOf("r.recipe"), text), Shop.Today).TryCompile(shop.PathOf("r.recipe"), out var record));
            Assert.Equal(3, Assert.Single(record.Builds).Record.Number);
        }
    }
}
