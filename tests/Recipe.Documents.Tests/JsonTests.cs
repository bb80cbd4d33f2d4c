using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using CsCheck;
using Recipe.Documents.Tests.Plans;
using Recipe.Text.Units;

namespace Recipe.Documents.Tests;

/// <summary>The JSON of a plan: it can be read, its keys carry their units, and no paper shows a number that it does not hold.</summary>
public sealed partial class JsonTests
{
    [Fact]
    public void The_schema_is_named()
    {
        foreach (var input in Cases.All.Values)
        {
            using var plan = JsonDocument.Parse(PlanJson.Write(input));
            Assert.Equal("recipe/plan/1", plan.RootElement.GetProperty("schema").GetString());
            using var findings = JsonDocument.Parse(FindingsJson.Write(input.Findings, input.NotChecked));
            Assert.Equal("recipe/findings/1", findings.RootElement.GetProperty("schema").GetString());
        }
    }

    /// <summary>The symbols of the SI have one case each (SI brochure, 5.2): k is no kelvin and pa no pascal. A part of one is a fraction in every key.</summary>
    [Fact]
    public void A_unit_is_spelt_in_one_way_in_all_keys_of_all_documents()
    {
        string[] symbols = ["Pa", "K", "N", "degC"];
        var keys = JsonSchemas.Names.SelectMany(name => KeysOf(JsonDocument.Parse(JsonSchemas.Write(name)).RootElement)).Concat(Changes.Figures.All.Select(figure => figure.Key)).Distinct().ToArray();

        Assert.True(keys.Length > 300);
        foreach (var word in keys.SelectMany(key => key.Split('_').Skip(1).Select(word => (key, word))))
        {
            Assert.True(!symbols.Any(symbol => symbol != word.word && string.Equals(symbol, word.word, StringComparison.OrdinalIgnoreCase)), $"{word.key}: {word.word}");
            Assert.False(word.word is "share" or "nm2" or "pas", $"{word.key}: {word.word}");
        }

        static IEnumerable<string> KeysOf(JsonElement node) => node.ValueKind switch
        {
            JsonValueKind.Object => node.EnumerateObject().SelectMany(member => (member.Name == "properties" ? member.Value.EnumerateObject().Select(key => key.Name) : []).Concat(KeysOf(member.Value))),
            JsonValueKind.Array => node.EnumerateArray().SelectMany(KeysOf),
            _ => [],
        };
    }

    [Fact]
    public void A_number_with_a_dimension_carries_its_unit_in_its_key()
    {
        // Counts, shares, ratios, numbers of order and money carry none.
        string[] bare =
        [
            "quantity", "mould_pulls", "laminators", "sides", "bags", "feed_lines", "count", "number", "joins", "sheets", "coats", "pleats", "tape_layers", "hottest_step", "lines_without_price", "lines_without_mass",
            "mix_resin_parts", "mix_hardener_parts", "filler_parts", "pump_margin", "factor_to_first_limit", "pieces", "strips", "copy", "layer", "amount", "cost", "total", "per_part", "errors", "warnings", "advice", "accepted",
            "line", "column", "end_line", "end_column", "offset", "length",
        ];
        foreach (var (name, input) in Cases.All)
        {
            using var plan = JsonDocument.Parse(PlanJson.Write(input));
            foreach (var (key, _) in Numbers(plan.RootElement))
            {
                Assert.True(bare.Contains(key) || UnitKey().IsMatch(key), $"{name}: {key}");
            }
        }
    }

    [Fact]
    public void Every_number_of_the_takeoff_is_in_the_json()
    {
        foreach (var (name, input) in Cases.All.Where(pair => pair.Key != "hostile"))
        {
            using var plan = JsonDocument.Parse(PlanJson.Write(input));
            var known = Shown(plan.RootElement).ToHashSet(StringComparer.Ordinal);
            var texts = string.Join('\n', Strings(plan.RootElement)).Replace('\u00A0', ' ');
            foreach (Match match in Number().Matches(Papers.Write(input, Papers.Takeoff, PaperFormat.Markdown)))
            {
                var shown = match.Value;
                Assert.True(known.Contains(shown) || Regex.IsMatch(texts, $@"(?<![\d.]){Regex.Escape(shown)}(?![\d.]\d)"), $"{name}: {shown}");
            }
        }
    }

    [Fact]
    public void Assumptions_waivers_gaps_and_checks_that_could_not_speak_are_listed_with_their_reasons()
    {
        foreach (var (name, input) in Cases.All)
        {
            using var plan = JsonDocument.Parse(PlanJson.Write(input));
            var root = plan.RootElement;
            Assert.Equal(input.Plan.Assumptions.Length, root.GetProperty("assumptions").GetArrayLength());
            Assert.Equal(input.Plan.Gaps.Length, root.GetProperty("gaps").GetArrayLength());
            Assert.Equal(input.Findings.Length, root.GetProperty("findings").GetArrayLength());
            Assert.Equal(input.Plan.Part.Waivers.Length, root.GetProperty("waivers").GetArrayLength());
            Assert.Equal(input.NotChecked.Length, root.GetProperty("not_checked").GetArrayLength());
            Assert.All(root.GetProperty("assumptions").EnumerateArray(), assumption => Assert.False(string.IsNullOrEmpty(assumption.GetProperty("source").GetString()) && name != "hostile"));
        }
    }

    [Fact]
    public void What_rests_on_an_assumption_names_one_that_is_listed_and_a_key_that_is_there()
    {
        foreach (var input in Cases.All.Values)
        {
            using var plan = JsonDocument.Parse(PlanJson.Write(input));
            var keys = plan.RootElement.GetProperty("assumptions").EnumerateArray().Select(assumption => assumption.GetProperty("key").GetString()).ToHashSet();
            foreach (var owner in Objects(plan.RootElement))
            {
                if (owner.TryGetProperty("rests_on", out var rests) && rests.ValueKind == JsonValueKind.Object)
                {
                    foreach (var entry in rests.EnumerateObject())
                    {
                        Assert.True(owner.TryGetProperty(entry.Name, out var value) && value.ValueKind != JsonValueKind.Null, entry.Name);
                        Assert.All(entry.Value.EnumerateArray(), key => Assert.Contains(key.GetString(), keys));
                    }
                }
            }
        }
    }

    [Fact]
    public void Every_pot_of_the_mix_cards_is_in_the_json()
    {
        var own = 0;
        foreach (var (name, input) in Cases.All.Where(pair => pair.Value.Plan.Resin is not null))
        {
            using var plan = JsonDocument.Parse(PlanJson.Write(input));
            var written = plan.RootElement.GetProperty("own_mixes").EnumerateArray().ToList();
            Assert.Equal(input.Plan.OwnMixes.Select(mix => Shared.Keys.Of(mix.Use)), written.Select(mix => mix.GetProperty("use").GetString()!));
            foreach (var (mix, json) in input.Plan.OwnMixes.Zip(written))
            {
                Assert.Equal(mix.System.Name, json.GetProperty("system").GetString());
                Assert.Equal(mix.ToMix.Value.Kilograms, json.GetProperty("to_mix_kg").GetDouble(), 1e-9);
                Assert.Equal(mix.Pots.Select(pot => pot.Mass.Value.Kilograms), json.GetProperty("pots").EnumerateArray().Select(pot => pot.GetProperty("mass_kg").GetDouble()), new Near(1e-9));
                own += mix.Pots.Length;
            }

            var cards = Mixing.MixRun.Of(new Shared.PaperContext(input)).Sum(run => run.Pots.Length);
            var pots = plan.RootElement.GetProperty("pots").GetArrayLength() + written.Sum(mix => mix.GetProperty("pots").GetArrayLength());
            Assert.True(cards == pots, name);
        }

        Assert.True(own > 1);
    }

    [Fact]
    public void For_another_number_of_parts_takeoff_and_cost_are_those_of_the_paper()
    {
        var input = Plans.HatchLid.Input with { Quantity = Plans.HatchLid.Input.Plan.Part.Quantity * 5 };
        using var plan = JsonDocument.Parse(PlanJson.Write(input));
        var (costs, _) = Takeoffs.JobTakeoff.Total(Takeoffs.JobTakeoff.Lines(new Shared.PaperContext(input)));
        Assert.Equal(input.Quantity, plan.RootElement.GetProperty("part").GetProperty("quantity").GetInt32());
        var cost = plan.RootElement.GetProperty("cost");
        Assert.Equal(Assert.Single(costs).Amount, cost.GetProperty("total").GetDecimal());
        Assert.Equal(decimal.Round(costs[0].Amount / input.Quantity!.Value, 4), cost.GetProperty("per_part").GetDecimal());
        var gross = plan.RootElement.GetProperty("takeoff").EnumerateArray().Sum(line => line.GetProperty("mass_kg") is { ValueKind: JsonValueKind.Number } mass ? mass.GetDouble() : 0);
        Assert.Equal(gross, plan.RootElement.GetProperty("takeoff_total").GetProperty("mass_kg").GetDouble(), 1e-8);
        using var asWritten = JsonDocument.Parse(PlanJson.Write(Plans.HatchLid.Input));
        Assert.Equal(5 * asWritten.RootElement.GetProperty("takeoff_total").GetProperty("mass_kg").GetDouble(), gross, 1e-8);
    }

    private sealed class Near(double by) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= by;

        public int GetHashCode(double obj) => 0;
    }

    [Fact]
    public void A_name_comes_back_as_it_was_and_can_be_put_into_a_page()
    {
        Gen.OneOf(Hostile.Words, Gen.String).Sample(
            text =>
            {
                var json = PlanJson.Write(Hostile.With(text));
                Assert.DoesNotContain("<", json, StringComparison.Ordinal);
                using var plan = JsonDocument.Parse(json);
                var label = plan.RootElement.GetProperty("part").GetProperty("label").GetString()!;
                Assert.Equal(WithoutHalves(text), label);
            },
            iter: 60);
    }

    // What no UTF-8 can carry: halves of surrogate pairs.
    private static string WithoutHalves(string text) => string.Concat(text.EnumerateRunes().Select(rune => rune.ToString()));

    private static IEnumerable<JsonElement> Objects(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property => Objects(property.Value)).Prepend(element),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Objects),
        _ => [],
    };

    private static IEnumerable<(string Key, double Value)> Numbers(JsonElement element) => Objects(element).SelectMany(owner =>
        owner.EnumerateObject().Where(property => property.Value.ValueKind == JsonValueKind.Number).Select(property => (property.Name, property.Value.GetDouble())));

    private static IEnumerable<string> Strings(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property => Strings(property.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Strings),
        JsonValueKind.String => [Recipe.Documents.Quantities.WrittenText.ForReading(element.GetString()!), element.GetString()!],
        _ => [],
    };

    // Every number of the JSON in every unit in which a takeoff shows one, to as many digits as papers have.
    private static IEnumerable<string> Shown(JsonElement root)
    {
        string[] units = ["g", "kg", "oz", "lb", "m2", "ft2", "yd2", "cm2", "m", "ft", "yd", "mm", "in", "L", "mL", "floz", "qt", "gal", "%", "N/mm", "MPa", "GPa"];
        foreach (var (_, value) in Numbers(root))
        {
            foreach (var inUnit in units.Select(unit => UnitTable.Get(unit).FromSi(value)).Append(value).Append(Math.Abs(value * 100)))
            {
                for (var decimals = 0; decimals <= 6; decimals++)
                {
                    foreach (var scaled in (double[])[inUnit, Ceiling(inUnit, decimals), Floor(inUnit, decimals)])
                    {
                        var text = Math.Round(scaled, decimals, MidpointRounding.AwayFromZero).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
                        yield return text;
                        yield return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
                    }
                }
            }
        }

        // Numbers of stations, of assumptions, and lines of lists count themselves.
        for (var i = 0; i <= root.GetProperty("assumptions").GetArrayLength() + 4; i++)
        {
            yield return i.ToString(CultureInfo.InvariantCulture);
        }
    }

    private static double Ceiling(double value, int decimals) => Math.Ceiling(value * Math.Pow(10, decimals)) / Math.Pow(10, decimals);

    private static double Floor(double value, int decimals) => Math.Floor(value * Math.Pow(10, decimals)) / Math.Pow(10, decimals);

    [GeneratedRegex(@"(?<![\w.])\d+(?:\.\d+)?(?![\w-])")]
    private static partial Regex Number();

    [GeneratedRegex(@"_(m|m2|m3|kg|s|N|deg|fraction|Pa|K|degC|kg_per_m2|kg_per_m|K_per_s|percent)$|^resin_fraction$")]
    private static partial Regex UnitKey();
}
