using System.Text.Json;

namespace Recipe.LanguageServer.Transport;

/// <summary>Reads the envelope of a JSON-RPC 2.0 message. Whatever the bytes are, the answer is a message or a faulty one.</summary>
internal static class MessageParser
{
    /// <summary>No message of the protocol nests deeper; a deeper one is an accident or an attack.</summary>
    public const int DeepestNesting = 64;

    private static readonly JsonReaderOptions Options = new() { MaxDepth = DeepestNesting };

    public static Message Parse(ReadOnlyMemory<byte> body)
    {
        try
        {
            return Read(body);
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException or FormatException)
        {
            // InvalidOperationException: text that is no UTF-8, or half of a surrogate pair, in a member of the envelope.
            return Message.Faulty(ErrorCode.ParseError, "The message is not JSON as the protocol has it.");
        }
    }

    private static Message Read(ReadOnlyMemory<byte> body)
    {
        var reader = new Utf8JsonReader(body.Span, Options);
        reader.Read();
        if (reader.TokenType == JsonTokenType.StartArray)
        {
            CheckRest(ref reader);
            return Message.Faulty(ErrorCode.InvalidRequest, "Batches are not part of the Language Server Protocol.");
        }

        if (reader.TokenType != JsonTokenType.StartObject)
        {
            CheckRest(ref reader);
            return Message.Faulty(ErrorCode.InvalidRequest, "A message is an object.");
        }

        var envelope = new Envelope();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            envelope.ReadMember(ref reader, body);
        }

        CheckRest(ref reader);
        return envelope.ToMessage();
    }

    /// <summary>Reads to the end, so that what follows is JSON too and nothing follows the message.</summary>
    private static void CheckRest(ref Utf8JsonReader reader)
    {
        while (reader.Read())
        {
            // Each token is checked by being read.
        }
    }

    private struct Envelope
    {
        private bool _isVersion2;
        private bool _hasId;
        private bool _idIsWrong;
        private RequestId _id;
        private bool _hasMethod;
        private string? _method;
        private bool _paramsAreWrong;
        private bool _hasResult;
        private bool _hasError;
        private ReadOnlyMemory<byte> _params;
        private ReadOnlyMemory<byte> _result;

        public void ReadMember(ref Utf8JsonReader reader, ReadOnlyMemory<byte> body)
        {
            if (reader.ValueTextEquals("jsonrpc"u8))
            {
                reader.Read();
                _isVersion2 = reader.TokenType == JsonTokenType.String && reader.ValueTextEquals("2.0"u8);
                reader.Skip();
            }
            else if (reader.ValueTextEquals("id"u8))
            {
                reader.Read();
                ReadId(ref reader);
            }
            else if (reader.ValueTextEquals("method"u8))
            {
                reader.Read();
                _hasMethod = true;
                _method = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
                reader.Skip();
            }
            else if (reader.ValueTextEquals("params"u8))
            {
                reader.Read();
                _paramsAreWrong = reader.TokenType is not (JsonTokenType.StartObject or JsonTokenType.StartArray or JsonTokenType.Null);
                var isNull = reader.TokenType == JsonTokenType.Null;
                var value = Slice(ref reader, body);
                _params = isNull ? default : value;
            }
            else if (reader.ValueTextEquals("result"u8))
            {
                reader.Read();
                _hasResult = true;
                _result = Slice(ref reader, body);
            }
            else
            {
                _hasError |= reader.ValueTextEquals("error"u8);
                reader.Read();
                reader.Skip();
            }
        }

        public readonly Message ToMessage()
        {
            if (!_isVersion2 || _idIsWrong || (_hasMethod && _method is null) || (!_hasMethod && !_hasResult && !_hasError))
            {
                return Message.Faulty(ErrorCode.InvalidRequest, "That is no message of JSON-RPC 2.0.", _id);
            }

            if (_method is null)
            {
                return new Message(MessageKind.Response) { Id = _id, Result = _hasError ? default : _result };
            }

            if (_paramsAreWrong)
            {
                return _hasId
                    ? Message.Faulty(ErrorCode.InvalidRequest, "Parameters are an object or an array.", _id)
                    : Message.Faulty(ErrorCode.InvalidRequest, "Parameters are an object or an array.");
            }

            return new Message(_hasId ? MessageKind.Request : MessageKind.Notification) { Method = _method, Id = _id, Params = _params };
        }

        private void ReadId(ref Utf8JsonReader reader)
        {
            _hasId = true;
            if (reader.TokenType == JsonTokenType.String)
            {
                _id = new RequestId(null, reader.GetString());
            }
            else if (reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out var number))
            {
                _id = new RequestId(number, null);
            }
            else
            {
                // The protocol has integers and texts only; a null id belongs to an answer to what could not be read.
                _idIsWrong = reader.TokenType != JsonTokenType.Null;
                reader.Skip();
            }
        }

        private static ReadOnlyMemory<byte> Slice(ref Utf8JsonReader reader, ReadOnlyMemory<byte> body)
        {
            var start = (int)reader.TokenStartIndex;
            reader.Skip();
            return body[start..(int)reader.BytesConsumed];
        }
    }
}
