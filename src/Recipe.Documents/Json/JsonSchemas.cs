using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Recipe.Documents.Json;

namespace Recipe.Documents;

/// <summary>
/// The schemas of what is written for programs, as JSON Schema (draft 2020-12). They are made from the records that are written, so the two cannot drift apart.
/// </summary>
public static class JsonSchemas
{
    private static readonly ImmutableArray<(string Name, string Command, JsonTypeInfo Root)> Roots =
    [
        (FindingsJson.Schema, "recipe check --format json", JsonOutput.Shapes.FindingsRecord),
        (PlanJson.Schema, "recipe build --format json", JsonOutput.Shapes.PlanRecord),
        (ChangeReport.Schema, "recipe diff --format json", JsonOutput.Shapes.ChangesRecord),
        (PartsReport.Schema, "recipe compare --format json", JsonOutput.Shapes.ComparisonRecord),
        (StudyReport.Schema, "recipe explore --format json", JsonOutput.Shapes.ExplorationRecord),
        (HistoryReport.Schema, "recipe history --format json", JsonOutput.Shapes.HistoryRecord),
        (LearningReport.Schema, "recipe learn --format json", JsonOutput.Shapes.LearntRecord),
        (ShelfReport.Schema, "recipe stock --format json", JsonOutput.Shapes.ShelfCountRecord),
    ];

    /// <summary>What the last word of a key says: the unit of its number. A unit of several words stands in the key in full and is not said again.</summary>
    private static readonly ImmutableDictionary<string, string> Units = ImmutableDictionary.CreateRange(
        StringComparer.Ordinal,
        [
            KeyValuePair.Create("m", "metres"), KeyValuePair.Create("m2", "square metres"), KeyValuePair.Create("m3", "cubic metres"), KeyValuePair.Create("kg", "kilograms"),
            KeyValuePair.Create("s", "seconds"), KeyValuePair.Create("Pa", "pascals"), KeyValuePair.Create("K", "kelvins"), KeyValuePair.Create("degC", "degrees Celsius"),
            KeyValuePair.Create("deg", "degrees of angle"), KeyValuePair.Create("N", "newtons"), KeyValuePair.Create("fraction", "parts of one"),
        ]);

    /// <summary>The names of the schemas, as the key <c>schema</c> of a document says it: <c>recipe/plan/1</c>.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Roots.Select(root => root.Name)];

    /// <summary>The name of the file that holds a schema: <c>recipe/plan/1</c> stands in <c>plan-1.schema.json</c>.</summary>
    /// <param name="name">The name of the schema.</param>
    public static string FileOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name[(name.IndexOf('/') + 1)..].Replace('/', '-') + ".schema.json";
    }

    /// <summary>Writes one schema: indented, lines ended by LF, the same text every time.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="ArgumentException">There is no schema of that name.</exception>
    public static string Write(string name)
    {
        var root = Roots.FirstOrDefault(known => known.Name == name);
        if (root.Root is null)
        {
            throw new ArgumentException($"There is no schema named '{name}'.", nameof(name));
        }

        var body = root.Root.GetJsonSchemaAsNode(new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Finish }).AsObject();
        ((JsonObject)body["properties"]!)["schema"] = new JsonObject { ["const"] = name };
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:" + name.Replace('/', ':'),
            ["title"] = name,
            ["description"] = $"What {root.Command} writes. The unit of a number stands in its key; null means not known. Within a version keys are added, never renamed or removed.",
        };
        foreach (var (key, value) in body)
        {
            schema[key] = value?.DeepClone();
        }

        return schema.ToJsonString(JsonOutput.Shapes.Options) + "\n";
    }

    /// <summary>Every key of a record is written, whatever it holds, unless the record says that it is left out when null; and what a unit at its end means is said.</summary>
    private static JsonNode Finish(JsonSchemaExporterContext context, JsonNode node)
    {
        if (node is not JsonObject schema)
        {
            return node;
        }

        if (context.TypeInfo.Kind == JsonTypeInfoKind.Object && schema["properties"] is JsonObject properties)
        {
            var mayBeAbsent = context.TypeInfo.Properties.Where(property => property.AttributeProvider?.IsDefined(typeof(JsonIgnoreAttribute), inherit: false) == true).Select(property => property.Name).ToHashSet();
            schema["required"] = new JsonArray([.. properties.Where(property => !mayBeAbsent.Contains(property.Key)).Select(property => (JsonNode)property.Key)]);
        }

        if (context.PropertyInfo is { } key && UnitOf(key.Name) is { } said)
        {
            schema["description"] = $"In {said}.";
        }

        return schema;
    }

    private static string? UnitOf(string key) =>
        key.Split('_') is [.., var before, var last] && before != "per" && !Units.ContainsKey(before) && !key.Contains("_per_", StringComparison.Ordinal) ? Units.GetValueOrDefault(last) : null;
}
