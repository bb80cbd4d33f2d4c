using Recipe.Model;
using Recipe.TestKit;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Tests;

/// <summary>What ships with the program means what it says: nothing in it is misread, and planted mistakes are found where they are.</summary>
public class ShippedTests
{
    private const string Mistakes = "samples/mistakes";

    public static TheoryData<string> SoundFiles => [.. Shipped.SoundFolders.SelectMany(Shipped.Files)];

    public static TheoryData<string> BookFiles => [.. Shipped.Files(Shipped.BookFolder)];

    public static TheoryData<string> MistakenFiles => [.. Shipped.Files(Mistakes)];

    [Theory]
    [MemberData(nameof(SoundFiles))]
    public void A_sound_recipe_has_no_finding(string path)
    {
        var bound = Shipped.Bind(path);
        Assert.Empty(bound.Tree.Findings.Concat(bound.Findings).Select(Told));
    }

    [Theory]
    [MemberData(nameof(BookFiles))]
    public void A_file_of_the_book_has_no_finding(string path)
    {
        var file = Shipped.Book.Files.Single(f => f.Source.Name == path);
        Assert.Empty(file.Findings.Concat(Shipped.Book.Findings.Where(f => f.Where.Source == file.Source)).Select(Told));
    }

    [Fact]
    public void Every_material_of_the_book_is_bound_and_says_where_its_figures_come_from()
    {
        var materials = Shipped.Book.Materials;
        Assert.True(materials.Count > 80, $"Only {materials.Count} materials are in the book.");
        Assert.All(materials.Values, m => Assert.True(m.FromBook));
        Assert.All(materials.Values.OfType<Reinforcement>(), r => Assert.NotNull(r.Fibre));
        Assert.All(materials.Values.OfType<Reinforcement>(), r => Assert.False(string.IsNullOrWhiteSpace(r.ArealWeight?.Source), r.Name));
        Assert.All(materials.Values.OfType<ResinSystem>(), r => Assert.True(r.Mix is not null || r.Hardeners.All(h => h.Mix is not null && r.Hardeners.Length > 0), r.Name));
    }

    /// <summary>So that a recipe may name the class alone.</summary>
    [Theory]
    [InlineData("peel-ply")]
    [InlineData("release-film")]
    [InlineData("bleeder")]
    [InlineData("breather")]
    [InlineData("bag-film")]
    [InlineData("sealant-tape")]
    [InlineData("hose")]
    [InlineData("port")]
    [InlineData("catch-pot")]
    public void The_book_has_a_default_for_a_class(string word)
    {
        var bag = Binder.Bind(Given.Tree($"part a {{ bag {{ {word} }} }}"), Shipped.Book, UseScope.Alone()).Model.Parts[0].Bag!;
        Assert.Equal(1, bag.Layers.Length + bag.Ports.Length + new object?[] { bag.SealantTape, bag.Hose, bag.CatchPot }.Count(p => p is not null));
    }

    /// <summary>Mistakes of spelling and units; those of the trade are left to the checks.</summary>
    [Theory]
    [InlineData("hatch-lid", "mix ratio does not say", "ratio-without-basis")]
    [InlineData("hatch-lid", "bare number", "bare-number")]
    [InlineData("hatch-lid", "pvc-hose was meant", "unknown-name")]
    [InlineData("instrument-housing", "an ounce is a mass", "cloth-in-ounces")]
    [InlineData("instrument-housing", "two plies have the name", "duplicate-name")]
    [InlineData("instrument-housing", "vacuum does not say", "vacuum-without-convention")]
    [InlineData("rudder-cheek", "a mass where a length", "wrong-kind-of-unit")]
    [InlineData("telescope-tube", "a second material of the name", "duplicate-name")]
    public void A_planted_mistake_is_found_on_its_line(string sample, string comment, string finding)
    {
        var bound = Shipped.Bind($"{Mistakes}/{sample}.recipe");
        var lines = Repository.Read($"{Mistakes}/{sample}.recipe").Split('\n');
        var line = Array.FindIndex(lines, l => l.Contains("wrong: ", StringComparison.Ordinal) && l.Contains(comment, StringComparison.Ordinal));
        var found = Assert.Single(bound.Findings, f => f.Where.Start.Line == line);
        Assert.Equal(finding, found.Descriptor.Name);
        Assert.Equal(Severity.Error, found.Severity);
    }

    [Theory]
    [MemberData(nameof(MistakenFiles))]
    public void Nothing_is_found_where_no_mistake_was_planted(string path)
    {
        var lines = Repository.Read(path).Split('\n');
        var bound = Shipped.Bind(path);
        Assert.Empty(bound.Tree.Findings.Concat(bound.Findings).Where(f => !lines[f.Where.Start.Line].Contains("wrong: ", StringComparison.Ordinal)).Select(Told));
    }

    [Theory]
    [MemberData(nameof(MistakenFiles))]
    public void Each_fix_of_a_planted_mistake_settles_it(string path)
    {
        var bound = Shipped.Bind(path);
        Assert.NotEmpty(bound.Findings);
        Assert.All(bound.Findings, finding => FixCheck.Settles(bound, finding, text => Binder.Bind(Given.Tree(text, path), Shipped.Book, Shipped.Uses())));
    }

    private static string Told(Finding finding) => $"{finding.Where} {finding.Descriptor.Name}: {finding.Message}";
}
