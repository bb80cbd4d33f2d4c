using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Recipe.LanguageServer.Transport;

/// <summary>
/// One client. A thread reads and puts what it reads into a queue; the caller's thread works on it in order. Only a cancellation is
/// carried out at once, by the reader. No exception of ours ever reaches the client: it gets a code and a sentence.
/// </summary>
internal sealed class Connection : IDisposable
{
    private readonly MessageReader _reader;
    private readonly MessageQueue _queue = new();
    private readonly ConcurrentDictionary<RequestId, Waiting> _inFlight = new();
    private readonly Dictionary<RequestId, Action<ReadOnlyMemory<byte>>> _asked = [];
    private long _lastId;

    public Connection(Stream input, Stream output)
    {
        _reader = new MessageReader(input);
        Writer = new MessageWriter(output);
    }

    /// <summary>The way to the client.</summary>
    public MessageWriter Writer { get; }

    /// <summary>Whether a message like this is already waiting, so that the work on the present one would be in vain.</summary>
    public bool IsWaiting(Func<Message, bool> wanted) => _queue.Any(wanted);

    /// <summary>Asks the client. The answer is worked on in its turn; an error of the client's counts as an empty answer.</summary>
    public void Ask<T>(string method, T? parameters, JsonTypeInfo<T>? type, Action<ReadOnlyMemory<byte>> onAnswer)
    {
        var id = new RequestId(++_lastId, null);
        _asked[id] = onAnswer;
        Writer.Request(id, method, parameters, type);
    }

    /// <summary>Serves until the client says goodbye or goes away; the status for the process.</summary>
    public int Run(IMessageHandler handler)
    {
        var reading = new Thread(Read) { IsBackground = true, Name = "reader" };
        reading.Start();
        while (handler.ExitStatus is null)
        {
            using var item = _queue.Take();
            if (item.Message.Kind == MessageKind.End)
            {
                if (item.Message.Fault is { } fault)
                {
                    Writer.Error(default, fault.Code, fault.Message);
                }

                return handler.StatusAtEnd;
            }

            if (item.TryStart())
            {
                WorkOn(item, handler);
            }
        }

        return handler.ExitStatus.Value;
    }

    public void Dispose()
    {
        foreach (var item in _inFlight.Values)
        {
            item.Dispose();
        }
    }

    private void Read()
    {
        Message message;
        do
        {
            message = _reader.Next();
            if (message is { Kind: MessageKind.Notification, Method: "$/cancelRequest" })
            {
                Cancel(message.Params);
                continue;
            }

            var item = new Waiting(message);
            if (message.Kind == MessageKind.Request)
            {
                _inFlight[message.Id] = item;
            }

            _queue.Add(item);
        }
        while (message.Kind != MessageKind.End);
    }

    private void Cancel(ReadOnlyMemory<byte> parameters)
    {
        // The id stands in the parameters as it does in a message.
        var (id, found) = CancelledId.Read(parameters.Span);
        if (found && _inFlight.TryGetValue(id, out var item))
        {
            try
            {
                if (item.Cancel())
                {
                    _inFlight.TryRemove(new KeyValuePair<RequestId, Waiting>(id, item));
                    Writer.Error(id, ErrorCode.RequestCancelled, "Cancelled.");
                }
            }
            catch (ObjectDisposedException)
            {
                // It was answered in this very moment.
            }
        }
    }

    private void WorkOn(Waiting item, IMessageHandler handler)
    {
        var message = item.Message;
        switch (message.Kind)
        {
            case MessageKind.Request:
                Answer(item, handler);
                _inFlight.TryRemove(new KeyValuePair<RequestId, Waiting>(message.Id, item));
                break;
            case MessageKind.Response:
                if (_asked.Remove(message.Id, out var onAnswer))
                {
                    Try(() => onAnswer(message.Result), "an answer of the client", handler);
                }

                break;
            case MessageKind.Faulty:
                Writer.Error(message.Id, message.Fault!.Code, message.Fault.Message);
                break;
            default:
                Try(() => handler.OnNotification(message), message.Method, handler);
                break;
        }
    }

    private void Answer(Waiting item, IMessageHandler handler)
    {
        var message = item.Message;
        try
        {
            handler.OnRequest(message, Writer, item.Token);
        }
        catch (RpcException refusal)
        {
            Writer.Error(message.Id, refusal.Code, refusal.Message);
        }
        catch (OperationCanceledException)
        {
            Writer.Error(message.Id, ErrorCode.RequestCancelled, "Cancelled.");
        }
#pragma warning disable CA1031 // Whatever fails, the client is owed an answer, and the next request deserves a server.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            Writer.Error(message.Id, ErrorCode.InternalError, $"{message.Method} failed inside the server ({problem.GetType().Name}).");
        }
    }

    private static void Try(Action action, string what, IMessageHandler handler)
    {
        try
        {
            action();
        }
        catch (RpcException refusal)
        {
            handler.OnFailure($"{what}: {refusal.Message}");
        }
#pragma warning disable CA1031 // As above; nobody waits for an answer here.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            handler.OnFailure($"{what} failed inside the server ({problem.GetType().Name}).");
        }
    }

    private static class CancelledId
    {
        public static (RequestId Id, bool Found) Read(ReadOnlySpan<byte> parameters)
        {
            var reader = new Utf8JsonReader(parameters);
            try
            {
                while (!parameters.IsEmpty && reader.Read())
                {
                    if (reader.TokenType == JsonTokenType.PropertyName && reader.CurrentDepth == 1 && reader.ValueTextEquals("id"u8))
                    {
                        reader.Read();
                        return reader.TokenType switch
                        {
                            JsonTokenType.String => (new RequestId(null, reader.GetString()), true),
                            JsonTokenType.Number when reader.TryGetInt64(out var number) => (new RequestId(number, null), true),
                            _ => default,
                        };
                    }
                }
            }
            catch (Exception problem) when (problem is JsonException or InvalidOperationException)
            {
                // An id that cannot be read cancels nothing.
            }

            return default;
        }
    }
}
