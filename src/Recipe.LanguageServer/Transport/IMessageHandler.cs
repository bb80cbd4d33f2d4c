namespace Recipe.LanguageServer.Transport;

/// <summary>What a connection hands messages to, one at a time and in order.</summary>
internal interface IMessageHandler
{
    /// <summary>The status that the process ends with, once the client has said that it should; null until then.</summary>
    int? ExitStatus { get; }

    /// <summary>The status when the stream ends without a word.</summary>
    int StatusAtEnd { get; }

    /// <summary>Carries out a request and answers it.</summary>
    /// <exception cref="RpcException">It is answered with that error.</exception>
    void OnRequest(Message request, MessageWriter writer, CancellationToken token);

    /// <summary>Takes note.</summary>
    void OnNotification(Message notification);

    /// <summary>A notification could not be carried out; there is nobody who waits for an answer.</summary>
    void OnFailure(string what);
}
