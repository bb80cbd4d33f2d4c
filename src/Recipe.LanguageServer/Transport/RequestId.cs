using System.Globalization;
using System.Text.Json;

namespace Recipe.LanguageServer.Transport;

/// <summary>The id of a request: a whole number or a text. The default value stands for the id that could not be read: null.</summary>
/// <param name="Number">The number, when it is one.</param>
/// <param name="Text">The text, when it is one.</param>
internal readonly record struct RequestId(long? Number, string? Text)
{
    public void Write(Utf8JsonWriter json)
    {
        if (Number is { } number)
        {
            json.WriteNumber("id"u8, number);
        }
        else if (Text is { } text)
        {
            json.WriteString("id"u8, text);
        }
        else
        {
            json.WriteNull("id"u8);
        }
    }

    public override string ToString() => Number?.ToString(CultureInfo.InvariantCulture) ?? Text ?? "null";
}
