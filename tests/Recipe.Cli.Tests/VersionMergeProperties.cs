using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Recipe.Compiler;
using Recipe.Compiler.Merging;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>What is true of every merge of versions of the samples, with what the language knows its lines by.</summary>
public sealed partial class VersionMergeProperties
{
    private static readonly string[] Samples = [.. new[] { "hatch-lid", "telescope-tube", "rudder-cheek", "instrument-housing", "shop" }.Select(name => Repository.Read($"samples/{name}.recipe"))];

    private enum Manner
    {
        Delete,
        Number,
        Remark,
        Word,
        Swap,
    }

    private static Gen<(string Before, string Ours, string Theirs)> Versions { get; } = Gen.Select(Gen.Int[0, Samples.Length - 1], Edits(), Edits(), (i, ours, theirs) =>
        (Samples[i], Edited(Samples[i], ours), Edited(Samples[i], theirs)));

    [Fact]
    public void No_line_gets_lost_and_what_is_clean_is_laid_out_and_can_be_read() => Versions.Sample(
        versions =>
        {
            var (before, ours, theirs) = versions;
            var merged = VersionMerge.Of(before, ours, theirs);
            var (b, o, t, m) = (Lines(before), Lines(ours), Lines(theirs), Lines(merged.Text));
            Assert.Superset(o.Except(b).ToHashSet(), m);
            Assert.Superset(t.Except(b).ToHashSet(), m);
            Assert.False(merged.ByLines);
            Assert.Equal(merged.Conflicts, merged.Text.Split('\n').Count(line => line.StartsWith("<<<<<<<", StringComparison.Ordinal)));
            if (merged.Conflicts == 0 && IsLaidOut(ours) && IsLaidOut(theirs))
            {
                Assert.True(IsLaidOut(merged.Text));
            }

            Assert.Equal(merged.Conflicts, VersionMerge.Of(before, theirs, ours).Conflicts);
        },
        iter: 100);

    [Fact]
    public void Changes_of_different_numbers_always_go_together() => Gen.Select(Gen.Int[0, Samples.Length - 1], Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
        (i, at, other) =>
        {
            var before = Samples[i];
            var (ours, theirs) = (Edited(before, [(Manner.Number, at)]), Edited(before, [(Manner.Number, other)]));
            var merged = VersionMerge.Of(before, ours, theirs);
            var changed = ours.Split('\n').Zip(theirs.Split('\n'), before.Split('\n')).Count(lines => lines.First != lines.Third && lines.Second != lines.Third && lines.First != lines.Second);
            Assert.Equal(changed, merged.Conflicts);
        },
        iter: 100);

    private static Gen<(Manner, double)[]> Edits() => Gen.Select(Gen.Enum<Manner>(), Gen.Double[0, 1]).Array[1, 6];

    // Lines without braces only: the texts can all be read.
    private static string Edited(string text, (Manner Manner, double At)[] edits)
    {
        var lines = text.Split('\n').ToList();
        var serial = 0;
        foreach (var (manner, at) in edits)
        {
            var places = Enumerable.Range(0, lines.Count - 1)
                .Where(i => lines[i].Trim().Length > 0 && lines[i].IndexOfAny(['{', '}', '(', ')']) < 0 && (manner != Manner.Number || Number().IsMatch(lines[i]))).ToList();
            var place = places[(int)(at * (places.Count - 1))];
            switch (manner)
            {
                case Manner.Delete:
                    lines.RemoveAt(place);
                    break;
                case Manner.Number:
                    lines[place] = Number().Replace(lines[place], match => (int.Parse(match.Value, CultureInfo.InvariantCulture) + 1 + (int)(at * 1000)).ToString(CultureInfo.InvariantCulture), 1);
                    break;
                case Manner.Remark:
                    lines.Insert(place, Indent(lines[place]) + $"# {at:R}");
                    break;
                case Manner.Word:
                    lines.Insert(place, Indent(lines[place]) + $"word-{serial++}-{(int)(at * 1_000_000)} 3 mm");
                    break;
                case Manner.Swap when place > 0 && places.Contains(place - 1):
                    (lines[place], lines[place - 1]) = (lines[place - 1], lines[place]);
                    break;
            }
        }

        return string.Join('\n', lines);
    }

    private static string Indent(string line) => line[..(line.Length - line.TrimStart().Length)];

    private static bool IsLaidOut(string text) => TextLayout.Format("a.recipe", text) == text;

    private static HashSet<string> Lines(string text) => [.. text.Split('\n').Select(line => Blanks().Replace(line, " ").Trim()).Where(line => line.Length > 0)];

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();

    // A number of a quantity: neither part of a name, a date, a ratio nor a text.
    [GeneratedRegex(@"(?<=^\s*[a-z-]+\s+)\d{1,4}(?= [a-zA-Z])", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
