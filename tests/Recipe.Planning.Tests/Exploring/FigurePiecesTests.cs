using Recipe.Model;

namespace Recipe.Planning.Tests.Exploring;

/// <summary>A plan with some of its pieces says of them what the whole plan says, to the last digit.</summary>
public class FigurePiecesTests
{
    public static TheoryData<string, string> Parts => CorpusTests.Parts;

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_figure_needs_no_more_than_its_pieces(string path, string name)
    {
        var model = Corpus.Model(path);
        var part = model.Parts.Single(p => p.Name == name);
        var whole = Planner.Plan(part, model);
        foreach (var figure in Enum.GetValues<PartFigure>())
        {
            Assert.Equal(PlanFigures.Of(figure, whole), PlanFigures.Of(figure, Planner.Plan(part, model, FigurePieces.Of(figure))));
        }
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void What_a_record_keeps_needs_no_more_than_its_pieces(string path, string name)
    {
        var model = Corpus.Model(path);
        var part = model.Parts.Single(p => p.Name == name);
        var (whole, some) = (PlannedFiguresOf.Plan(Planner.Plan(part, model)), PlannedFiguresOf.Plan(Planner.Plan(part, model, PlannedFiguresOf.Pieces)));
        Assert.Equal(whole.Cloths.AsEnumerable(), some.Cloths.AsEnumerable());
        Assert.Equal(whole.Bag.AsEnumerable(), some.Bag.AsEnumerable());
        Assert.Equal(whole with { Cloths = [], Bag = [] }, some with { Cloths = [], Bag = [] });
    }

    /// <summary>A part that comes out as planned has the planned share of resin: what is neither fibre nor its resin is taken off, with the resin in the faces of a core.</summary>
    [Theory]
    [MemberData(nameof(Parts))]
    public void The_share_found_on_a_part_as_planned_is_the_share_planned(string path, string name)
    {
        var model = Corpus.Model(path);
        var plan = Planner.Plan(model.Parts.Single(p => p.Name == name), model);
        if (plan.Laminate is { } laminate && PlannedFiguresOf.Plan(plan).Other is { } other)
        {
            var alone = (laminate.TrimmedMass.Value.Value - other).Grams;
            Assert.Equal(laminate.ResinFraction.Value, (alone - laminate.Fibre.Value.Grams) / alone, 6);
        }
    }

    [Fact]
    public void Most_figures_are_known_of_some_part()
    {
        var plans = Corpus.Sound.SelectMany(path => Corpus.Model(path).Parts.Select(part => Planner.Plan(part, Corpus.Model(path)))).ToList();
        var unknown = Enum.GetValues<PartFigure>().Where(figure => plans.All(plan => PlanFigures.Of(figure, plan) is null));
        Assert.Empty(unknown);
    }

    [Fact]
    public void What_was_not_asked_for_is_not_there()
    {
        var model = Corpus.Model("samples/hatch-lid.recipe");
        var plan = Planner.Plan(model.Parts[0], model, PlanPieces.Laminate);
        Assert.NotNull(plan.Laminate);
        Assert.Null(plan.Stiffness);
        Assert.Null(plan.Resin);
        Assert.Null(plan.Cure);
        Assert.Null(plan.Cost);
        Assert.Empty(plan.Nests);
        Assert.Empty(plan.Takeoff);
    }
}
