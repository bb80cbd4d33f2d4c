using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Recipe.LanguageServer.Protocol;

/// <summary>
/// Reads the text of a document whatever it holds. Half of a surrogate pair, or bytes that are no UTF-8, become the replacement
/// character: refusing a change would leave the server with another text than the editor's from then on.
/// </summary>
internal sealed class LooseText : JsonConverter<string>
{
    /// <summary>A text among parameters that are read later; null when it is no text, or bytes that are no UTF-8.</summary>
    public static string? Of(JsonElement element)
    {
        if (element.ValueKind != JsonValueKind.String)
        {
            return null;
        }

        try
        {
            return element.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half of a pair is written as an escape; what is left are bytes that cannot be read at all.
            return TryRaw(element) is { } raw ? Replaced(raw[1..^1]) : null;
        }
    }

    private static string? TryRaw(JsonElement element)
    {
        try
        {
            return element.GetRawText();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.String)
        {
            throw new JsonException();
        }

        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            return Replaced(Encoding.UTF8.GetString(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan));
        }
    }

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WriteStringValue(value);

    private static string Replaced(string escaped)
    {
        var text = new StringBuilder(escaped.Length);
        for (var i = 0; i < escaped.Length; i++)
        {
            if (escaped[i] != '\\')
            {
                text.Append(escaped[i]);
                continue;
            }

            // The reader has checked the escapes.
            var kind = escaped[++i];
            if (kind == 'u')
            {
                text.Append((char)Convert.ToUInt16(escaped.Substring(i + 1, 4), 16));
                i += 4;
            }
            else
            {
                text.Append(kind switch { 'n' => '\n', 'r' => '\r', 't' => '\t', 'b' => '\b', 'f' => '\f', _ => kind });
            }
        }

        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                text[i] = '\uFFFD';
            }
        }

        return text.ToString();
    }
}
