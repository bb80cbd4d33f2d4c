using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;

namespace Recipe.Documents.Json;

/// <summary>The shapes of the JSON documents, generated at build time: nothing is looked up by reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(PlanRecord))]
[JsonSerializable(typeof(FindingsRecord))]
[JsonSerializable(typeof(ChangesRecord))]
[JsonSerializable(typeof(ComparisonRecord))]
[JsonSerializable(typeof(ExplorationRecord))]
[JsonSerializable(typeof(StudyShard))]
[JsonSerializable(typeof(HistoryRecord))]
[JsonSerializable(typeof(LearntRecord))]
[JsonSerializable(typeof(ShelfCountRecord))]
[JsonSerializable(typeof(ShapeRecord))]
internal sealed partial class JsonShapes : JsonSerializerContext;

/// <summary>How the JSON documents are written: indented, LF, letters of all scripts as they are, everything that HTML could trip over escaped.</summary>
internal static class JsonOutput
{
    public static JsonShapes Shapes { get; } = new(new JsonSerializerOptions(JsonShapes.Default.Options)
    {
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        NewLine = "\n",
    });
}
