using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Recipe.Compiler;
using Recipe.Compiler.Records;

namespace Recipe.Cli.Tests;

/// <summary>
/// Shops that are simulated: each has a true resin content and pace that no recipe knows. What is learnt from its records must predict its
/// next parts better than the defaults did, and the intervals must hold them as often as they promise.
/// </summary>
public sealed class LearningTests
{
    private const string Recipe = """
        mould tray-mould {
          surface  flat 400 mm x 300 mm
          made-of  epoxy-glass-tooling
          release  { carnauba-wax coats 5 wait 30 min }
        }

        part tray {
          mould    tray-mould
          process  hand
          resin    slow-laminating-epoxy
          plies {
            outer  glass-twill-163  0/90
            inner  glass-twill-163  0/90
          }
          cure {
            hold 20 degC for 48 h
            demould
          }
        }

        """;

    [Fact]
    public void Predictions_improve_and_intervals_hold_what_they_promise()
    {
        const int shops = 40;
        const int nextParts = 25;
        var (plain, learnt, held, heldPace) = (0.0, 0.0, 0, 0);
        for (var shop = 0; shop < shops; shop++)
        {
            var random = new Scatter(shop + 1);

            // What this shop's hands do: 42 to 56 % resin, scattering by 1 % from part to part; 10 to 30 minutes a square metre.
            var (content, pace) = (random.Between(0.42, 0.56), random.Between(10, 30));
            var before = Compile(Recipe);
            var planned = before.Parts[0].Plan.Laminate!;
            var (fibre, area) = (planned.Fibre.Value.Grams, before.Parts[0].Plan.Stack.Sum(line => line.CutArea!.Value.Value.SquareMeters));
            double MassOf(double share) => fibre / (1 - share);

            var text = new StringBuilder(Recipe);
            for (var serial = 1; serial <= 8; serial++)
            {
                var minutes = Math.Round(random.Normal(pace, 1) * area, 0);
                text.Append(CultureInfo.InvariantCulture, $"build tray no {serial} on 2026-05-{serial:00} {{\n  mass {MassOf(random.Normal(content, 0.01)):0.0} g\n")
                    .Append(CultureInfo.InvariantCulture, $"  wet-out from 09:00 until {9 + (int)(minutes / 60):00}:{minutes % 60:00} over {area:0.0000} m2\n}}\n");
            }

            var records = ShopRecords.Of([Compile(text.ToString())]);
            var figures = JsonNode.Parse(records.Learnt("json"))!["figures"]!.AsArray();
            var resin = figures.Single(figure => (string?)figure!["kind"] == "resin_content")!;
            var paces = figures.Single(figure => (string?)figure!["kind"] == "pace")!;
            var after = Compile(records.WithLearnt("shop.recipe", Recipe)!);
            var (was, now) = (planned.TrimmedMass.Value.Value.Grams, after.Parts[0].Plan.Laminate!.TrimmedMass.Value.Value.Grams);
            for (var part = 0; part < nextParts; part++)
            {
                var share = random.Normal(content, 0.01);
                plain += Math.Abs(MassOf(share) - was);
                learnt += Math.Abs(MassOf(share) - now);
                held += share >= (double)resin["next_low"]! && share <= (double)resin["next_high"]! ? 1 : 0;
                var next = Math.Round(random.Normal(pace, 1) * area, 0) * 60 / area;
                heldPace += next >= (double)paces["next_low"]! && next <= (double)paces["next_high"]! ? 1 : 0;
            }
        }

        Assert.True(learnt < 0.5 * plain, $"off by {learnt / shops / nextParts:0.00} g after learning, {plain / shops / nextParts:0.00} g before");

        // 95 % of 1,000 next parts; the parts of a shop share one interval, so its luck counts 25 times.
        Assert.InRange(held / (double)(shops * nextParts), 0.91, 0.985);
        Assert.InRange(heldPace / (double)(shops * nextParts), 0.91, 0.985);
    }

    [Fact]
    public void A_slip_in_one_record_is_named_and_moves_nothing()
    {
        var planned = Compile(Recipe).Parts[0].Plan.Laminate!.Fibre.Value.Grams;
        var good = string.Concat(Enumerable.Range(1, 7).Select(serial => string.Create(CultureInfo.InvariantCulture, $"build tray no {serial} {{ mass {planned / (0.52 + (0.001 * serial)):0.0} g }}\n")));
        var clean = ShopRecords.Of([Compile(Recipe + good)]).Learnt("json");
        var slip = ShopRecords.Of([Compile(Recipe + good + "build tray no 8 { mass 480 g }\n")]);
        Assert.Contains("resin in glass-twill-163, hand: 91.8 % of tray no 8", slip.Learnt("text"), StringComparison.Ordinal);
        Assert.Equal((double)Mean(clean), (double)Mean(slip.Learnt("json")), 1e-12);

        static JsonNode Mean(string json) => JsonNode.Parse(json)!["figures"]![0]!["mean"]!;
    }

    [Fact]
    public void The_pace_that_a_plan_takes_is_learnt_from_a_day_that_went_as_planned()
    {
        var plan = Compile(Recipe).Parts[0].Plan;
        var (area, pieces) = Planning.PlannedFiguresOf.WetWork(plan)!.Value;
        var minutes = plan.Stack.Sum(line => line.WetOut!.Value.Value.Minutes);

        // A clock shows whole minutes; the area is scaled so that the day is 100 of them.
        var scale = 100 / minutes;
        var days = string.Concat(Enumerable.Range(1, 5).Select(serial => string.Create(
            CultureInfo.InvariantCulture, $"build tray no {serial} {{ wet-out from 09:00 until 10:40 over {area.SquareMeters * scale} m2 pieces {(int)Math.Round(pieces * scale)} }}\n")));
        var pace = (double)JsonNode.Parse(ShopRecords.Of([Compile(Recipe + days)]).Learnt("json"))!["figures"]!.AsArray().Single(figure => (string?)figure!["kind"] == "pace")!["mean"]!;
        var after = Compile(Recipe + $"\nshop ours {{ pace {(pace / 60).ToString(CultureInfo.InvariantCulture)} min/m2 }}\n").Parts[0].Plan;
        Assert.Equal(minutes, after.Stack.Sum(line => line.WetOut!.Value.Value.Minutes), minutes * 0.03);
    }

    // By hand: 100 g of part, of which 40 g fibre were planned from a kit of 50 g; the kit weighed 55 g, so 44 g of it are fibre and 56 % is resin.
    [Fact]
    public void A_kit_that_was_weighed_tells_the_fibre_better_than_the_plan()
    {
        const string planned = "planned { process hand; fibre 40 g; other 0 g; kit 50 g; cloth glass-twill-163 40 g holds 50 % by weight }";
        Assert.Equal(0.60, Share($"build tray no 1 {{ mass 100 g; {planned} }}\n"), 1e-9);
        Assert.Equal(0.56, Share($"build tray no 1 {{ mass 100 g; kit 55 g; {planned} }}\n"), 1e-9);

        static double Share(string record) => (double)JsonNode.Parse(ShopRecords.Of([Compile(Recipe + record)]).History("tray", "json")!)!["builds"]![0]!["resin_fraction"]!;
    }

    [Fact]
    public void A_shop_line_counts_before_the_book_and_after_the_recipe()
    {
        const string shop = "shop ours { resin-content glass-twill-163 hand 61 % by weight }\n";
        Assert.Equal(0.61, Compile(Recipe + shop).Parts[0].Plan.Laminate!.ResinFraction.Value, 1e-9);
        Assert.NotEqual(0.61, Compile(Recipe).Parts[0].Plan.Laminate!.ResinFraction.Value, 0.02);
        Assert.Equal(0.4, Compile(Recipe.Replace("0/90\n    inner", "0/90 resin-content 40 % by weight\n    inner", StringComparison.Ordinal).Replace("inner  glass-twill-163  0/90", "inner  glass-twill-163  0/90 resin-content 40 % by weight", StringComparison.Ordinal) + shop).Parts[0].Plan.Laminate!.ResinFraction.Value, 1e-9);
    }

    private static CompiledFile Compile(string text)
    {
        Assert.True(new Workspace(new OneText(text), new DateOnly(2026, 6, 1)).TryCompile("tray.recipe", out var file));
        Assert.Empty(file.Bound.Findings.Select(finding => finding.Message));
        return file;
    }

    private sealed class OneText(string text) : IFileStore
    {
        public bool TryRead(string name, [NotNullWhen(true)] out string? found)
        {
            found = name == "tray.recipe" ? text : null;
            return found is not null;
        }
    }

    /// <summary>Numbers that are the same for a seed on every machine.</summary>
    private sealed class Scatter(int seed)
    {
        private readonly PCG _random = new((uint)seed, 99);

        public double Between(double low, double high) => low + ((high - low) * _random.Next64() / ulong.MaxValue);

        // Box and Muller 1958.
        public double Normal(double mean, double deviation) =>
            mean + (deviation * Math.Sqrt(-2 * Math.Log(Between(1e-12, 1))) * Math.Cos(2 * Math.PI * Between(0, 1)));
    }
}
