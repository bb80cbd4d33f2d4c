using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>
/// The traveller: it goes with the part from station to station, one page for each, and comes back filled in. Hold points H1 to H9
/// keep their numbers whatever the process, so that a hold point that does not apply is missed by nobody.
/// </summary>
internal static class TravellerPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new TravellerContext(input);
        return new Document
        {
            Kind = "Traveller",
            Identity = context.Paper.Identity(ofOneBuild: true),
            Paper = context.Paper.Paper,
            ForTheBench = true,
            Stations = StepNumbers.Run(Stations(context)),
        };
    }

    private static IEnumerable<Station> Stations(TravellerContext context)
    {
        var join = context.Part.Join;
        var joinsCured = join is not null && join.Manner?.Value != JoinManner.WetInWet;
        var finish = FinishOrder.Of(context.Part, joinsCured);
        yield return StartStation.Build(context);
        yield return MouldStation.Build(context);
        yield return KitStation.Build(context);
        if (context.IsWet)
        {
            yield return MixStation.Build(context);
        }

        yield return LayUpStation.Build(context);
        if (join is not null && !joinsCured)
        {
            yield return JoinStation.Build(context, join);
        }

        if (context.Part.Bag is not null || context.Part.Vacuum is not null || context.Process != Process.Hand)
        {
            yield return BagStation.Build(context);
            yield return VacuumStation.Build(context);
        }

        if (context.Process == Process.Infused)
        {
            yield return MixStation.Build(context);
        }

        yield return CureStation.Build(context);
        if (joinsCured)
        {
            yield return FinishStation.BuildApart(context, finish);
            yield return JoinStation.Build(context, join!);
            yield return FinishStation.BuildJoined(context, finish);
        }
        else
        {
            yield return FinishStation.Build(context, finish);
        }

        yield return RecordStation.Build(context, finish);
        yield return LastStation(context);
    }

    private static Station LastStation(TravellerContext context) =>
        new("Lots and notes", [LotTable.Of(context), .. Notes.ForBench(context.Paper)]);
}
