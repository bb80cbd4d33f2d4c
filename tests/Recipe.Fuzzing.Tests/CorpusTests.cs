using Recipe.TestKit;

namespace Recipe.Fuzzing.Tests;

/// <summary>The inputs that once broke something, and those that fuzzing begins with, still hold every property of their target.</summary>
public sealed class CorpusTests
{
    public static TheoryData<string, string> Kept
    {
        get
        {
            var cases = new TheoryData<string, string>();
            foreach (var target in FuzzTargets.All)
            {
                foreach (var file in new DirectoryInfo(Repository.PathOf("tests/corpus/fuzz")).GetDirectories(target.Name).SelectMany(folder => folder.GetFiles()).OrderBy(file => file.Name, StringComparer.Ordinal))
                {
                    cases.Add(target.Name, file.Name);
                }
            }

            return cases;
        }
    }

    public static TheoryData<string> Targets => [.. FuzzTargets.All.Select(target => target.Name)];

    [Theory]
    [MemberData(nameof(Kept))]
    public void A_kept_input_breaks_nothing(string target, string file) =>
        FuzzTargets.Find(target)!.Run(File.ReadAllBytes(Repository.PathOf($"tests/corpus/fuzz/{target}/{file}")));

    [Theory]
    [MemberData(nameof(Targets))]
    public void The_inputs_to_begin_with_break_nothing(string target)
    {
        var seeds = FuzzTargets.Find(target)!.Seeds().ToList();
        Assert.NotEmpty(seeds);
        Assert.All(seeds, seed => FuzzTargets.Find(target)!.Run(seed.Bytes));
    }

    [Theory]
    [MemberData(nameof(Targets))]
    public void Nothing_and_noise_break_nothing(string target)
    {
        var random = new Random(1);
        FuzzTargets.Find(target)!.Run([]);
        for (var i = 0; i < 20; i++)
        {
            var noise = new byte[random.Next(300)];
            random.NextBytes(noise);
            FuzzTargets.Find(target)!.Run(noise);
        }
    }

    [Fact]
    public void Every_folder_of_kept_inputs_has_its_target() =>
        Assert.All(new DirectoryInfo(Repository.PathOf("tests/corpus/fuzz")).GetDirectories(), folder => Assert.NotNull(FuzzTargets.Find(folder.Name)));
}
