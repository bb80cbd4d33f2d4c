using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
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

    /// <summary>What the last part of a key says: the unit of its number.</summary>
    private static readonly ImmutableArray<(string Ending, string Unit)> Units =
    [
        ("_kg_per_m2", "kg/m2"), ("_kg_per_m3", "kg/m3"), ("_n_per_m", "N/m"), ("_k_per_s", "K/s"), ("_pa_s", "Pa s"),
        ("_n_m", "N m"), ("_deg_c", "degrees Celsius"), ("_m2", "square metres"), ("_m3", "cubic metres"),
        ("_kg", "kilograms"), ("_pa", "pascals"), ("_deg", "degrees of angle"), ("_m", "metres"), ("_s", "seconds"), ("_k", "kelvins"), ("_n", "newtons"),
    ];

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
            ["description"] = $"What `{root.Command}` writes. The unit of a number stands in its key; null means not known. Within a version keys are added, never renamed or removed.",
        };
        foreach (var (key, value) in body)
        {
            schema[key] = value?.DeepClone();
        }

        return schema.ToJsonString(new JsonSerializerOptions(JsonOutput.Shapes.Options)) + "\n";
    }

    /// <summary>Every key of a record is written, whatever it holds; and what a unit at its end means is said.</summary>
    private static JsonNode Finish(JsonSchemaExporterContext context, JsonNode node)
    {
        if (node is not JsonObject schema)
        {
            return node;
        }

        if (context.TypeInfo.Kind == JsonTypeInfoKind.Object && schema["properties"] is JsonObject properties)
        {
            schema["required"] = new JsonArray([.. properties.Select(property => (JsonNode)property.Key)]);
        }

        if (context.PropertyInfo is { } key && Units.FirstOrDefault(unit => key.Name.EndsWith(unit.Ending, StringComparison.Ordinal)).Unit is { } said)
        {
            schema["description"] = string.Create(CultureInfo.InvariantCulture, $"In {said}.");
        }

        return schema;
    }
}
