using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Recipe.Documents.Json;
using Recipe.Planning.Exploring;

namespace Recipe.Documents;

/// <summary>A stretch of the candidates of a study and what came of it so far, to be gone on with or put together with others.</summary>
/// <param name="Schema">Name and version of the schema.</param>
/// <param name="Program">Version of the program that looked at them.</param>
/// <param name="Recipe">Hash of the recipe and of all texts that it rests on.</param>
/// <param name="Study">Name of the study.</param>
/// <param name="Today">The day for which candidates were checked; null when none was given.</param>
/// <param name="Number">Which of the stretches it is, from 1.</param>
/// <param name="Of">Into how many the candidates were cut; 1 for a whole run.</param>
/// <param name="From">The first candidate.</param>
/// <param name="Until">Just behind the last.</param>
/// <param name="Next">The next to be looked at; <paramref name="Until"/> when it is complete.</param>
/// <param name="Tally">What came of those before it.</param>
public sealed record StudyShard(string Schema, string Program, string Recipe, string Study, DateOnly? Today, int Number, int Of, long From, long Until, long Next, TallyRecord Tally)
{
    /// <summary>The name and version of the schema.</summary>
    public const string CurrentSchema = "recipe/exploration-shard/1";

    /// <summary>Whether all of its candidates were looked at.</summary>
    public bool IsComplete => Next == Until;

    /// <summary>Which stretch it is, in words.</summary>
    public string Name => $"{Quantities.Numbers.Whole(Number)}/{Quantities.Numbers.Whole(Of)}";

    /// <summary>As text; every number comes back to the last bit.</summary>
    public string Write() => JsonSerializer.Serialize(this, JsonOutput.Shapes.StudyShard) + "\n";

    /// <summary>Reads one; false when the text is none, or of another version of the schema.</summary>
    public static bool TryRead(string text, [NotNullWhen(true)] out StudyShard? shard)
    {
        try
        {
            shard = JsonSerializer.Deserialize(text, JsonOutput.Shapes.StudyShard);
            if (shard is not { Schema: CurrentSchema, Program: not null, Recipe: not null, Study: not null, Tally: { BrokenEach.IsDefault: false, Unknown.IsDefault: false, Front.IsDefault: false, FrontOfAll.IsDefault: false, Sketch.IsDefault: false } }
                || shard.Next < shard.From || shard.Next > shard.Until || shard.Number < 1 || shard.Number > shard.Of)
            {
                shard = null;
            }
        }
        catch (Exception problem) when (problem is JsonException or NotSupportedException or InvalidOperationException)
        {
            shard = null;
        }

        return shard is not null;
    }
}
