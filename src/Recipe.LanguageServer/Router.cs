using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer;

/// <summary>Which method is carried out by whom, with what parameters and result.</summary>
internal sealed class Router
{
    private readonly Dictionary<string, Action<Message, MessageWriter, CancellationToken>> _requests = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Action<Message>> _notifications = new(StringComparer.Ordinal);

    public void Request<TParams, TResult>(
        string method, JsonTypeInfo<TParams> input, JsonTypeInfo<TResult> output, Func<TParams, CancellationToken, TResult?> handle) =>
        _requests.Add(method, (message, writer, token) =>
        {
            var parameters = Read(message, input);
            token.ThrowIfCancellationRequested();
            writer.Result(message.Id, handle(parameters, token), output);
        });

    public void Request<TParams, TResult>(string method, JsonTypeInfo<TParams> input, JsonTypeInfo<TResult> output, Func<TParams, TResult?> handle) =>
        Request(method, input, output, (parameters, _) => handle(parameters));

    public void Notification<TParams>(string method, JsonTypeInfo<TParams> input, Action<TParams> handle) =>
        _notifications.Add(method, message => handle(Read(message, input)));

    public bool TryRequest(Message message, MessageWriter writer, CancellationToken token)
    {
        if (!_requests.TryGetValue(message.Method, out var handle))
        {
            return false;
        }

        handle(message, writer, token);
        return true;
    }

    public void TryNotification(Message message)
    {
        if (_notifications.TryGetValue(message.Method, out var handle))
        {
            handle(message);
        }
    }

    /// <summary>Reads parameters or an answer.</summary>
    /// <exception cref="RpcException">They are not those of the method.</exception>
    public static T Read<T>(Message message, JsonTypeInfo<T> type)
    {
        if (message.Params.IsEmpty)
        {
            throw new RpcException(ErrorCode.InvalidParams, $"{message.Method} has parameters.");
        }

        try
        {
            return JsonSerializer.Deserialize(message.Params.Span, type)
                ?? throw new RpcException(ErrorCode.InvalidParams, $"{message.Method} has parameters.");
        }
        catch (JsonException problem)
        {
            throw new RpcException(ErrorCode.InvalidParams, $"The parameters of {message.Method} are not as the protocol has them, at {problem.Path ?? "$"}.", problem);
        }
        catch (InvalidOperationException problem)
        {
            throw new RpcException(ErrorCode.InvalidParams, $"The parameters of {message.Method} hold text that is no Unicode.", problem);
        }
    }
}
