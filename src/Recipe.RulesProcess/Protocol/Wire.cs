using System.Buffers;
using System.Collections.Immutable;
using System.Text.Json;

namespace Recipe.RulesProcess.Protocol;

/// <summary>
/// The protocol between the program and the rules host: one JSON object a line, in UTF-8. The host greets with its protocol and
/// version; then each request is answered by lines of progress and one answer.
/// </summary>
internal static class Wire
{
    /// <summary>Changes whenever a line changes its meaning.</summary>
    public const int Version = 1;

    /// <summary>The longest request that a host reads, in bytes.</summary>
    public const int LongestRequest = 64 << 20;

    private static readonly JsonDocumentOptions Reading = new() { MaxDepth = 16 };

    /// <summary>One line, with its end.</summary>
    public static byte[] Line(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { SkipValidation = true }))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Reads one line.</summary>
    /// <exception cref="JsonException">It is not JSON, or too deep.</exception>
    public static JsonDocument Parse(ReadOnlyMemory<byte> line) => JsonDocument.Parse(line, Reading);

    /// <summary>A text that must be there.</summary>
    /// <exception cref="JsonException">It is not.</exception>
    public static string Text(JsonElement element, string name) => MaybeText(element, name) ?? throw new JsonException($"'{name}' is missing");

    /// <summary>A text, or null.</summary>
    public static string? MaybeText(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    /// <summary>A whole number that must be there.</summary>
    /// <exception cref="JsonException">It is not.</exception>
    public static int Whole(JsonElement element, string name) => MaybeWhole(element, name) ?? throw new JsonException($"'{name}' is missing");

    /// <summary>A whole number, or null.</summary>
    public static int? MaybeWhole(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var number) ? number : null;

    /// <summary>Reads a list that must be there.</summary>
    /// <exception cref="JsonException">It is not.</exception>
    public static ImmutableArray<T> ReadList<T>(JsonElement element, string name, Func<JsonElement, T> read)
        where T : class =>
        element.TryGetProperty(name, out var value) ? ReadList(value, read) : throw new JsonException($"'{name}' is missing");

    /// <summary>Reads a list.</summary>
    /// <remarks>
    /// A loop over references, and no query over elements of JSON: for those the framework holds no code compiled ahead of time, and the
    /// host would begin with compiling it.
    /// </remarks>
    /// <exception cref="JsonException">It is none.</exception>
    public static ImmutableArray<T> ReadList<T>(JsonElement list, Func<JsonElement, T> read)
        where T : class
    {
        if (list.ValueKind != JsonValueKind.Array)
        {
            throw new JsonException("a list is missing");
        }

        var items = ImmutableArray.CreateBuilder<T>(list.GetArrayLength());
        foreach (var item in list.EnumerateArray())
        {
            items.Add(read(item));
        }

        return items.MoveToImmutable();
    }

    /// <summary>Writes a list.</summary>
    public static void WriteList<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(item);
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a list of objects.</summary>
    public static void WriteObjects<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write) =>
        WriteList(json, name, items, item =>
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        });
}
