using Recipe.Compiler;
using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>
/// A cloth whose name is misspelt is one mistake and one finding. Nothing is worked out as if the ply were not there: a sum without it looks right and is not.
/// </summary>
public class MisspeltClothTests
{
    public static TheoryData<string> Sound => [.. Shipped.In("tests/corpus/sound"), "samples/hatch-lid.recipe", "samples/instrument-housing.recipe"];

    [Theory]
    [MemberData(nameof(Sound))]
    public void Only_the_name_is_found_wrong_and_no_sum_is_made(string path)
    {
        var sound = Shipped.Compile(path);
        var before = sound.Findings.Select(f => f.Descriptor.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var ply in Plies(sound))
        {
            var text = sound.Source.Text;
            var broken = Shipped.Compile(path, $"{text[..ply.MaterialWhere.Span.Start]}qqq-{text[ply.MaterialWhere.Span.Start..]}");

            Assert.Equal(["unknown-name"], broken.Findings.Select(f => f.Descriptor.Name).Where(name => !before.Contains(name)).Distinct());
            foreach (var plan in broken.Plans.Where(p => p.Part.UnreadPlies.Contains(ply.Name)))
            {
                Assert.Null(plan.Laminate);
                Assert.Null(plan.Stiffness);
                Assert.Null(plan.Resin);
                Assert.Empty(plan.Pots);
                Assert.Contains(plan.Gaps, gap => gap.Missing == $"ply {ply.Name} could not be read");
            }

            Assert.Contains(broken.Plans, p => p.Part.UnreadPlies.Contains(ply.Name));
        }
    }

    [Theory]
    [InlineData("outer glass-twill-163 0/90 covers 3 kg; inner glass-twill-163 0/90")]
    [InlineData("outer glass-twill-163 0/90 size 1,,2 x 3; inner glass-twill-163 0/90")]
    public void A_ply_that_is_half_understood_is_not_summed_up_either(string plies)
    {
        var bench = Bench.Of((Tray.Hand with { Plies = plies, PartLines = "target mass 1 kg" }).ToString());

        Assert.DoesNotContain("RC3006", bench.Codes);
        Assert.Null(bench.Plans.Single().Laminate);
        Assert.All(bench.Report.Findings, f => Assert.NotEqual(Severity.Error, f.Severity));
    }

    private static IEnumerable<PlyItem> Plies(CompiledFile file) => file.Plans
        .SelectMany(p => p.Part.Stack)
        .OfType<PlyItem>()
        .Where(i => ReferenceEquals(i.MaterialWhere.Source, file.Source))
        .DistinctBy(i => i.MaterialWhere.Span.Start);
}
