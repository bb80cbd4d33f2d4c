using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Recipe.LanguageServer.Transport;

/// <summary>Writes messages, each whole, from whichever thread. A client that has gone away is noticed by the reader, not here.</summary>
internal sealed class MessageWriter(Stream output)
{
    private static readonly JsonWriterOptions Options = new()
    {
        // The reader is an editor, not a web page: letters stay letters.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        SkipValidation = true,
    };

    private readonly Lock _gate = new();
    private readonly ArrayBufferWriter<byte> _body = new(16 * 1024);

    public void Result<T>(RequestId id, T? result, JsonTypeInfo<T> type) => Write(json =>
    {
        id.Write(json);
        json.WritePropertyName("result"u8);
        WriteValue(json, result, type);
    });

    public void Error(RequestId id, int code, string message) => Write(json =>
    {
        id.Write(json);
        json.WriteStartObject("error"u8);
        json.WriteNumber("code"u8, code);
        json.WriteString("message"u8, message);
        json.WriteEndObject();
    });

    public void Notification<T>(string method, T parameters, JsonTypeInfo<T> type) => Write(json =>
    {
        json.WriteString("method"u8, method);
        json.WritePropertyName("params"u8);
        WriteValue(json, parameters, type);
    });

    public void Request<T>(RequestId id, string method, T? parameters, JsonTypeInfo<T>? type) => Write(json =>
    {
        id.Write(json);
        json.WriteString("method"u8, method);
        if (type is not null)
        {
            json.WritePropertyName("params"u8);
            WriteValue(json, parameters, type);
        }
    });

    private static void WriteValue<T>(Utf8JsonWriter json, T? value, JsonTypeInfo<T> type)
    {
        if (value is null)
        {
            json.WriteNullValue();
        }
        else
        {
            JsonSerializer.Serialize(json, value, type);
        }
    }

    private void Write(Action<Utf8JsonWriter> members)
    {
        lock (_gate)
        {
            _body.ResetWrittenCount();
            using (var json = new Utf8JsonWriter(_body, Options))
            {
                json.WriteStartObject();
                json.WriteString("jsonrpc"u8, "2.0"u8);
                members(json);
                json.WriteEndObject();
            }

            Span<byte> header = stackalloc byte[48];
            var length = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"Content-Length: {_body.WrittenCount}\r\n\r\n"), header);
            try
            {
                output.Write(header[..length]);
                output.Write(_body.WrittenSpan);
                output.Flush();
            }
            catch (Exception problem) when (problem is IOException or ObjectDisposedException)
            {
                // Nobody is left to tell.
            }
        }
    }
}
