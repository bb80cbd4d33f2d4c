using System.Collections.Immutable;
using System.Text.Json;
using Recipe.RuleApi;

namespace Recipe.RulesProcess.Protocol;

/// <summary>Descriptions of rules, on the wire and in the host's cache.</summary>
internal static class DescriptionWire
{
    /// <summary>Writes them as the list <c>rules</c>.</summary>
    public static void WriteAll(Utf8JsonWriter json, IEnumerable<RuleDescription> rules) => Wire.WriteObjects(json, "rules", rules, rule =>
    {
        json.WriteString("file", rule.File);
        json.WriteNumber("start", rule.Start);
        json.WriteNumber("end", rule.End);
        json.WriteString("name", rule.Name);
        json.WriteString("title", rule.Title);
        json.WriteString("reason", rule.Reason);
        json.WriteString("remedy", rule.Remedy);
        json.WriteString("source", rule.Source);
        json.WriteNumber("severity", (int)rule.Severity);
        json.WriteString("exceptions", rule.Exceptions);
        json.WriteString("bad", rule.BadExample);
        json.WriteString("good", rule.GoodExample);
    });

    /// <summary>Reads the list <c>rules</c>.</summary>
    /// <exception cref="JsonException">It is not there, or not one.</exception>
    public static ImmutableArray<RuleDescription> ReadAll(JsonElement root) =>
        Wire.ReadList(root, "rules", one => new RuleDescription(
            Wire.Text(one, "file"),
            Wire.Whole(one, "start"),
            Wire.Whole(one, "end"),
            Wire.Text(one, "name"),
            Wire.Text(one, "title"),
            Wire.Text(one, "reason"),
            Wire.Text(one, "remedy"),
            Wire.Text(one, "source"),
            Severity(Wire.Whole(one, "severity")),
            Wire.Text(one, "exceptions"),
            Wire.Text(one, "bad"),
            Wire.Text(one, "good")));

    /// <summary>A severity from its number.</summary>
    /// <exception cref="JsonException">There is no such severity.</exception>
    public static RuleSeverity Severity(int number) =>
        number is >= (int)RuleSeverity.Advice and <= (int)RuleSeverity.Error ? (RuleSeverity)number : throw new JsonException($"severity {number}");
}
