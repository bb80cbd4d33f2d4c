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
        Assert.Equal("used my__cloth 1 m2 lot \"B\"", new RecordDraft("used my__cloth 1 m2 lot __").Fill(new Dictionary<int, ImmutableArray<string>> { [0] = ["B"] }));
    }

    [Fact]
    public void What_is_wrong_and_where_is_said_in_words_even_when_it_begins_with_a_figure()
    {
        var draft = new RecordDraft("defect __ at __ size __");
        Assert.Equal(
            "defect \"3 pinholes\" at \"2 o'clock, near the rim\" size 12 mm",
            draft.Fill(new Dictionary<int, ImmutableArray<string>> { [0] = ["3 pinholes", "2 o'clock, near the rim", "12 mm"] }));
    }

    [Fact]
    public void The_next_serial_is_behind_those_of_records_in_files_of_their_own()
    {
        using var shop = new Shop();
        var files = new PlainFiles();
        Assert.Equal(3, Next());
        shop.Save("build hatch-lid no 7 on 2026-05-30 {\n}\n", "hatch-lid-007.recipe");
        Assert.Equal(8, Next());
        Directory.CreateDirectory(shop.PathOf("records"));
        shop.Save("build hatch-lid no 10 {\n}\nbuild other-lid no 12 {\n}\nbuild hatch-lid {\n}\n", "records/of-may.recipe");
        Assert.Equal(11, Next());

        int Next()
        {
            Assert.True(new Workspace(files, Shop.Today).TryCompile(shop.PathOf("hatch-lid.recipe"), out var file));
            return RecordDraft.NextSerial(file, file.Parts[0], files);
        }
    }

    [Fact]
    public void Whatever_is_typed_into_every_blank_is_one_record_of_one_build()
    {
        using var shop = new Shop();
        var files = new PlainFiles();
        Assert.True(new Workspace(files, Shop.Today).TryCompile(shop.PathOf("hatch-lid.recipe"), out var file));
        var draft = RecordDraft.Of(file, file.Parts[0], RecordDraft.NextSerial(file, file.Parts[0], files), Shop.Today, Path.GetFileName);
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
