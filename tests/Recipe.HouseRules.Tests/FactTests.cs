using Recipe.Model;
using Recipe.Planning;
using Recipe.TestKit;
using Recipe.Text.Findings;

namespace Recipe.HouseRules.Tests;

public class FactTests
{
    private static IEnumerable<FactGroup> Groups => FactTable.Elements.Prepend(FactTable.Part);

    [Fact]
    public void Words_are_in_one_form_and_each_once()
    {
        Assert.All(Groups.SelectMany(g => g.Facts).SelectMany(f => f.Choices.Add(f.Word)), word => Assert.True(FindingDescriptor.IsName(word), word));
        Assert.All(Groups, group => Assert.Equal(group.Facts.Length, group.Facts.Select(f => f.Word).Distinct().Count()));
        Assert.All(Groups.SelectMany(g => g.Facts), fact => Assert.False(string.IsNullOrWhiteSpace(fact.Doc)));
    }

    // A word that begins a condition cannot be a fact too.
    [Theory]
    [InlineData("where")]
    [InlineData("keep")]
    [InlineData("any")]
    [InlineData("every")]
    [InlineData("no")]
    [InlineData("count")]
    [InlineData("sum")]
    [InlineData("least")]
    [InlineData("most")]
    [InlineData("either")]
    [InlineData("not")]
    [InlineData("is")]
    [InlineData("known")]
    [InlineData("unknown")]
    public void Words_of_conditions_are_no_facts(string word) => Assert.All(Groups, group => Assert.Null(group.Find(word)));

    // One vocabulary: what `explore` and `diff` call a figure, a rule calls so too, and it is the same number.
    [Fact]
    public void Figures_are_facts_with_the_same_value()
    {
        var compared = 0;
        foreach (var (plan, facts) in Plans())
        {
            foreach (var figure in Enum.GetValues<PartFigure>())
            {
                var expected = PlanFigures.Of(figure, plan);
                Assert.Equal(expected, facts.Find(figure.Word())?.Si);
                compared += expected is null ? 0 : 1;
            }
        }

        Assert.True(compared > 100, $"{compared} figures");
    }

    [Fact]
    public void Every_fact_is_known_of_some_part()
    {
        var known = new HashSet<(string, string)>();
        foreach (var (_, facts) in Plans())
        {
            foreach (var node in FactTable.Elements.SelectMany(group => facts.All(group)).Prepend(facts))
            {
                known.UnionWith(node.Group.Facts.Where(f => node.Find(f.Word) is not null).Select(f => (node.Group.Word, f.Word)));
            }
        }

        Assert.Empty(Groups.SelectMany(g => g.Facts, (g, f) => (g.Word, f.Word)).Except(known).Select(pair => $"{pair.Item1} {pair.Item2}"));
    }

    [Fact]
    public void Words_that_can_be_are_those_that_are()
    {
        foreach (var (_, facts) in Plans())
        {
            foreach (var node in FactTable.Elements.SelectMany(group => facts.All(group)).Prepend(facts))
            {
                Assert.All(node.Group.Facts.Where(f => !f.Choices.IsEmpty), fact =>
                {
                    if (node.Find(fact.Word)?.Word is { } word)
                    {
                        Assert.Contains(word, fact.Choices);
                    }
                });
            }
        }
    }

    [Fact]
    public void Facts_are_of_the_kind_that_the_table_says()
    {
        foreach (var (_, facts) in Plans())
        {
            foreach (var node in FactTable.Elements.SelectMany(group => facts.All(group)).Prepend(facts))
            {
                foreach (var fact in node.Group.Facts)
                {
                    if (node.Find(fact.Word) is { } value)
                    {
                        Assert.Equal(fact.IsNumeric, double.IsFinite(value.Si));
                        Assert.Equal(fact.Kind is FactKind.Word or FactKind.Text, value.Word is not null);
                        Assert.Equal(fact.Kind == FactKind.YesNo, value.Yes is not null);
                    }
                }
            }
        }
    }

    [Fact]
    public void What_is_assumed_is_known_to_be()
    {
        var bound = Bench.Bind("mould m { surface flat 300 mm x 200 mm }\npart p { mould m; process hand; resin slow-laminating-epoxy; plies { a glass-twill-163 0/90 } }");
        var facts = PlanFacts.Of(Planner.Plan(bound.Model.Parts[0], bound.Model));
        Assert.NotEmpty(facts.Find("room")!.RestsOn);
        Assert.Empty(facts.Find("area")!.RestsOn);
    }

    // So thick that it heats itself.
    private const string Thick = """
        mould block-mould {
          surface              flat 300 mm x 200 mm
          pulls-since-release  2
        }
        part block {
          mould    block-mould
          process  hand
          resin    slow-laminating-epoxy
          stagger  40 mm
          plies    { body glass-woven-roving-600 0/90 x30 }
          wet-out { room 20 degC; laminators 1; resin-content 50 % by weight }
          cure { hold 20 degC for 24 h }
        }
        """;

    private static readonly Lazy<(Plan Plan, FactNode Facts)[]> Planned = new(() => [.. PlanAll()]);

    private static (Plan Plan, FactNode Facts)[] Plans() => Planned.Value;

    private static IEnumerable<(Plan Plan, FactNode Facts)> PlanAll()
    {
        var files = new Files();
        foreach (var path in Directory.EnumerateFiles(Repository.PathOf("samples"), "*.recipe", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(Repository.PathOf("tests/corpus/sound"), "*.recipe")))
        {
            files.Texts[path.Replace('\\', '/')] = File.ReadAllText(path);
        }

        files.Texts["tray.recipe"] = Bench.Tray;
        files.Texts["thick.recipe"] = Thick;
        foreach (var name in files.Texts.Keys.Where(name => !name.Contains("/mistakes/", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            foreach (var plan in files.Compile(name).Plans)
            {
                yield return (plan, PlanFacts.Of(plan));
            }
        }
    }
}
