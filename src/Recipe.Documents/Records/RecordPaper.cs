using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Records;

/// <summary>The build record: what was found on the part.</summary>
internal static class RecordPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new BenchContext(input);
        return context.Document("Build record", [RecordStation.Build(context)]);
    }
}
