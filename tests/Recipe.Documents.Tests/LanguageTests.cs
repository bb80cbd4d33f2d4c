using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Files;
using Recipe.Documents.Tests.Plans;
using Recipe.Documents.Writing.Pdf;

namespace Recipe.Documents.Tests;

/// <summary>Translations: well formed, whole, with the same values in each sentence, and a paper that says as much as the English one.</summary>
public sealed partial class LanguageTests
{
    public static TheoryData<string> Translations => [.. Wordings.Tags.Where(tag => tag != "en")];

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_translation_puts_every_value_of_a_sentence_into_it(string tag)
    {
        var sentences = PoFile.Read(Wordings.Text(tag));
        Assert.NotEmpty(sentences);
        Assert.All(sentences, pair => Assert.Equal(Holes(pair.Key), Holes(pair.Value)));
        Assert.All(sentences, pair => Assert.Equal(pair.Key.EndsWith('.'), pair.Value.EndsWith('.')));
        Assert.All(sentences, pair => Assert.Equal(pair.Key.Count(c => c == '\u00A0'), pair.Value.Count(c => c == '\u00A0')));
    }

    [Theory]
    [MemberData(nameof(Translations))]
    public void The_traveller_of_every_case_asks_for_no_sentence_that_a_translation_lacks(string tag)
    {
        var lacking = new ConcurrentDictionary<string, bool>(StringComparer.Ordinal);
        var asked = 0;
        foreach (var input in Cases.All.Values)
        {
            var wording = new Wording(tag, PoFile.Read(Wordings.Text(tag)), (key, isThere) =>
            {
                asked++;
                _ = isThere || lacking.TryAdd(key, true);
            });
            foreach (var one in new[] { input, input with { Serial = "7", Revision = "abc", Printed = new DateOnly(2026, 3, 4) }, input with { Revision = null } })
            {
                var document = Papers.Traveller.Build(one with { Wording = wording });
                _ = Papers.Write(document, PaperFormat.Html);
                _ = Papers.Write(document, PaperFormat.Markdown);
                _ = PdfWriter.Write([document]);
            }
        }

        Assert.True(asked > 1000);
        Assert.Empty(lacking.Keys);
    }

    // Cases do not come to every branch.
    [Theory]
    [MemberData(nameof(Translations))]
    public void What_the_code_of_the_traveller_and_of_the_writers_can_say_is_translated(string tag)
    {
        var sentences = PoFile.Read(Wordings.Text(tag));
        var said = new[] { "Travellers", "Shared", "Writing", "Layout" }.SelectMany(Sentences.In).ToHashSet(StringComparer.Ordinal);
        Assert.True(said.Count > 150);
        Assert.Empty(said.Except(sentences.Keys));
    }

    [Theory]
    [MemberData(nameof(Translations))]
    public void No_translation_is_of_a_sentence_that_nobody_says(string tag) =>
        Assert.Empty(PoFile.Read(Wordings.Text(tag)).Keys.Except(Sentences.In()));

    [Fact]
    public void Sentences_are_found_in_code() => Assert.Equal(
        ["Pour.", "{0} of\u00A0{1}: \"{2}\""],
        Sentences.Of("""x.Say("Pour."); y.SayPhrase($"{(a ? "{" : $"}}{b}")} of\u00A0{c.Of(d => { return e; })}: \"{f}\"");"""));

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_translated_traveller_has_every_station_table_row_and_space_of_the_English_one(string tag)
    {
        foreach (var input in Cases.All.Values)
        {
            var (english, other) = (Papers.Traveller.Build(input), Papers.Traveller.Build(input with { Language = tag }));
            Assert.Equal(Shape(english), Shape(other));
            Assert.NotEqual(Texts.Of(english), Texts.Of(other));
        }
    }

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_page_names_its_language(string tag)
    {
        var input = HatchLid.Input with { Language = tag };
        Assert.Equal(tag, XDocument.Parse(Papers.Write(input, Papers.Traveller, PaperFormat.Html)).Root!.Attribute("lang")!.Value);
        Assert.Equal("en-GB", XDocument.Parse(Papers.Write(input, Papers.Bag, PaperFormat.Html)).Root!.Attribute("lang")!.Value);
    }

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_paper_that_is_not_translated_is_English_from_top_to_bottom(string tag)
    {
        foreach (var (name, kind, format) in Cases.Papers.Where(paper => !paper.Kind.Languages.Contains(tag)))
        {
            Assert.Equal(Papers.Write(Cases.All[name], kind, format), Papers.Write(Cases.All[name] with { Language = tag }, kind, format));
        }
    }

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_plan_for_programs_does_not_depend_on_the_language(string tag) =>
        Assert.Equal(PlanJson.Write(HatchLid.Input), PlanJson.Write(HatchLid.Input with { Language = tag }));

    [Fact]
    public void The_German_traveller_is_the_kept_one() =>
        Golden.Check(GoldenTests.GermanFile, Papers.Write(HatchLid.Input with { Language = "de" }, Papers.Traveller, PaperFormat.Markdown));

    [Fact]
    public void A_sentence_is_its_own_key_with_holes_for_values()
    {
        var german = new Wording("de", PoFile.Read("msgid \"Pour {0} into {1}.\"\nmsgstr \"Gib in {1} \"\n\"{0}.\"\n"));
        var (grams, cup) = ("118.0\u00A0g", "{0}");
        Assert.Equal("Gib in {0} 118.0\u00A0g.", german.Say($"Pour {grams} into {cup}."));
        Assert.Equal("Pour 118.0\u00A0g out of {0}.", german.Say($"Pour {grams} out of {cup}."));
    }

    [Theory]
    [InlineData("msgid \"a\"\nmsgstr \"b\"\n\nmsgid \"a\"\nmsgstr \"c\"\n", "Line 6")]
    [InlineData("msgid a\n", "Line 1")]
    [InlineData("hello\n", "Line 1")]
    public void What_is_no_translation_is_said_with_its_line(string text, string where) =>
        Assert.StartsWith(where, Assert.Throws<FormatException>(() => PoFile.Read(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void Empty_and_fuzzy_entries_translate_nothing() =>
        Assert.Equal(["c"], PoFile.Read("msgid \"a\"\nmsgstr \"\"\n\n#, fuzzy\nmsgid \"b\"\nmsgstr \"x\"\n\nmsgid \"c\"\nmsgstr \"y\"\n").Keys);

    // What each station holds, without its words.
    private static IEnumerable<string> Shape(Document document) => document.Stations.Select(station => string.Join(' ', station.Blocks.Select(Shape)));

    private static string Shape(Block block) => block switch
    {
        Facts facts => $"facts {facts.Items.Count(fact => fact.Blank is not null)}/{facts.Items.Length}",
        KeyNumbers numbers => $"numbers {numbers.Items.Count(number => number.Blank is not null)}/{numbers.Items.Count(number => number.Alarm)}/{numbers.Items.Length}",
        HoldPoint hold => $"{hold.Id} {hold.Checks.Length}/{hold.Blanks(Wording.English).Length}",
        Caution caution => $"caution {caution.Lines.Length}",
        IfBox box => $"if {box.Lines.Length}",
        BulletList list => $"bullets {list.Items.Length}",
        TickList list => $"ticks {list.Items.Length}",
        Table table => $"table {table.Columns.Length} {string.Join(',', table.Rows.Select(row => row is CellRow cells ? string.Concat(cells.Cells.Select(Shape)) : "-"))}",
        _ => block.GetType().Name,
    };

    private static string Shape(Cell cell) => cell switch
    {
        BlankCell blank => $"[{blank.Blank.Unit}]",
        TickCell ticks => $"x{ticks.Boxes.Length}",
        BigCell big => $"big{big.Note is null}",
        TextCell text => $"text{text.Text.IsEmpty}{text.Note is null}",
        _ => cell.GetType().Name,
    };

    private static IEnumerable<string> Holes(string sentence) => Hole().Matches(sentence).Select(hole => hole.Value).Distinct().Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Hole();
}
