using System.Text.RegularExpressions;
using CsCheck;
using Recipe.Documents.Tests.Plans;

namespace Recipe.Documents.Tests;

/// <summary>The Markdown papers keep their shape (CommonMark 0.31.2, tables of GitHub Flavored Markdown) whatever a name holds.</summary>
public sealed partial class MarkdownTests
{
    [Fact]
    public void Every_row_of_a_table_has_as_many_cells_as_its_heading()
    {
        foreach (var (name, input) in Cases.All)
        {
            foreach (var kind in Papers.All)
            {
                TablesAreWhole(Papers.Write(input, kind, PaperFormat.Markdown), name);
            }
        }
    }

    [Fact]
    public void No_name_can_leave_its_place()
    {
        var stations = Headings(Hostile.With("plain"));
        Gen.OneOf(Hostile.Words, Gen.String).Sample(
            text =>
            {
                var input = Hostile.With(text);
                foreach (var kind in Papers.All)
                {
                    var markdown = Papers.Write(input, kind, PaperFormat.Markdown);
                    TablesAreWhole(markdown, text);
                    Assert.DoesNotMatch(RawHtml(), markdown);
                    Assert.DoesNotMatch(Link(), markdown);
                    Assert.DoesNotContain('\r', markdown);
                }

                Assert.Equal(stations, Headings(input));
            },
            iter: 40);
    }

    [Fact]
    public void Numbers_and_units_stand_apart_by_ordinary_spaces()
    {
        foreach (var input in Cases.All.Values)
        {
            Assert.DoesNotContain('\u00A0', Papers.Write(input, Papers.Traveller, PaperFormat.Markdown));
        }
    }

    private static List<string> Headings(PaperInput input) =>
        [.. Papers.All.SelectMany(kind => Papers.Write(input, kind, PaperFormat.Markdown).Split('\n')).Where(line => line.StartsWith("## ", StringComparison.Ordinal))];

    private static void TablesAreWhole(string markdown, string about)
    {
        var columns = 0;
        foreach (var line in markdown.Split('\n'))
        {
            if (!line.StartsWith('|'))
            {
                columns = 0;
                continue;
            }

            var cells = UnescapedBar().Count(line) - 1;
            Assert.True(columns == 0 || columns == cells, $"{about}: {line}");
            columns = cells;
        }
    }

    [GeneratedRegex(@"(?<!\\)(?:\\\\)*\|")]
    private static partial Regex UnescapedBar();

    // An opening angle bracket without a backslash, outside code.
    [GeneratedRegex(@"(?m)^(?:[^`\n]|`[^`\n]*`)*?(?<!\\)(?:\\\\)*<")]
    private static partial Regex RawHtml();

    [GeneratedRegex(@"(?<!\\)(?:\\\\)*\](?:\(|\[)")]
    private static partial Regex Link();
}
