using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Cuts;

/// <summary>The cut list: everything that is cut before anything is mixed.</summary>
internal static class CutListPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Cut list", [KitStation.Build(context)]);
    }
}
