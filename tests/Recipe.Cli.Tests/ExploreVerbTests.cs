using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Recipe.Cli.Tests;

/// <summary><c>recipe explore</c>: the front in every format, in shards, broken off and gone on with, and what is said when it cannot be.</summary>
public sealed class ExploreVerbTests : IDisposable
{
    private static readonly string Lighter = Bench.Sample("samples/hatch-lid-lighter.recipe");
    private static readonly Lazy<string> Json = new(() => Bench.Run("explore", Lighter, "--format", "json").Out);
    private readonly Bench _bench = new();

    public ExploreVerbTests()
    {
        foreach (var name in (string[])["hatch-lid", "shop", "hatch-lid-lighter"])
        {
            File.Copy(Bench.Sample($"samples/{name}.recipe"), _bench.PathOf($"{name}.recipe"));
        }
    }

    [Fact]
    public void It_says_what_became_of_the_candidates_and_where_the_recipe_stands()
    {
        var run = Bench.Run("explore", Lighter);
        Assert.Equal((ExitStatus.Clean, ""), (run.Status, run.Error));
        Assert.StartsWith("explore lighter-lid of hatch-lid\n  480 candidates: ", run.Out, StringComparison.Ordinal);
        Assert.Matches(@"\n    limit thickness +at-least 0.7 mm +broken by \d+\n", run.Out);
        Assert.Matches(@"\n  The front: \d+ candidates that no other beats in all that is wanted: least mass, most bending-along.\n", run.Out);
        Assert.Matches(@"\n  The recipe as written: mass, trimmed 126 g, bending stiffness along \S+ N·m²/m", run.Out);
        Assert.Matches(@"\n    mass, trimmed \d+ g \(-\d+ g, -\d+ %\), no \d+\n", run.Out);
    }

    [Fact]
    public void The_front_is_in_order_and_no_member_beats_another()
    {
        var front = Front();
        Assert.NotEmpty(front);
        Assert.Equal(front.OrderBy(member => member.Mass), front);
        Assert.All(front.Zip(front.Skip(1)), pair => Assert.True(pair.First.Mass <= pair.Second.Mass && pair.First.Bending <= pair.Second.Bending));
    }

    [Fact]
    public void Every_candidate_of_the_whole_list_is_on_the_front_or_beaten_or_broken()
    {
        var rows = Bench.Run("explore", Lighter, "--format", "csv", "--all").Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("candidate,fate,material of body,material of back,orientation of back,repeats of veil,repeats of inner,resin-content,trimmed_mass_kg,bending_along_N_m2_per_m,thickness_m,left_on_the_clock_s", rows[0]);
        Assert.Equal(481, rows.Length);
        var candidates = rows.Skip(1).Select(row => row.Split(',')).Select(cells => (No: Int(cells[0]), Fate: cells[1], Mass: Number(cells[8]), Bending: Number(cells[9]))).ToList();
        Assert.Equal(Enumerable.Range(0, 480), candidates.Select(candidate => candidate.No));
        var feasible = candidates.Where(candidate => candidate.Fate == "feasible").ToList();
        var members = Front().Select(member => member.No).ToHashSet();
        Assert.All(feasible, one => Assert.Equal(
            members.Contains(one.No), !feasible.Exists(other => other.Mass <= one.Mass && other.Bending >= one.Bending && (other.Mass < one.Mass || other.Bending > one.Bending))));
        Assert.All(candidates.Where(candidate => candidate.Fate == "breaks a limit"), candidate => Assert.True(Number(rows[candidate.No + 1].Split(',')[10]) < 0.0007));
    }

    [Fact]
    public void A_choice_says_of_its_candidates_what_compare_says_of_variants()
    {
        _bench.Write(
            "study.recipe",
            """
            use "shop.recipe"
            use "hatch-lid.recipe"

            explore bodies of hatch-lid {
              choose material body glass-twill-163 glass-twill-280 carbon-twill-200
              want least mass
              want most bending-along
              limit thickness at-most 9 mm
              limit resin at-most 9 kg
              limit pots at-most 99
              limit to-vacuum at-most 9 h
              limit clock-left at-least 0 h
              limit cure-end at-most 99 d
              limit hottest at-most 200 degC
              limit softens-at at-least 0 degC
              limit cost at-most 999 EUR
            }
            variant body-a of hatch-lid { plies { replace body glass-twill-163 +/-45 overlap 15 mm } }
            variant body-b of hatch-lid { plies { replace body glass-twill-280 +/-45 overlap 15 mm } }
            variant body-c of hatch-lid { plies { replace body carbon-twill-200 +/-45 overlap 15 mm } }
            """);
        var compared = JsonNode.Parse(_bench.RunHere("compare", "study.recipe", "body-a", "body-b", "body-c", "--format", "json").Out)!["parts"]!.AsArray();
        var rows = _bench.RunHere("explore", "study.recipe", "--format", "csv", "--all").Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var keys = rows[0].Split(',');
        for (var i = 0; i < 3; i++)
        {
            var cells = rows[i + 1].Split(',');
            for (var column = 3; column < keys.Length; column++)
            {
                var figure = compared[i]!["figures"]![keys[column]]!.GetValue<double>();
                Assert.Equal(figure, Number(cells[column]), (Math.Abs(figure) * 1e-8) + 1e-9);
            }
        }
    }

    [Theory]
    [InlineData("md", "# Exploration: Kayak hatch lid, lighter")]
    [InlineData("html", "<svg ")]
    [InlineData("csv", "candidate,fate,")]
    [InlineData("json", "\"schema\": \"recipe/exploration/1\"")]
    [InlineData("svg", "as written")]
    public void Each_format_goes_to_the_file_that_is_named_and_nothing_else_is_written(string format, string holds)
    {
        var before = Files();
        var run = _bench.RunHere("explore", "hatch-lid-lighter.recipe", "--format", format, "--out", "result");
        Assert.Equal((ExitStatus.Clean, "wrote result\n"), (run.Status, run.Out));
        Assert.Equal(before.Append("result").Order(StringComparer.Ordinal), Files());
        var text = File.ReadAllText(_bench.PathOf("result"));
        Assert.Contains(holds, text, StringComparison.Ordinal);
        Assert.Equal(text, _bench.RunHere("explore", "hatch-lid-lighter.recipe", "lighter-lid", "--format", format).Out);
        if (format is "html" or "svg")
        {
            Assert.NotNull(XDocument.Parse(text.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal)).Root);
        }
    }

    [Theory]
    [InlineData("1")]
    [InlineData("2")]
    [InlineData("7")]
    public void The_number_of_threads_changes_nothing(string threads) => Assert.Equal(Json.Value, Bench.Run("explore", Lighter, "--format", "json", "--threads", threads).Out);

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    public void Shards_put_together_are_one_run_to_the_byte(int of)
    {
        // Named so that they do not come in order.
        var names = Enumerable.Range(1, of).Select(i => $"shard-{i * 5 % 11}.json").ToArray();
        for (var i = 0; i < of; i++)
        {
            Assert.Equal($"wrote {names[i]}\n", _bench.RunHere("explore", "hatch-lid-lighter.recipe", "--shard", $"{i + 1}/{of}", "--out", names[i]).Out);
        }

        foreach (var format in (string[])["text", "md", "html", "csv", "json", "svg"])
        {
            Assert.Equal(
                _bench.RunHere("explore", "hatch-lid-lighter.recipe", "--format", format).Out,
                _bench.RunHere(["explore", "hatch-lid-lighter.recipe", "--format", format, "--merge", .. names]).Out);
        }
    }

    [Fact]
    public void Shards_that_do_not_belong_together_are_refused_with_the_reason()
    {
        Shard("1/2", "a.json");
        Shard("2/2", "b.json");
        Shard("1/3", "c.json");
        Refused("shard 2/2 is missing", "a.json");
        Refused("a.json and a.json are both shard 1/2", "a.json", "a.json");
        Refused("they are not of one run", "a.json", "c.json");
        Refused("hatch-lid-lighter.recipe is no shard file", "a.json", "hatch-lid-lighter.recipe");
        Refused("gone.json", "gone.json");
        Edit("b.json", "other.json", "\"study\": \"lighter-lid\"", "\"study\": \"heavier-lid\"");
        Refused("it is of the study heavier-lid, not of lighter-lid", "a.json", "other.json");
        Edit("b.json", "old.json", "\"program\": \"", "\"program\": \"0.");
        Refused("was made by version 0.", "a.json", "old.json");
        Edit("b.json", "day.json", "\"today\": \"2026-06-01\"", "\"today\": \"2026-06-02\"");
        Refused("checked for another day", "a.json", "day.json");
        Edit("b.json", "short.json", "\"next\": 480", "\"next\": 400");
        Refused("was broken off", "a.json", "short.json");
        Edit("b.json", "stretch.json", "\"from\": 240", "\"from\": 250");
        Refused("is not one of this study", "a.json", "stretch.json");
        File.AppendAllText(_bench.PathOf("shop.recipe"), "# a remark\n");
        Refused("of another recipe, or the recipe or a text that it uses has changed", "a.json", "b.json");

        void Shard(string shard, string name) => Assert.Equal(ExitStatus.Clean, _bench.RunHere("explore", "hatch-lid-lighter.recipe", "--shard", shard, "--out", name).Status);

        void Edit(string from, string to, string was, string now)
        {
            var text = File.ReadAllText(_bench.PathOf(from));
            Assert.Contains(was, text, StringComparison.Ordinal);
            _bench.Write(to, text.Replace(was, now, StringComparison.Ordinal));
        }

        void Refused(string reason, params string[] shards)
        {
            var run = _bench.RunHere(["explore", "hatch-lid-lighter.recipe", "--merge", .. shards]);
            Assert.Equal((ExitStatus.CouldNotRun, ""), (run.Status, run.Out));
            Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_run_that_is_broken_off_goes_on_and_ends_as_if_it_had_not_been()
    {
        Big();
        var whole = _bench.RunHere("explore", "big.recipe", "--format", "json").Out;
        var broken = BreakOff("--state", "state.json");
        Assert.Equal((ExitStatus.CouldNotRun, ""), (broken.Status, broken.Out));
        Assert.Contains("run it again with `--state state.json` to go on from candidate 2048 of 5760", broken.Error, StringComparison.Ordinal);
        Assert.Equal(2048, JsonNode.Parse(File.ReadAllText(_bench.PathOf("state.json")))!["next"]!.GetValue<long>());
        Assert.Equal(whole, _bench.RunHere("explore", "big.recipe", "--format", "json", "--state", "state.json").Out);

        // Once more: nothing is left to be looked at, and it says the same.
        Assert.Equal(whole, _bench.RunHere("explore", "big.recipe", "--format", "json", "--state", "state.json").Out);

        // The state of a whole run is its only shard.
        Assert.Equal(whole, _bench.RunHere("explore", "big.recipe", "--format", "json", "--merge", "state.json").Out);
        Assert.Contains("it is of shard 1/1, and 1/2 is wanted", _bench.RunHere("explore", "big.recipe", "--shard", "1/2", "--state", "state.json").Error, StringComparison.Ordinal);
        File.AppendAllText(_bench.PathOf("big.recipe"), "# a remark\n");
        Assert.Contains("state.json cannot be gone on with: it is of another recipe", _bench.RunHere("explore", "big.recipe", "--state", "state.json").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_state_nothing_is_kept_of_a_run_that_is_broken_off()
    {
        Big();
        var before = Files();
        Assert.Contains("nothing of it is kept; with --state FILE a run can go on", BreakOff("--out", "result").Error, StringComparison.Ordinal);
        Assert.Contains("what was written so far is not kept", BreakOff("--format", "csv", "--all", "--out", "result").Error, StringComparison.Ordinal);
        Assert.Equal(before, Files());
    }

    [Theory]
    [InlineData("hatch-lid-lighter.recipe", "lighter-lid", 40)]
    [InlineData("wide.recipe", "wide", 40)]
    public void A_candidate_written_as_a_variant_has_its_figures(string file, string study, int tries)
    {
        _bench.Write(
            "wide.recipe",
            """
            use "rudder-cheek.recipe"
            use "shop.recipe"

            explore wide of rudder-cheek {
              choose part rudder-cheek rudder-cheek-solid
              choose insert more carbon-twill-200 0/90 x2
              choose material more carbon-twill-200 glass-twill-163
              choose repeats more 1 3
              choose orientation more 0/90 +/-45
              choose resin infusion-epoxy slow-laminating-epoxy
              choose room 18 degC 24 degC
              want least mass
              want most bending-along
              limit thickness at-least 0 mm
            }
            """);
        File.Copy(Bench.Sample("samples/rudder-cheek.recipe"), _bench.PathOf("rudder-cheek.recipe"));
        _bench.RunHere("fmt", "wide.recipe");
        var rows = _bench.RunHere("explore", file, "--format", "csv", "--all").Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var keys = rows[0].Split(',');
        var random = new Random(7);
        var numbers = rows.Skip(1).Where(row => !row.Contains("same as another", StringComparison.Ordinal)).Select(row => Int(row.Split(',')[0])).OrderBy(_ => random.Next()).Take(tries).ToArray();
        var text = File.ReadAllText(_bench.PathOf(file)) + string.Concat(numbers.Select(number => "\n" + _bench.RunHere("explore", file, "--candidate", $"{number}").Out));
        _bench.Write("own.recipe", text);
        Assert.Equal(ExitStatus.Clean, _bench.RunHere("fmt", "--check", "own.recipe").Status);
        var compared = JsonNode.Parse(_bench.RunHere(["compare", "own.recipe", "--format", "json", .. numbers.Select(number => $"{study}-{number}")]).Out)!["parts"]!.AsArray();
        Assert.Equal(numbers.Length, compared.Count);
        foreach (var (number, part) in numbers.Zip(compared))
        {
            var cells = rows[number + 1].Split(',');
            foreach (var column in Enumerable.Range(0, keys.Length).Where(i => part!["figures"]!.AsObject().ContainsKey(keys[i])))
            {
                Assert.Equal(part!["figures"]![keys[column]]!.GetValue<double>(), Number(cells[column]), 1e-8 * Math.Max(1, Math.Abs(Number(cells[column]))));
            }
        }
    }

    [Fact]
    public void A_candidate_is_written_with_what_is_different_and_nothing_else() => Assert.Equal(
        """
        # Candidate 454 of `explore lighter-lid`.
        variant lighter-lid-454 of hatch-lid {
          plies {
            replace  body   carbon-twill-200   +/-45   overlap lap
            replace  back   carbon-twill-200   0/90
          }
          wet-out {
            resin-content  48 % by weight
          }
        }

        """.ReplaceLineEndings("\n"),
        Bench.Run("explore", Lighter, "--candidate", "454").Out);

    [Fact]
    public void A_candidate_with_an_open_error_is_kept_off_the_front()
    {
        // The hasty ones would be lighter, but are pulled after 12 h where their resin wants 24 h.
        _bench.Write(
            "study.recipe",
            """
            mould lid-mould {
              surface  flat 300 mm x 200 mm
              made-of  epoxy-glass-tooling
              release  { carnauba-wax coats 5 wait 30 min }
            }

            part lid {
              mould    lid-mould
              process  hand
              resin    slow-laminating-epoxy
              plies    { body glass-twill-280 0/90 x2 }
              cure     { hold 20 degC for 24 h }
            }
            """
            + "\n\nvariant hasty of lid {\n  plies { replace body glass-twill-163 0/90 x2 }\n  cure { hold 20 degC for 12 h }\n}\n\n"
            + "explore thin of lid {\n  choose part lid hasty\n  choose repeats body 1 2\n  want least mass\n  want most bending-along\n}\n");
        var json = JsonNode.Parse(_bench.RunHere("explore", "study.recipe", "--format", "json").Out)!;
        Assert.Equal([0, 1], json["front"]!.AsArray().Select(member => member!["candidate"]!.GetValue<int>()).Order());
        Assert.Equal([2, 3], json["kept_off_by_errors"]!.AsArray().Select(refused => refused!["candidate"]!["candidate"]!.GetValue<int>()));
        Assert.Equal("RC7007", json["kept_off_by_errors"]![0]!["errors"]![0]!.GetValue<string>());
        Assert.Contains("An error keeps off the front: no 2 (RC7007), 3 (RC7007).", _bench.RunHere("explore", "study.recipe").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_computed_is_counted_with_its_reason()
    {
        _bench.Write("own.recipe", File.ReadAllText(_bench.PathOf("hatch-lid-lighter.recipe"))
            .Replace("carbon-twill-200\n  choose  material        back", "unknown-cloth\n  choose  material        back", StringComparison.Ordinal)
            + "\nfabric unknown-cloth {\n  areal-weight 200 g/m2\n}\n");
        var run = _bench.RunHere("explore", "own.recipe");
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Matches(@"160 could not be computed", run.Out);
        Assert.Matches(@"\n    \S+: .*unknown-cloth.* 160 not computed\n", run.Out);
    }

    [Fact]
    public void A_text_that_is_not_understood_is_not_explored()
    {
        _bench.Write("own.recipe", File.ReadAllText(_bench.PathOf("hatch-lid-lighter.recipe")).Replace("repeats         veil ", "repeats         vale ", StringComparison.Ordinal));
        var run = _bench.RunHere("explore", "own.recipe");
        Assert.Equal(ExitStatus.Findings, run.Status);
        Assert.Contains("error RC1211 unknown-ply: There is no line `vale` in the ply list", run.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was explored", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("has no `explore`", "hatch-lid.recipe")]
    [InlineData("has no explore named heavier; it has lighter-lid", "hatch-lid-lighter.recipe", "heavier")]
    [InlineData("say --format csv too", "hatch-lid-lighter.recipe", "--all")]
    [InlineData("goes with neither --shard, --merge nor --state", "hatch-lid-lighter.recipe", "--all", "--format", "csv", "--shard", "1/2")]
    [InlineData("goes with neither --shard nor --state", "hatch-lid-lighter.recipe", "--merge", "a.json", "--shard", "1/2")]
    [InlineData("the formats are for --merge", "hatch-lid-lighter.recipe", "--shard", "1/2", "--format", "md")]
    [InlineData("two whole numbers such as 2/4", "hatch-lid-lighter.recipe", "--shard", "3/2")]
    [InlineData("two whole numbers such as 2/4", "hatch-lid-lighter.recipe", "--shard", "0/2")]
    [InlineData("a whole number from 1 to 1024", "hatch-lid-lighter.recipe", "--threads", "0")]
    [InlineData("has those from 0 to 479", "hatch-lid-lighter.recipe", "--candidate", "480")]
    [InlineData("goes with no format, shard or state", "hatch-lid-lighter.recipe", "--candidate", "4", "--format", "md")]
    [InlineData("no such file", "nowhere.recipe")]
    public void What_does_not_go_is_said(string message, params string[] words)
    {
        var run = _bench.RunHere(["explore", .. words]);
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains(message, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_several_one_must_be_named()
    {
        var text = File.ReadAllText(_bench.PathOf("hatch-lid-lighter.recipe"));
        _bench.Write("two.recipe", text + text[text.IndexOf("explore lighter-lid", StringComparison.Ordinal)..].Replace("lighter-lid", "other-lid", StringComparison.Ordinal));
        Assert.Contains("name one of lighter-lid, other-lid", _bench.RunHere("explore", "two.recipe").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void With_one_figure_there_is_a_front_and_no_picture()
    {
        _bench.Write("one.recipe", "use \"shop.recipe\"\nuse \"hatch-lid.recipe\"\nexplore one of hatch-lid {\n  choose repeats veil 0 1\n  want least mass\n}\n");
        Assert.Contains("The front: 1 candidate", _bench.RunHere("explore", "one.recipe").Out, StringComparison.Ordinal);
        Assert.Contains("there is no picture", _bench.RunHere("explore", "one.recipe", "--format", "svg").Error, StringComparison.Ordinal);
    }

    public void Dispose() => _bench.Dispose();

    private static List<(int No, double Mass, double Bending)> Front() =>
    [
        .. JsonNode.Parse(Json.Value)!["front"]!.AsArray().Select(member =>
            (member!["candidate"]!.GetValue<int>(), member["figures"]!["trimmed_mass_kg"]!.GetValue<double>(), member["figures"]!["bending_along_N_m2_per_m"]!.GetValue<double>())),
    ];

    private string[] Files() => [.. Directory.GetFiles(_bench.Folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    // More than one batch of candidates.
    private void Big() => _bench.Write(
        "big.recipe",
        Regex.Replace(File.ReadAllText(_bench.PathOf("hatch-lid-lighter.recipe")), "steps 5", "steps 60"));

    // The user breaks it off at once: the first batch is still looked at.
    private Outcome BreakOff(params string[] words)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var terminal = new Terminal(output, error, () => Stream.Null)
        {
            Today = new DateOnly(2026, 6, 1),
            OnInterrupt = stop =>
            {
                stop();
                return Stream.Null;
            },
        };
        return _bench.InFolder(() => new Outcome(CommandLine.Run(["explore", "big.recipe", .. words], terminal), output.ToString(), error.ToString()));
    }

    private static int Int(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
