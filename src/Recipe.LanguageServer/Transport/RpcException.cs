namespace Recipe.LanguageServer.Transport;

/// <summary>A request is answered with an error: a code of <see cref="ErrorCode"/>, and a message that the client may show.</summary>
internal sealed class RpcException(int code, string message, Exception? cause = null) : Exception(message, cause)
{
    public int Code { get; } = code;
}
