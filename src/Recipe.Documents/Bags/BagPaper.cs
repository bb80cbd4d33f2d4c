using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Bags;

/// <summary>The bag sheet: the bag from the part outwards.</summary>
internal static class BagPaper
{
    /// <summary>Whether the part comes under a bag at all.</summary>
    public static bool Applies(PaperInput input) =>
        input.Plan.Part is var part && (part.Bag is not null || part.Vacuum is not null || part.Process.Value != Process.Hand);

    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Bag sheet", BagStation.Stations(context)) with { OnePlace = true };
    }
}
