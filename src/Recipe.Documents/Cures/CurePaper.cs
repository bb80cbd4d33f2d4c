using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Cures;

/// <summary>The cure chart: heat against the clock.</summary>
internal static class CurePaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Cure chart", [CureStation.Build(context)]);
    }
}
