using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Cures;

/// <summary>The cure chart: heat and vacuum against the clock, the steps, and spaces for the readings.</summary>
internal static class CurePaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Cure chart", CureStation.Stations(context)) with { OnePlace = true };
    }
}
