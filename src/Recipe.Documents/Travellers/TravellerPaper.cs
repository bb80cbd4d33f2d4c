using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>
/// The traveller: it goes with the part from station to station and comes back filled in. Stations that have a card of their own have one
/// line or few here, which name it. Hold points H1 to H9 stand here and nowhere else; they keep their numbers whatever the process, so that a
/// hold point that does not apply is missed by nobody.
/// </summary>
internal static class TravellerPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document(context.Say("Traveller"), Stations(context));
    }

    private static IEnumerable<Station> Stations(BenchContext context)
    {
        var join = context.Part.Join;
        var joinsCured = join is not null && join.Manner?.Value != JoinManner.WetInWet;
        var finish = FinishOrder.Of(context.Part, joinsCured);
        yield return StartStation.Build(context);
        if (context.Part.IsAssembly)
        {
            yield return JoinStation.Build(context, join!);
            yield return FinishStation.BuildJoined(context, finish);
            yield return CloseStation.Build(context, finish);
            yield break;
        }

        yield return MouldStation.Build(context);
        yield return RouteStation.LayUp(context);
        if (join is not null && !joinsCured)
        {
            yield return JoinStation.Build(context, join);
        }

        var cure = RouteStation.Cure(context);
        var demould = joinsCured ? FinishStation.BuildApart(context, finish) : FinishStation.Build(context, finish);
        if (context.Process == Process.Infused)
        {
            // The infusion fills a page; what follows it has room on one with the finishing.
            yield return RouteStation.Infuse(context);
            yield return new Station(context.Say("Cure, demould, finish"), [.. cure.Blocks, .. demould.Blocks]);
        }
        else
        {
            yield return cure;
            yield return demould;
        }

        if (joinsCured)
        {
            yield return JoinStation.Build(context, join!);
            yield return FinishStation.BuildJoined(context, finish);
        }

        yield return CloseStation.Build(context, finish);
    }
}
