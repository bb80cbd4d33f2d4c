using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer;

/// <summary>Something that the server can do for an editor.</summary>
internal interface IFeature
{
    /// <summary>Enters what the feature can do into the capabilities, and its methods into the router.</summary>
    void Enter(Router router, ServerCapabilities capabilities, Session session);
}
