namespace Recipe.LanguageServer.Protocol;

/// <summary>What the client can show.</summary>
internal sealed record WindowClientCapabilities
{
    public ShowDocumentClientCapabilities? ShowDocument { get; init; }
}

/// <summary>Whether it opens what it is asked to.</summary>
internal sealed record ShowDocumentClientCapabilities(bool Support);

/// <summary>Something to open: a document, or an address for the browser.</summary>
internal sealed record ShowDocumentParams(string Uri)
{
    public bool? External { get; init; }

    public bool? TakeFocus { get; init; }
}

/// <summary>Something to say to the user.</summary>
internal sealed record ShowMessageParams(int Type, string Message)
{
    public const int Info = 3;
}
