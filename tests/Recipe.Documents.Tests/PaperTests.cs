using System.Globalization;
using Recipe.Documents.Tests.Plans;

namespace Recipe.Documents.Tests;

/// <summary>What holds for every paper in every format.</summary>
public sealed class PaperTests
{
    private static readonly IEnumerable<(PaperKind Kind, PaperFormat Format)> Written =
        from kind in Papers.All from format in kind.Formats select (kind, format);

    // A card at the bench is one page: it names what its numbers rest on, and the cover lists it.
    private static readonly IEnumerable<(PaperKind Kind, PaperFormat Format)> Complete =
        Written.Where(paper => paper.Kind == Papers.Traveller || paper.Kind == Papers.Cover);

    [Fact]
    public void The_same_input_gives_the_same_bytes()
    {
        foreach (var (name, kind, format) in Cases.Papers)
        {
            Assert.Equal(Papers.Write(Cases.All[name], kind, format), Papers.Write(Cases.All[name], kind, format));
        }
    }

    [Fact]
    public void Papers_written_side_by_side_are_those_written_one_after_the_other()
    {
        var formats = Enum.GetValues<PaperFormat>().ToHashSet();
        foreach (var input in Cases.All.Values)
        {
            var expected = PaperSet.Write(input, Papers.All, formats);
            var files = PaperSet.Write(input, Papers.All, formats, sideBySide: true);
            Assert.NotEmpty(expected);
            Assert.Equal(expected.Select(file => file.FileName), files.Select(file => file.FileName));
            Assert.All(expected.Zip(files), pair => Assert.Equal(pair.First.Bytes.ToArray(), pair.Second.Bytes.ToArray()));
        }
    }

    [Fact]
    public void The_country_of_the_machine_changes_nothing()
    {
        // Every habit that a country may have at once; the tests run where no culture but the invariant one is installed.
        var elsewhere = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (elsewhere.NumberFormat.NumberDecimalSeparator, elsewhere.NumberFormat.NumberGroupSeparator) = (",", ".");
        (elsewhere.NumberFormat.NegativeSign, elsewhere.NumberFormat.PositiveSign) = ("\u2212", "plus ");
        (elsewhere.NumberFormat.PercentSymbol, elsewhere.NumberFormat.NaNSymbol) = ("per cent", "no number");
        (elsewhere.DateTimeFormat.DateSeparator, elsewhere.DateTimeFormat.TimeSeparator) = (".", "h");
        elsewhere.DateTimeFormat.ShortDatePattern = "d.M.yy";
        var expected = Cases.Papers.Select(paper => Papers.Write(Cases.All[paper.Case], paper.Kind, paper.Format)).ToList();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = elsewhere;
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            Assert.Equal(expected, Cases.Papers.Select(paper => Papers.Write(Cases.All[paper.Case], paper.Kind, paper.Format)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void The_cover_lists_every_assumption_with_its_value_and_its_source()
    {
        foreach (var input in (PaperInput[])[HatchLid.Input, RudderHalves.Input])
        {
            foreach (var (kind, format) in Complete.Where(paper => paper.Kind == Papers.Cover))
            {
                var paper = Reading(Papers.Write(input, kind, format), format);
                foreach (var assumption in input.Plan.Assumptions)
                {
                    var isSet = format is PaperFormat.Markdown or PaperFormat.Html;
                    foreach (var text in (string[])
                    [
                        isSet ? Quantities.WrittenText.InTitle(assumption.What) : assumption.What,
                        isSet ? Quantities.WrittenText.ForReading(assumption.Value) : assumption.Value,
                        isSet ? Quantities.WrittenText.InTitle(assumption.Source) : assumption.Source,
                    ])
                    {
                        Assert.Contains(Reading(text, PaperFormat.Markdown), paper, StringComparison.Ordinal);
                    }
                }
            }
        }
    }

    // The names of the records that hold a surface are for programmers.
    [Fact]
    public void Every_form_of_surface_has_a_word_of_the_trade()
    {
        var shapes = typeof(Model.SurfaceShape).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Model.SurfaceShape)) && !type.IsAbstract).ToList();
        Assert.True(shapes.Count >= 12);
        Assert.All(shapes, type =>
        {
            var shape = (Model.SurfaceShape)System.Runtime.CompilerServices.RuntimeHelpers.GetUninitializedObject(type);
            Assert.DoesNotContain("Shape", Shared.Words.Of(shape), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void The_takeoff_lists_what_its_own_figures_rest_on_with_value_and_source()
    {
        var seen = 0;
        foreach (var input in (PaperInput[])[HatchLid.Input, RudderHalves.Input])
        {
            var keys = input.Plan.Takeoff.SelectMany(line => (string[])[.. line.Net.RestsOn, .. line.Waste.RestsOn, .. line.Gross.RestsOn]).ToHashSet(StringComparer.Ordinal);
            var page = Reading(Papers.Write(input, Papers.Takeoff, PaperFormat.Markdown), PaperFormat.Markdown);
            foreach (var assumption in input.Plan.Assumptions.Where(assumption => keys.Contains(assumption.Key)))
            {
                Assert.Contains(Reading(Quantities.WrittenText.ForReading(assumption.Value), PaperFormat.Markdown), page, StringComparison.Ordinal);
                Assert.Contains(Reading(Quantities.WrittenText.InTitle(assumption.Source), PaperFormat.Markdown), page, StringComparison.Ordinal);
                seen++;
            }
        }

        Assert.True(seen > 0);
    }

    [Fact]
    public void The_cover_says_of_every_assumption_what_to_write_to_replace_it()
    {
        var plan = HatchLid.Input.Plan;
        Planning.Assumption Of(string word) => new(
            $"book.film.{word}", $"{word} of Film, thin", "60 degC", "data sheet", $"declare `bag-film my-film like film {{ {word} ...   source \"data sheet\" }}` and name that");
        var input = HatchLid.Input with { Plan = plan with { Assumptions = [Of("heat-limit"), Of("resin-pickup"), Of("density"), Of("bleed"), new("default.trim", "plies run past the trim line by", "15 mm", "common practice", "write `trim 15 mm` in the part")] } };
        var page = Papers.Write(input, Papers.Cover, PaperFormat.Markdown);
        Assert.Equal(2, page.Split("`bag-film my-film like film { FIGURE ...   source \"data sheet\" }`").Length);
        Assert.Contains("`trim 15 mm`", page, StringComparison.Ordinal);
        Assert.Contains("| A1 | heat-limit of Film, thin | 60 °C | data sheet |", page, StringComparison.Ordinal);
    }

    [Fact]
    public void An_assumption_that_a_card_names_is_one_of_the_list()
    {
        foreach (var (name, input) in Cases.All)
        {
            foreach (var kind in Papers.All.Where(kind => kind.AppliesTo(input)))
            {
                var named = System.Text.RegularExpressions.Regex.Matches(Papers.Write(input, kind, PaperFormat.Markdown), @"rests on ((?:A\d+(?:, )?)+)")
                    .SelectMany(match => match.Groups[1].Value.Split(", ", StringSplitOptions.RemoveEmptyEntries));
                Assert.All(named, id => Assert.InRange(int.Parse(id[1..], CultureInfo.InvariantCulture), 1, Math.Max(1, input.Plan.Assumptions.Length)));
                Assert.False(input.Plan.Assumptions.IsEmpty && named.Any(), name);
            }
        }
    }

    [Fact]
    public void Traveller_and_cover_list_waivers_open_findings_gaps_and_what_nobody_checked()
    {
        foreach (var input in (PaperInput[])[HatchLid.Input, RudderHalves.Input])
        {
            foreach (var (kind, format) in Complete)
            {
                var paper = Reading(Papers.Write(input, kind, format), format);
                Assert.All(input.Plan.Part.Waivers.Where(waiver => waiver.Because is not null), waiver => Assert.Contains(Reading(waiver.Because!, PaperFormat.Markdown), paper, StringComparison.Ordinal));
                Assert.All(input.Findings, finding => Assert.Contains(finding.Descriptor.Code, paper, StringComparison.Ordinal));
                Assert.All(input.Plan.Gaps, gap => Assert.Contains(Reading(gap.Missing, PaperFormat.Markdown), paper, StringComparison.Ordinal));
                Assert.All(input.NotChecked, check => Assert.Contains(Reading(check.Missing, PaperFormat.Markdown), paper, StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void A_paper_ends_with_one_line_end_and_holds_no_carriage_return_but_in_csv()
    {
        foreach (var (name, kind, format) in Cases.Papers)
        {
            var paper = Papers.Write(Cases.All[name], kind, format);
            Assert.EndsWith("\n", paper, StringComparison.Ordinal);
            Assert.False(paper.EndsWith("\n\n", StringComparison.Ordinal));
            Assert.Equal(format == PaperFormat.Csv, paper.Contains('\r', StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_paper_that_has_no_table_refuses_to_be_one()
    {
        Assert.Throws<ArgumentException>(() => Papers.Write(HatchLid.Input, Papers.Traveller, PaperFormat.Csv));
    }

    [Fact]
    public void A_file_name_holds_nothing_that_a_file_system_refuses()
    {
        Assert.Equal("hatch-lid.traveller.html", Papers.Traveller.FileName("hatch-lid", PaperFormat.Html));
        Assert.Equal("a-b--c-.takeoff.csv", Papers.Takeoff.FileName("a/b:?c\u00e9", PaperFormat.Csv));
        Assert.Equal("part.takeoff.md", Papers.Takeoff.FileName("", PaperFormat.Markdown));
    }

    [Fact]
    public void A_plan_that_holds_nothing_still_gives_every_paper()
    {
        foreach (var process in Enum.GetValues<Model.Process>())
        {
            foreach (var (kind, format) in Written)
            {
                Assert.NotEmpty(Papers.Write(Bare.Of(process), kind, format));
                Assert.True(kind.AppliesTo(Bare.Of(process)) || process is Model.Process.Hand or Model.Process.Prepreg || kind == Papers.ChangeNote || kind == Papers.Shape);
            }
        }
    }

    // The text without what a format adds to it: escapes, blanks of other kinds.
    private static string Reading(string paper, PaperFormat format)
    {
        var text = format == PaperFormat.Html ? System.Net.WebUtility.HtmlDecode(System.Text.RegularExpressions.Regex.Replace(paper, "<[^>]*>", "")) : paper;
        return text.Replace("\\", "", StringComparison.Ordinal).Replace("`", "", StringComparison.Ordinal).Replace("\"\"", "\"", StringComparison.Ordinal)
            .Replace("u0022", "\"", StringComparison.Ordinal).Replace("u0027", "'", StringComparison.Ordinal).Replace("u002B", "+", StringComparison.Ordinal).Replace('\u00A0', ' ')
            .Replace("&quot;", "\"", StringComparison.Ordinal);
    }
}
