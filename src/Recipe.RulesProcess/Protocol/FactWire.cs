using System.Text.Json;
using Recipe.RuleApi;

namespace Recipe.RulesProcess.Protocol;

/// <summary>Sheets of facts on the wire: a fact is a list of its kind, its value and, when it is assumed, <c>true</c>.</summary>
internal static class FactWire
{
    /// <summary>Writes a sheet's members.</summary>
    public static void Write(Utf8JsonWriter json, FactSheet sheet)
    {
        json.WriteString("kind", sheet.Kind);
        json.WriteStartObject("facts");
        foreach (var (word, fact) in sheet.Facts.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            // JSON has no infinity and no NaN: such a fact is not known.
            if (double.IsFinite(fact.Value))
            {
                json.WriteStartArray(word);
                WriteFact(json, fact);
                json.WriteEndArray();
            }
        }

        json.WriteEndObject();
        json.WriteStartObject("elements");
        foreach (var (group, elements) in sheet.Elements.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            Wire.WriteObjects(json, group, elements, element => Write(json, element));
        }

        json.WriteEndObject();
    }

    /// <summary>Reads a sheet.</summary>
    /// <exception cref="JsonException">It is not one.</exception>
    public static FactSheet Read(JsonElement element)
    {
        var facts = new Dictionary<string, Fact>();
        var elements = new Dictionary<string, IReadOnlyList<FactSheet>>();
        foreach (var fact in Object(element, "facts"))
        {
            facts[fact.Name] = ReadFact(fact.Value);
        }

        foreach (var group in Object(element, "elements"))
        {
            elements[group.Name] = Wire.ReadList(group.Value, Read);
        }

        return new FactSheet(Wire.Text(element, "kind"), facts, elements);
    }

    private static void WriteFact(Utf8JsonWriter json, Fact fact)
    {
        switch (fact.Kind)
        {
            case FactKind.Quantity:
                json.WriteStringValue("q");
                json.WriteNumberValue(fact.Value);
                break;
            case FactKind.Number:
                json.WriteStringValue("n");
                json.WriteNumberValue(fact.Value);
                break;
            case FactKind.Word:
                json.WriteStringValue("w");
                json.WriteStringValue(fact.Text);
                break;
            case FactKind.Text:
                json.WriteStringValue("t");
                json.WriteStringValue(fact.Text);
                break;
            default:
                json.WriteStringValue("y");
                json.WriteNumberValue(fact.Value);
                break;
        }

        if (fact.IsAssumed)
        {
            json.WriteBooleanValue(true);
        }
    }

    private static Fact ReadFact(JsonElement fact)
    {
        if (fact.ValueKind != JsonValueKind.Array || fact.GetArrayLength() < 2)
        {
            throw new JsonException("a fact is a kind and a value");
        }

        var isAssumed = fact.GetArrayLength() > 2 && fact[2].ValueKind == JsonValueKind.True;
        return fact[0].GetString() switch
        {
            "q" => Fact.Quantity(fact[1].GetDouble(), isAssumed),
            "n" => Fact.Number(fact[1].GetDouble(), isAssumed),
            "w" => Fact.Word(fact[1].GetString() ?? "", isAssumed),
            "t" => Fact.Words(fact[1].GetString() ?? "", isAssumed),
            "y" => Fact.YesNo(fact[1].GetDouble() != 0, isAssumed),
            var kind => throw new JsonException($"a fact of kind '{kind}'"),
        };
    }

    private static JsonElement.ObjectEnumerator Object(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Object ? value.EnumerateObject() : throw new JsonException($"'{name}' is missing");
}
