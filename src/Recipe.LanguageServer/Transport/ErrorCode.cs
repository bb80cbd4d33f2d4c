namespace Recipe.LanguageServer.Transport;

/// <summary>The error codes of JSON-RPC 2.0 and of the Language Server Protocol that this server sends.</summary>
internal static class ErrorCode
{
    /// <summary>The bytes are no JSON.</summary>
    public const int ParseError = -32700;

    /// <summary>The JSON is no message, or one that has no place at this moment.</summary>
    public const int InvalidRequest = -32600;

    /// <summary>No such method here.</summary>
    public const int MethodNotFound = -32601;

    /// <summary>The parameters are not those of the method.</summary>
    public const int InvalidParams = -32602;

    /// <summary>The server failed.</summary>
    public const int InternalError = -32603;

    /// <summary>A request came before <c>initialize</c>.</summary>
    public const int ServerNotInitialized = -32002;

    /// <summary>The client took its request back.</summary>
    public const int RequestCancelled = -32800;

    /// <summary>The request was understood and could not be carried out, for a reason that a person can read.</summary>
    public const int RequestFailed = -32803;
}
