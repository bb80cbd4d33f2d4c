namespace Recipe.LanguageServer.Transport;

/// <summary>What kind of message came in.</summary>
internal enum MessageKind
{
    /// <summary>A method with an id: it is owed an answer.</summary>
    Request,

    /// <summary>A method without an id.</summary>
    Notification,

    /// <summary>The client's answer to a request of ours.</summary>
    Response,

    /// <summary>No message at all; <see cref="Message.Fault"/> says why.</summary>
    Faulty,

    /// <summary>The stream has ended; nothing comes after it.</summary>
    End,
}

/// <summary>A message as it came in, its parameters still unread.</summary>
internal sealed record Message(MessageKind Kind)
{
    /// <summary>The method; empty for a response.</summary>
    public string Method { get; init; } = "";

    /// <summary>The id of a request or response.</summary>
    public RequestId Id { get; init; }

    /// <summary>The JSON of the parameters; empty when there are none.</summary>
    public ReadOnlyMemory<byte> Params { get; init; }

    /// <summary>The JSON of a response's result; empty when it is an error.</summary>
    public ReadOnlyMemory<byte> Result { get; init; }

    /// <summary>What is wrong with a faulty message.</summary>
    public RpcException? Fault { get; init; }

    public static Message Faulty(int code, string why, RequestId id = default) =>
        new(MessageKind.Faulty) { Id = id, Fault = new RpcException(code, why) };
}
