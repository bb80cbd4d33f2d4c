using System.Text.Json;
using Recipe.Documents.Json;

namespace Recipe.Documents;

/// <summary>A plan for programs: everything that any paper shows, and where it comes from.</summary>
public static class PlanJson
{
    /// <summary>The name and version of the schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/plan/1";

    /// <summary>
    /// The plan in SI, the unit in each key's name (<c>area_m2</c>, <c>need_s</c>); a temperature stands in kelvin with degrees
    /// Celsius beside it. Null means not known. <c>rests_on</c> names, for a key of the same object, the assumptions behind it.
    /// Quantities are of one part, takeoff and cost of all that are wanted (<c>part.quantity</c>).
    /// </summary>
    public static string Write(PaperInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return JsonSerializer.Serialize(PlanMapping.Of(input), JsonOutput.Shapes.PlanRecord) + "\n";
    }
}
