using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary><c>recipe record</c>, <c>history</c>, <c>learn</c>, <c>stock</c>: what happened at the bench, kept beside the recipe.</summary>
public sealed class RecordVerbTests : IDisposable
{
    private const string Lid = "hatch-lid.recipe";
    private readonly Bench _bench = new();

    public RecordVerbTests()
    {
        foreach (var name in (string[])[Lid, "shop.recipe"])
        {
            _bench.Write(name, File.ReadAllText(Repository.PathOf("samples/" + name)));
        }
    }

    public static TheoryData<string, string> Parts
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var file in Directory.GetFiles(Repository.PathOf("samples"), "*.recipe").Order(StringComparer.Ordinal))
            {
                foreach (Match part in Regex.Matches(File.ReadAllText(file), @"^(?:part|variant) (\S+)", RegexOptions.Multiline))
                {
                    data.Add(Path.GetFileName(file), part.Groups[1].Value);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_form_is_sound_before_a_blank_of_it_is_filled_in(string file, string part)
    {
        _bench.Write(file, File.ReadAllText(Repository.PathOf("samples/" + file)));
        Assert.Equal(0, Here("record", part, "--in", file, "--serial", "7", "--out", "records/seven.recipe").Status);
        Assert.Equal("1 file, 1 build record: nothing wrong found\n", Here("check", "records/seven.recipe").Out);
        Assert.Equal("", Here("fmt", "--check", "records/seven.recipe").Error);
        Assert.Contains("__", File.ReadAllText(_bench.PathOf("records/seven.recipe")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_form_is_printed_and_nothing_is_written_unless_a_file_is_named()
    {
        var before = Directory.GetFileSystemEntries(_bench.Folder).Length;
        var run = Here("record", "hatch-lid", "--serial", "4");
        Assert.Contains("build hatch-lid no 4 on 2026-06-01 {\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("use \"hatch-lid.recipe\"\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetFileSystemEntries(_bench.Folder).Length);
    }

    [Theory]
    [InlineData("is there already; a record is never written over", "hatch-lid", "--serial", "1", "--out", "hatch-lid.recipe")]
    [InlineData("has a part 'lid'; --in names the recipe", "lid", "--serial", "1")]
    [InlineData("a serial number is 0 or more", "hatch-lid", "--serial", "-1")]
    public void What_cannot_be_begun_is_said(string expected, params string[] args)
    {
        var text = File.ReadAllText(_bench.PathOf(Lid));
        var run = Here(["record", .. args]);
        Assert.Equal(2, run.Status);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(_bench.PathOf(Lid)));
    }

    [Fact]
    public void A_recipe_with_an_error_has_no_plan_to_keep()
    {
        _bench.Write(Lid, File.ReadAllText(_bench.PathOf(Lid)).Replace("trim      15 mm", "trim      15", StringComparison.Ordinal));
        var run = Here("record", "hatch-lid", "--in", Lid, "--serial", "1");
        Assert.Equal(2, run.Status);
        Assert.Contains("has errors, so there is no plan", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_record_beside_it_is_the_part_before()
    {
        Record(3, record => record);
        Record(6, record => record);
        Assert.Equal("1 file, 1 build record: nothing wrong found\n", Here("check", "records/003.recipe").Out);
        Assert.Contains("advice RC9108 serial-gap: there is no record of nos 4 to 5, between 3 and 6", Here("check", "records/006.recipe").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_of_a_recipe_that_has_moved_on_says_what_is_different()
    {
        Record(3, record => record);
        _bench.Write(Lid, File.ReadAllText(_bench.PathOf(Lid)).Replace("outer  ", "# a remark\n    outer  ", StringComparison.Ordinal));
        Assert.Equal("1 file, 1 build record: nothing wrong found\n", Here("check", "records").Out);
        _bench.Write(Lid, File.ReadAllText(_bench.PathOf(Lid)).Replace("draw        25 inHg", "draw        22 inHg", StringComparison.Ordinal).Replace("draw 25 inHg", "draw 22 inHg", StringComparison.Ordinal));
        Assert.Contains("RC9106 recipe-moved-on: the recipe has moved on since this record was begun: vacuum\n", Here("check", "records").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Remarks_layout_and_records_are_no_new_revision()
    {
        var first = Revision();
        _bench.Write(Lid, "# remark\n" + File.ReadAllText(_bench.PathOf(Lid)).Replace("  trim      15 mm", "  trim 15mm   # as ever", StringComparison.Ordinal) + "\nbuild hatch-lid no 9 { mass 130 g }\n");
        Assert.Equal(first, Revision());

        // What `fmt` writes in another way is layout too.
        _bench.Write(Lid, Untidy(File.ReadAllText(_bench.PathOf(Lid))));
        Assert.Equal(first, Revision());
        _bench.Write(Lid, File.ReadAllText(_bench.PathOf(Lid)).Replace("trim 15mm", "trim 16mm", StringComparison.Ordinal));
        Assert.NotEqual(first, Revision());

        static string Untidy(string text) => text.Replace("0/90", "0 / 90", StringComparison.Ordinal).Replace("+/-45", "\u00b1 45", StringComparison.Ordinal).Replace(" g +/- ", " g+/-", StringComparison.Ordinal);

        string Revision() => Regex.Match(Here("record", "hatch-lid", "--in", Lid, "--serial", "1").Out, "revision +\"([0-9a-f]{10})\"").Groups[1].Value;
    }

    [Fact]
    public void The_history_of_the_samples_is_told_with_its_chart()
    {
        var run = Bench.Run("history", "hatch-lid", "--in", Repository.PathOf("samples/hatch-lid.recipe"), Repository.PathOf("samples/records"));
        Assert.Equal(0, run.Status);
        Assert.StartsWith("hatch-lid: 10 built\n", run.Out, StringComparison.Ordinal);
        Assert.Matches(@"\n    5  2026-06-04  [0-9a-f]{10}  129.5 g +126 g +\+2.5 % +45.3 % +0.84 mm +9 mbar in 5 min +22 °C  DR +repair\n", run.Out);
        Assert.Contains("mean 130.2 g; while nothing changes it lies from", run.Out, StringComparison.Ordinal);
        Assert.Equal(10, Regex.Count(run.Out, @"^ +\d+  .*[oX].* 1\d\d\.\d g$", RegexOptions.Multiline));
        Assert.DoesNotContain("*", run.Out, StringComparison.Ordinal);
        foreach (var (format, expected) in (ReadOnlySpan<(string, string)>)[("md", "| 5 | 2026-06-04 |"), ("csv", "\r\n5,2026-06-04,0241dc5abe,K,"), ("html", "<svg "), ("svg", "<svg "), ("json", "\"recipe/history/1\"")])
        {
            Assert.Contains(expected, Bench.Run("history", "hatch-lid", "--in", Repository.PathOf("samples/hatch-lid.recipe"), Repository.PathOf("samples/records"), "--format", format).Out, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("resin", "%")]
    [InlineData("thickness", "mm")]
    [InlineData("leak", "mbar")]
    public void A_run_chart_is_drawn_of_other_figures_too(string chart, string unit)
    {
        string[] command = ["history", "hatch-lid", "--in", Repository.PathOf("samples/hatch-lid.recipe"), Repository.PathOf("samples/records"), "--chart", chart];
        Assert.Matches($@"\n  10  .*[oX].* [\d.]+ {unit}\n$", Bench.Run(command).Out);
        Assert.Contains($", {unit}</text>", Bench.Run([.. command, "--format", "svg"]).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_of_another_recipe_than_todays_is_marked_in_the_history()
    {
        Record(3, record => record.Replace("mass       __", "mass       131 g", StringComparison.Ordinal));
        _bench.Write(Lid, File.ReadAllText(_bench.PathOf(Lid)).Replace("trim      15 mm", "trim      20 mm", StringComparison.Ordinal));
        Assert.Matches(@"\n    3  2026-06-01  [0-9a-f]{10}\*  131.0 g", Here("history", "hatch-lid").Out);
    }

    [Fact]
    public void What_is_not_recorded_has_no_history()
    {
        Assert.Contains("there is no build record of 'rudder' here; there are some of hatch-lid", Here("history", "rudder").Error, StringComparison.Ordinal);
        _bench.Write(Lid, Regex.Replace(File.ReadAllText(_bench.PathOf(Lid)), @"^build [^}]*\}\n", "", RegexOptions.Multiline));
        Assert.Contains("`recipe record PART --serial N` begins one", Here("history", "hatch-lid").Error, StringComparison.Ordinal);
        Assert.Contains("`recipe record PART --serial N` begins one", Here("learn").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_learnt_is_shown_first_and_written_only_where_it_is_asked_for()
    {
        Directory.CreateDirectory(_bench.PathOf("records"));
        foreach (var file in Directory.GetFiles(Repository.PathOf("samples/records")))
        {
            File.Copy(file, _bench.PathOf("records/" + Path.GetFileName(file)));
        }

        var shop = File.ReadAllText(_bench.PathOf("shop.recipe"));
        var shown = Here("learn", "records");
        Assert.Matches(@"\n  pace of wetting out +8 +[\d.]+ min/m2 ", shown.Out);
        Assert.Contains("hatch-lid states resin-content 45 % by weight in its wet-out", shown.Out, StringComparison.Ordinal);
        Assert.Equal(shop, File.ReadAllText(_bench.PathOf("shop.recipe")));

        Assert.Equal(0, Here("learn", "records", "--write", "shop.recipe").Status);
        var written = File.ReadAllText(_bench.PathOf("shop.recipe"));
        Assert.Matches(@"\n  resin-pickup +polyester-peel-ply 45.1 g/m2 +source ""8 of our builds to 2026-07-09, 95 % of the next 40.1 to 50.1 g/m2""\n", written);
        Assert.Single(Regex.Matches(written, @"^  pace ", RegexOptions.Multiline));
        Assert.Contains("lot \"E31\"", written, StringComparison.Ordinal);
        Assert.Equal(0, Here("check", "shop.recipe", Lid).Status);
        Assert.Equal("", Here("fmt", "--check", "shop.recipe").Error);
        Here("learn", "records", "--write", "shop.recipe");
        Assert.Equal(written, File.ReadAllText(_bench.PathOf("shop.recipe")));
    }

    [Fact]
    public void Too_few_records_write_nothing()
    {
        var run = Here("learn", Lid, "--write", "shop2.recipe");
        Assert.Equal(2, run.Status);
        Assert.Contains("Nothing can be concluded yet.", run.Out, StringComparison.Ordinal);
        Assert.Contains("resin in glass-twill-280, bagged: 2 values", run.Out, StringComparison.Ordinal);
        Assert.False(File.Exists(_bench.PathOf("shop2.recipe")));
    }

    [Fact]
    public void The_shelf_is_what_was_counted_less_what_the_builds_took()
    {
        Record(3, record => record);
        Record(4, record => record);
        var lines = JsonNode.Parse(Here("stock", "--format", "json").Out)!["shelf"]!.AsArray();
        var twill = lines.Single(line => (string?)line!["material"] == "glass-twill-280")!;
        var each = Regex.Match(File.ReadAllText(_bench.PathOf("records/003.recipe")), @"used  glass-twill-280 ([\d.]+) m2").Groups[1].Value;
        Assert.Equal(15 - (2 * double.Parse(each, System.Globalization.CultureInfo.InvariantCulture)), (double)twill["left_si"]!, 1e-9);

        // A day of counting later than the builds: what they took is off already.
        _bench.Write("shop.recipe", File.ReadAllText(_bench.PathOf("shop.recipe")).Replace("lot \"G9\"", "lot \"G9\" counted 2026-06-02", StringComparison.Ordinal));
        lines = JsonNode.Parse(Here("stock", "--format", "json").Out)!["shelf"]!.AsArray();
        Assert.Equal(15, (double)lines.Single(line => (string?)line!["material"] == "glass-twill-280")!["left_si"]!, 1e-9);
    }

    [Fact]
    public void What_to_buy_is_what_the_next_parts_need_beyond_the_shelf()
    {
        var run = Here("stock", "--for", "hatch-lid", "--quantity", "40");
        Assert.Contains("\nFor hatch-lid, 40 of each\n", run.Out, StringComparison.Ordinal);
        var few = JsonNode.Parse(Here("stock", "--for", "hatch-lid", "--format", "json").Out)!["buy"]!.AsArray();
        var many = JsonNode.Parse(Here("stock", "--for", "hatch-lid", "--quantity", "40", "--format", "json").Out)!["buy"]!.AsArray();
        foreach (var (one, forty) in few.Zip(many))
        {
            Assert.Equal(40 * (double)one!["needed_si"]!, (double)forty!["needed_si"]!, 1e-9);
            Assert.Equal(Math.Max(0, (double)forty["needed_si"]! - ((double?)forty["in_stock_si"] ?? 0)), (double)forty["buy_si"]!, 1e-9);
        }

        Assert.Contains(many, line => (double)line!["buy_si"]! > 0 && (double?)line["in_stock_si"] > 0);
        Assert.Contains("there is no part 'lid' here", Here("stock", "--for", "lid").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_one_part_takes_from_the_shelf_is_said_once_and_for_that_part()
    {
        const string coat = "  coat      epoxy-surface-coat   300 g/m2\n";
        var once = Used();
        _bench.Write(Lid, File.ReadAllText(_bench.PathOf(Lid)).Replace(coat, coat + coat, StringComparison.Ordinal));
        _bench.Write("shop.recipe", File.ReadAllText(_bench.PathOf("shop.recipe")).Replace("\"G4\"", "\"G\\\"4\"", StringComparison.Ordinal));

        // Two coats of the same are two times one coat, to the tenth of a gram that is printed.
        Assert.Equal(2 * once, Used(), 0.11);
        Assert.Contains(@"lot ""G\""4""", Form(), StringComparison.Ordinal);

        // The takeoff's volume is that of all parts of the job.
        Assert.DoesNotContain(" mL)", Form(), StringComparison.Ordinal);

        double Used() => double.Parse(Regex.Match(Form(), @"used +epoxy-surface-coat ([\d.]+) g .*, resin").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        string Form() => Here("record", "hatch-lid", "--in", Lid, "--serial", "1").Out;
    }

    [Fact]
    public void What_parts_of_several_files_need_of_one_material_the_shelf_gives_once()
    {
        _bench.Write("other.recipe", File.ReadAllText(_bench.PathOf(Lid)).Replace("hatch-lid", "other-lid", StringComparison.Ordinal));
        double One(string key) => Buy("hatch-lid").Sum(line => (double)line[key]!);
        var both = Buy("hatch-lid", "--for", "other-lid");
        Assert.Equal(both.Count, both.Select(line => (string)line["label"]!).Distinct().Count());
        Assert.Equal(2 * One("needed_si"), both.Sum(line => (double)line["needed_si"]!), 1e-9);
        var resin = both.Single(line => ((string)line["label"]!).StartsWith("Laminating epoxy, slow, resin (", StringComparison.Ordinal));

        // 1.13 g/cm3 is the density of the book's resin.
        var volume = double.Parse(Regex.Match((string)resin["label"]!, @"\((\d+) mL\)").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal((double)resin["needed_si"]! / 1130 * 1e6, volume, 1.0);
        Assert.Equal(Math.Max(0, (double)resin["needed_si"]! - (double)resin["in_stock_si"]!), (double)resin["buy_si"]!, 1e-9);
        Assert.True((double)resin["buy_si"]! > 0);

        List<JsonNode> Buy(params string[] parts) => [.. JsonNode.Parse(Here(["stock", "--quantity", "25", "--format", "json", "--for", .. parts]).Out)!["buy"]!.AsArray().Select(line => line!)];
    }

    public void Dispose() => _bench.Dispose();

    private Outcome Here(params string[] args) => _bench.RunHere(args);

    private void Record(int serial, Func<string, string> fill)
    {
        var name = $"records/{serial:000}.recipe";
        Assert.Equal(0, Here("record", "hatch-lid", "--in", Lid, "--serial", serial.ToString(System.Globalization.CultureInfo.InvariantCulture), "--out", name).Status);
        _bench.Write(name, fill(File.ReadAllText(_bench.PathOf(name))));
    }
}
