using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using Json.Schema;
using Recipe.Documents;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>What is written for programs keeps to the schemas in <c>grammar/schema</c>, as a validator sees it that knows nothing of this program.</summary>
public sealed class JsonSchemaTests
{
    private const string Folder = "grammar/schema";

    private static readonly EvaluationOptions AllErrors = new() { OutputFormat = OutputFormat.List };

    /// <summary>Sound recipes that have in their plans what no sample has.</summary>
    private static readonly string[] OfTheCorpus =
        ["prepreg-eight-plies-debulk", "join-cured-then-bonded-rudder", "carbon-high-shop-us-units", "mould-on-pattern", "infusion-two-feed-lines", "structural-mast-step-loads", "whole-shop-stock-and-prices"];

    private static readonly ConcurrentDictionary<string, JsonSchema> Kept = new(StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. JsonSchemas.Names];

    public static TheoryData<string> Samples => [.. Files("samples").Concat(Files("samples/shapes")).Concat(Files("samples/house-rules")).Concat(OfTheCorpus.Select(name => $"tests/corpus/sound/{name}.recipe"))];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_schema_is_fresh_and_keeps_to_the_schema_of_schemas(string name)
    {
        var path = $"{Folder}/{JsonSchemas.FileOf(name)}";
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            File.WriteAllText(Repository.PathOf(path), JsonSchemas.Write(name));
        }

        Assert.True(File.Exists(Repository.PathOf(path)), $"{path} is missing: run the tests once with RECIPE_UPDATE_GOLDENS=1.");
        Assert.Equal(Repository.Read(path).ReplaceLineEndings("\n"), JsonSchemas.Write(name));
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonNode.Parse(JsonSchemas.Write(name)), AllErrors).IsValid);
        Assert.Contains($"]({JsonSchemas.FileOf(name)})", Repository.Read($"{Folder}/README.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_schemas_of_today_stand_in_the_folder() =>
        Assert.Equal(JsonSchemas.Names.Select(JsonSchemas.FileOf).Order(StringComparer.Ordinal), Directory.EnumerateFiles(Repository.PathOf(Folder), "*.json").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Samples))]
    public void Plans_and_findings_of_a_recipe_keep_to_their_schemas(string path)
    {
        using var bench = new Bench();
        Assert.Equal(ExitStatus.Clean, Bench.Run("build", Repository.PathOf(path), "--format", "json", "--out", bench.Folder).Status);
        var plans = Directory.EnumerateFiles(bench.Folder, "*.json").Select(File.ReadAllText).ToArray();
        Assert.All(plans, plan => Holds(plan, "recipe/plan/1"));
        Holds(Bench.Run("check", Repository.PathOf(path), "--format", "json").Out, "recipe/findings/1");
    }

    [Fact]
    public void Findings_with_fixes_and_labels_keep_to_their_schema() =>
        Assert.All(Files("samples/mistakes"), path => Holds(Bench.Run("check", Repository.PathOf(path), "--format", "json").Out, "recipe/findings/1"));

    [Theory]
    [InlineData("recipe/changes/1", "diff", "samples/hatch-lid.recipe", "samples/rudder-cheek.recipe", "--format", "json")]
    [InlineData("recipe/comparison/1", "compare", "samples/rudder-cheek.recipe", "samples/hatch-lid.recipe", "--format", "json")]
    [InlineData("recipe/exploration/1", "explore", "samples/hatch-lid-lighter.recipe", "--format", "json")]
    [InlineData("recipe/history/1", "history", "hatch-lid", "--in", "samples", "--format", "json")]
    [InlineData("recipe/learnt/1", "learn", "samples/records", "--format", "json")]
    [InlineData("recipe/shelf/1", "stock", "samples", "--for", "hatch-lid", "--format", "json")]
    public void What_a_verb_writes_keeps_to_its_schema(string schema, params string[] words)
    {
        var run = Bench.Run([.. words.Select(word => word.StartsWith("samples", StringComparison.Ordinal) ? Repository.PathOf(word) : word)]);
        Assert.True(run.Status != ExitStatus.CouldNotRun, run.Error);
        Holds(run.Out, schema);
    }

    [Fact]
    public void A_document_that_strays_is_caught()
    {
        var plain = JsonNode.Parse(Bench.Run("check", Repository.PathOf("samples/mistakes/hatch-lid.recipe"), "--format", "json").Out)!.AsObject();
        Assert.True(Valid(plain, "recipe/findings/1"));
        plain["findings"]![0]!["where"]!["line"] = "12";
        Assert.False(Valid(plain, "recipe/findings/1"));
        plain["findings"]![0]!["where"]!["line"] = 12;
        plain["findings"]![0]!.AsObject().Remove("code");
        Assert.False(Valid(plain, "recipe/findings/1"));
        Assert.False(Valid(new JsonObject { ["schema"] = "recipe/findings/1" }, "recipe/findings/1"));
    }

    private static void Holds(string text, string schema)
    {
        var document = JsonNode.Parse(text)!;
        if (Valid(document, schema))
        {
            return;
        }

        var result = SchemaOf(schema).Evaluate(document, AllErrors);
        var errors = result.Details.Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"));
        Assert.Fail(string.Join('\n', errors.Take(10)));
    }

    private static bool Valid(JsonNode document, string schema) => SchemaOf(schema).Evaluate(document).IsValid;

    private static JsonSchema SchemaOf(string name) => Kept.GetOrAdd(name, known => JsonSchema.FromText(Repository.Read($"{Folder}/{JsonSchemas.FileOf(known)}")));

    private static IEnumerable<string> Files(string folder) =>
        Directory.EnumerateFiles(Repository.PathOf(folder), "*.recipe").Select(file => $"{folder}/{Path.GetFileName(file)}").Order(StringComparer.Ordinal)
            .Where(file => Repository.Read(file).Contains("\npart ", StringComparison.Ordinal));
}
