using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using CsCheck;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.LanguageServer.Tests.Documents;

/// <summary>A part keeps its plan as long as all it rests on reads the same, and what is said of it is what a fresh workspace says.</summary>
public sealed class KeptPartsTests
{
    private const string Name = "bench/lids.recipe";
    private static readonly DateOnly Today = new(2026, 6, 1);
    private static readonly string Head = Repository.Read("samples/hatch-lid.recipe").Split("mould hatch-lid-mould")[0].Replace("use \"shop.recipe\"\n", "", StringComparison.Ordinal);
    private static readonly string Lid = "mould hatch-lid-mould" + Repository.Read("samples/hatch-lid.recipe").Split("mould hatch-lid-mould")[1].Split("variant hatch-lid-no-veil")[0];
    private static readonly string Three = Head + Copy("one") + Copy("two") + Copy("three");

    private readonly Texts _texts = [];
    private LiveWorkspace Live => field ??= new LiveWorkspace(_texts);

    [Theory]
    [InlineData("pulls       6", "pulls       7", "two", "three")] // the first mould
    [InlineData("mixing             3 min", "mixing             4 min", "two", "three")] // the first part
    [InlineData("let lap = 15 mm", "let lap = 16 mm")] // a value that all use
    [InlineData("let lap = 15 mm", "let lap = 15 mm # of twill")] // not told from a change of it
    [InlineData("mould lid-two-mould", "# waxed again\nmould lid-two-mould", "two", "three")] // behind the part before
    public void Only_what_rests_on_a_change_is_planned_anew(string old, string @new, params string[] kept)
    {
        var before = Compile(Three);
        var at = Three.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at > 0, $"The sample does not say '{old}' any more.");
        var after = Compile(Three.Remove(at, old.Length).Insert(at, @new));
        var same = after.Parts.Where(part => before.Parts.Any(b => ReferenceEquals(b.Figures, part.Figures))).Select(part => part.Part.Name);
        Assert.Equal(kept.Select(name => "lid-" + name), same);
    }

    [Fact]
    public void A_plan_that_is_asked_for_stands_in_the_text_of_now()
    {
        Compile(Three);
        var after = Compile("# a line above\n" + Three);
        Assert.All(after.Parts, part => Assert.Same(after.Source, part.Plan.Part.Where.Source));
        Assert.All(after.Plans.SelectMany(plan => plan.Stack), line => Assert.Same(after.Source, line.Item.Where.Source));
    }

    [Fact]
    public void A_part_that_comes_to_join_another_counts_for_it()
    {
        // What is said of unbalanced angles and of seams depends on who joins the part.
        var alone = "part half {\n  plies { outer glass-twill-163 30 }\n}\n";
        var texts = Compile(Head + alone);
        var joined = Compile(Head + alone + "part whole { join { parts half half } }\n");
        Assert.NotSame(texts.Parts[0].Figures, joined.Parts[0].Figures);
    }

    [Fact]
    public void Random_edits_end_where_a_fresh_workspace_begins()
    {
        var sound = Directory.GetFiles(Repository.PathOf("tests/corpus/sound"), "*.recipe").Order(StringComparer.Ordinal).Select(File.ReadAllText).ToArray();
        var edit = Gen.Select(Gen.Int[0, 4], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[1, 99]);
        var reused = 0;
        Gen.Select(Gen.Int[0, sound.Length - 1].Array[2], edit.Array[4]).Sample(
            (pick, edits) =>
            {
                var texts = new Texts();
                var live = new LiveWorkspace(texts);
                var text = string.Join('\n', pick.Select(i => sound[i]));
                foreach (var step in edits)
                {
                    texts[Name] = text;
                    var kept = live.Compile(Name, Today)!;
                    Assert.True(new Workspace(texts, Today).TryCompile(Name, out var fresh));
                    Assert.Equal(Said(fresh), Said(kept));
                    Interlocked.Add(ref reused, kept.Parts.Count(part => !ReferenceEquals(part.Figures.Part, part.Part)));
                    text = Edited(text, step);
                }
            },
            iter: 60);
        Assert.True(reused > 0, "No part was ever kept.");
    }

    private CompiledFile Compile(string text)
    {
        _texts[Name] = text;
        return Live.Compile(Name, Today)!;
    }

    private static string Copy(string name) => Lid.Replace("hatch-lid", "lid-" + name, StringComparison.Ordinal);

    private static string Edited(string text, (int Kind, double At, double From, int Number) edit)
    {
        var lines = text.Split('\n').ToList();
        var at = (int)(edit.At * (lines.Count - 1));
        var line = lines[at];
        switch (edit.Kind)
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(at, lines[(int)(edit.From * (lines.Count - 1))]);
                break;
            case 2 when line.AsSpan().IndexOfAnyInRange('0', '9') is >= 0 and var digit:
                lines[at] = line[..digit] + edit.Number.ToString(CultureInfo.InvariantCulture) + line[(digit + 1)..];
                break;
            case 3 when line.Length > 0:
                lines[at] = line.Remove((int)(edit.From * (line.Length - 1)), 1);
                break;
            default:
                lines.Insert(at, "# a remark");
                break;
        }

        return string.Join('\n', lines);
    }

    private static string Said(CompiledFile file) => string.Join(
        '\n',
        [
            CompiledFile.FindingsAsJson([file]),
            .. file.Findings.SelectMany(f => f.Labels).Select(label => $"{label.Where} {label.Text}"),
            .. file.Findings.SelectMany(f => f.Fixes).SelectMany(fix => fix.Edits).Select(edit => $"{edit.Where} {edit.Where.Span.Length} {edit.NewText}"),
            .. file.Parts.Select(part => part.Figures).Select(plan =>
                $"{plan.Part.Name} {plan.Laminate?.TrimmedMass.Value.Value} {plan.Resin?.ToMix.Value} {plan.Clock?.Need.Value} {plan.Cure?.Total.Value} {string.Join("; ", plan.Gaps)}"),
        ]);

    private sealed class Texts : Dictionary<string, string>, IFileStore
    {
        public bool TryRead(string name, [NotNullWhen(true)] out string? text) => TryGetValue(name, out text);
    }
}
