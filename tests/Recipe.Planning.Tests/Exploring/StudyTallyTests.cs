using CsCheck;
using Recipe.Model;
using Recipe.Planning.Exploring;
using UnitsNet;

namespace Recipe.Planning.Tests.Exploring;

/// <summary>What is counted of a study: the front against every pair compared, in any order, in any parts, with errors among the best.</summary>
public class StudyTallyTests
{
    private static readonly RecipeModel Model = Corpus.Model("samples/hatch-lid-lighter.recipe");
    private static readonly CandidatePlanner Planner = new(Model.Studies[0], Model);
    private static readonly Candidate[] All = [.. Enumerable.Range(0, (int)Planner.Study.Candidates).Select(i => Planner.Look(i))];

    [Fact]
    public void No_feasible_candidate_dominates_a_member_of_the_front_and_all_others_are_dominated()
    {
        var front = Of(All, _ => true).Front.Select(point => point.Index).ToHashSet();
        var feasible = All.Where(candidate => candidate.Fate == CandidateFate.Feasible).ToList();
        Assert.NotEmpty(front);
        Assert.All(feasible, candidate => Assert.Equal(front.Contains(candidate.Index), !feasible.Exists(other => Dominates(other, candidate))));
    }

    [Fact]
    public void Order_and_parts_do_not_count_and_errors_make_room_for_others() => Gen.Select(Gen.Int, Gen.Int[1, 4], Gen.Int[2, 50]).Sample(
        (seed, parts, oneIn) =>
        {
            // Unsound without regard to how good it is.
            bool IsSound(long index) => (index * 7919 % 101) % oneIn != 0;
            var expected = Text(Of(All, IsSound));
            var shuffled = All.ToArray();
            new Random(seed).Shuffle(shuffled);
            var joined = new StudyTally(Planner);
            foreach (var part in shuffled.Chunk((shuffled.Length / parts) + 1))
            {
                var tally = new StudyTally(Planner);
                foreach (var batch in part.Chunk(37))
                {
                    tally.Take(batch, indices => [.. indices.Select(IsSound)]);
                }

                joined.Add(tally.ToRecord());
            }

            Assert.Equal(expected, Text(joined));
            var sound = All.Where(candidate => candidate.Fate == CandidateFate.Feasible && IsSound(candidate.Index)).ToList();
            Assert.Equal(
                sound.Where(candidate => !sound.Exists(other => Dominates(other, candidate))).Select(candidate => candidate.Index),
                joined.Front.Select(point => point.Index));
        },
        iter: 40);

    [Fact]
    public void Few_are_asked_about()
    {
        var asked = new List<long>();
        var tally = new StudyTally(Planner);
        tally.Take(All, indices =>
        {
            asked.AddRange(indices);
            return [.. indices.Select(_ => true)];
        });
        Assert.Equal(tally.Front.Length, asked.Count);
        Assert.Equal(asked.Distinct().Count(), asked.Count);
    }

    [Fact]
    public void Every_candidate_is_counted_once()
    {
        var tally = Of(All, _ => true);
        Assert.Equal(Planner.Study.Candidates, tally.Tried);
        Assert.Equal(tally.Tried, tally.Repeated + tally.Feasible + tally.Broken + tally.Unknown.Values.Sum());
        Assert.Equal(All.Count(candidate => candidate.Breaks.Contains(0)), tally.BrokenEach[0]);
    }

    [Fact]
    public void A_tally_of_another_study_is_refused() =>
        Assert.Throws<ArgumentException>(() => new StudyTally(Planner).Add(Of(All, _ => true).ToRecord() with { BrokenEach = [1] }));

    [Fact]
    public void The_part_as_written_is_the_candidate_that_changes_nothing()
    {
        // body glass-twill-280, back glass-twill-280, 0/90, veil once, inner once; its content of 45 % lies between two options.
        var near = All.Where(candidate => Planner.Study.OptionsOf(candidate.Index).Take(5).SequenceEqual([1, 2, 0, 1, 0])).ToList();
        Assert.Equal(5, near.Count);
        var mass = Planner.AsWritten.Values[0]!.Value;
        Assert.True(near[2].Values[0] < mass && mass < near[3].Values[0]);
        Assert.Equal(PlanFigures.Of(PartFigure.Mass, Planning.Planner.Plan(Planner.Study.Part!, Model)), mass);
    }

    [Fact]
    public void Every_figure_of_a_candidate_is_that_of_its_whole_plan()
    {
        var where = Planner.Study.Where;
        Figure<Temperature> Room(double celsius) => new(Temperature.FromDegreesCelsius(celsius), Basis.Stated, $"{celsius} degC", where);
        StudyOption Resin(string name) => new(name, new PutResin((ResinSystem)Model.Materials[name], where));
        var study = Planner.Study with
        {
            Choices =
            [
                .. Planner.Study.Choices,
                new StudyChoice("room", null, [.. ((double[])[16, 20, 26]).Select(celsius => new StudyOption($"{celsius}", new PutRoom(Room(celsius))))], where),
                new StudyChoice("resin", null, [Resin("slow-laminating-epoxy"), Resin("laminating-epoxy")], where),
            ],
            Limits = [],
            Wants = [.. Enum.GetValues<PartFigure>().Where(figure => figure is not (PartFigure.Fill or PartFigure.TimesOver)).Select(figure => new StudyWant(figure, true, where))],
        };
        var planner = new CandidatePlanner(study, Model);
        Gen.Long[0, study.Candidates - 1].Sample(
            index =>
            {
                var plan = planner.PlanOf(index);
                Assert.Equal(study.Figures.Select(figure => PlanFigures.Of(figure, plan)), planner.Look(index).Values.AsEnumerable());
            },
            iter: 60);
    }

    private static StudyTally Of(IReadOnlyCollection<Candidate> candidates, Func<long, bool> isSound)
    {
        var tally = new StudyTally(Planner);
        tally.Take(candidates, indices => [.. indices.Select(isSound)]);
        return tally;
    }

    private static string Text(StudyTally tally)
    {
        var record = tally.ToRecord();
        return $"{record.Tried} {record.Feasible} {record.Broken} {string.Join(' ', record.BrokenEach)} | {string.Join(' ', record.Front.Select(point => point.Index))} | {string.Join(' ', record.FrontOfAll.Select(point => point.Index))} | {string.Join(' ', record.Sketch)}";
    }

    // By the definition, on the figures themselves: lighter or as light, stiffer or as stiff, and not both as.
    private static bool Dominates(Candidate one, Candidate other)
    {
        var (mass, bending) = (Compare(one.Values[0], other.Values[0]), Compare(one.Values[1], other.Values[1]));
        return mass <= 0 && bending >= 0 && (mass, bending) != (0, 0);
    }

    private static int Compare(double? a, double? b) => Math.Abs(a!.Value - b!.Value) <= Math.Abs(a.Value) * 2e-10 ? 0 : a.Value.CompareTo(b.Value);
}
