using System.Collections.Immutable;
using CsCheck;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>Checks say something or nothing, and never throw, whatever is absent.</summary>
public class RobustnessTests
{
    private static readonly string[] Texts =
    [
        .. CheckCatalogue.All.SelectMany(c => new[] { c.Descriptor.BadExample, c.Descriptor.GoodExample }).Distinct(),
        (Tray.Infused with { WetOut = "room 20 degC; laminators 2; pot 60 g; mixing 3 min", MouldLines = "halves left right; flange 40 mm", Join = "manner wet-in-wet; overlap 20 mm; within 40 min" }).ToString(),
    ];

    // What a plan or a part may lack, each taken away on its own.
    private static readonly Func<Plan, Plan>[] Losses =
    [
        p => p with { Geometry = null },
        p => p with { Stack = [] },
        p => p with { Laminate = null },
        p => p with { Resin = null },
        p => p with { Pots = [] },
        p => p with { Clock = null },
        p => p with { Bag = null },
        p => p with { Vacuum = null },
        p => p with { Cure = null },
        p => p with { Takeoff = [] },
        p => p with { Assumptions = [] },
        p => p with { Gaps = [] },
        p => p with { Shop = null },
        p => p with { Pots = [.. p.Pots.Select(pot => pot with { DeadAt = null, PotLife = null, Hardener = null, Resin = null, For = [] })] },
        p => p with { Clock = p.Clock is { } clock ? clock with { FilmLife = null } : null },
        p => p with { Cure = p.Cure is { } cure ? cure with { Steps = [], Limits = [.. cure.Limits.Select(l => l with { Limit = null })] } : null },
        p => p with { Stack = [.. p.Stack.Select(s => s with { CutArea = null, CutResin = null, Pieces = [.. s.Pieces.Select(x => x with { RollWidth = null })] })] },
        p => p with { Part = p.Part with { Mould = null, MouldWhere = null } },
        p => p with { Part = p.Part with { Resin = null } },
        p => p with { Part = p.Part with { ResinWhere = null } },
        p => p with { Part = p.Part with { Stack = [], StackWhere = null } },
        p => p with { Part = p.Part with { WetOut = null } },
        p => p with { Part = p.Part with { Bag = null } },
        p => p with { Part = p.Part with { Vacuum = null } },
        p => p with { Part = p.Part with { Infusion = null } },
        p => p with { Part = p.Part with { Cure = null } },
        p => p with { Part = p.Part with { Finish = [], Join = null } },
        p => p with { Part = p.Part with { Mould = p.Part.Mould is { } m ? m with { Release = [.. m.Release.Select(r => r with { Coats = null, Wait = null, Dry = null })], MadeOf = null, State = null } : null } },
        p => p with { Part = p.Part with { Resin = p.Part.Resin is { } r ? r with { PotLife = null, FilmLife = null, GelTime = null, Demould = null, MinimumTemperature = null, LargestPot = null, Chemistry = Chemistry.Unknown } : null } },
        p => p with { Part = p.Part with { Vacuum = p.Part.Vacuum is { } v ? v with { Draw = null } : null } },
        p => p with { Part = p.Part with { Vacuum = p.Part.Vacuum is { LeakCheck: { } l } v ? v with { LeakCheck = l with { Duration = null, RiseAtMost = null, Isolated = false } } : p.Part.Vacuum } },
        p => p with { Part = p.Part with { Bag = p.Part.Bag is { } b ? b with { Layers = [.. b.Layers.Reverse()] } : null } },
        p => p with { Part = p.Part with { Process = new Figure<Process>(Process.Prepreg, Basis.Assumed, "prepreg") } },
        p => p with { Part = p.Part with { Process = new Figure<Process>(Process.Infused, Basis.Assumed, "infused") } },
        p => p with { Part = p.Part with { Waivers = [new Waiver("RC6004", "x", new DateOnly(2020, 1, 1), p.Part.Where)] } },
    ];

    [Fact]
    public void No_check_throws_whatever_the_plan_lacks() =>
        Gen.Select(Gen.Int[0, Texts.Length - 1], Gen.Int[0, Losses.Length - 1].Array[0, 8], Gen.Bool).Sample((text, lost, dated) =>
        {
            var bench = Bench.Of(Texts[text]);
            var plans = bench.Plans.Select(p => lost.Aggregate(p, (plan, loss) => Losses[loss](plan))).ToImmutableArray();
            var report = CheckRunner.Run(plans, bench.Model, dated ? Bench.Today : null, earlier: bench.Before);
            foreach (var finding in report.Findings)
            {
                Assert.InRange(finding.Where.Span.End, 0, finding.Where.Source.Length);
                Assert.NotEmpty(finding.Message);
            }
        });

    [Fact]
    public void No_check_throws_on_a_text_with_lines_missing_or_turned_round() =>
        Gen.Select(Gen.Int[0, Texts.Length - 1], Gen.Int[0, 60].Array[1, 12], Gen.Bool).Sample((text, picked, swaps) =>
        {
            var lines = Texts[text].Split('\n').ToList();
            foreach (var pick in picked)
            {
                var at = pick % Math.Max(1, lines.Count);
                if (swaps && lines.Count > 1)
                {
                    (lines[at], lines[(at + 1) % lines.Count]) = (lines[(at + 1) % lines.Count], lines[at]);
                }
                else if (lines.Count > 0)
                {
                    lines.RemoveAt(at);
                }
            }

            Holds(string.Join('\n', lines));
        });

    [Fact]
    public void No_check_throws_on_a_text_with_words_cut_out() =>
        Gen.Select(Gen.Int[0, Texts.Length - 1], Gen.Int[0, 2000], Gen.Int[1, 40]).Sample((text, from, length) =>
        {
            var whole = Texts[text];
            var start = from % whole.Length;
            Holds(whole.Remove(start, Math.Min(length, whole.Length - start)));
        });

    [Fact]
    public void The_same_text_gives_the_same_findings() =>
        Gen.Int[0, Texts.Length - 1].Sample(text =>
            Assert.Equal(Bench.Of(Texts[text]).All.Select(f => (f.Where.Span, f.Message)), Bench.Of(Texts[text]).All.Select(f => (f.Where.Span, f.Message))));

    private static void Holds(string text)
    {
        var bench = Bench.Of(text);
        foreach (var fix in bench.Report.Findings.SelectMany(f => f.Fixes))
        {
            // Overlapping edits throw here.
            TextEdit.Apply(bench.Source, fix.Edits);
        }
    }
}
