using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Vacuums;

/// <summary>The vacuum card: the level and its proof.</summary>
internal static class VacuumPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Vacuum card", VacuumStation.Stations(context)) with { OnePlace = true };
    }
}
