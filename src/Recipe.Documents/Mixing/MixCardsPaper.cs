using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Mixing;

/// <summary>The mix cards: every pot that is weighed and mixed.</summary>
internal static class MixCardsPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Mix cards", [.. CoatMix.Stations(context), MixStation.Build(context), .. JoinMix.Stations(context)]);
    }
}
