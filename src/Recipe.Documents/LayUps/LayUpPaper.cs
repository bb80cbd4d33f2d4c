using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.LayUps;

/// <summary>The lay-up card: ply by ply from the mould.</summary>
internal static class LayUpPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Lay-up card", LayUpStation.Stations(context)) with { OnePlace = true };
    }
}
