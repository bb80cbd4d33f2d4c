using System.Collections.Immutable;
using System.Text.Json;
using Recipe.LanguageServer.Protocol;
using Recipe.Text;

namespace Recipe.LanguageServer.Features;

/// <summary>Files, folders and settings change around the documents.</summary>
internal sealed class WorkspaceChanges : IFeature
{
    // A drawing saved anew changes the areas of every recipe that is laid on it.
    private static readonly ImmutableArray<string> Watched = [FileEndings.Recipe, FileEndings.CodedRules, .. FileEndings.Meshes];

    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.Workspace = new WorkspaceOptions
        {
            WorkspaceFolders = new WorkspaceFoldersServerCapabilities { Supported = true, ChangeNotifications = true },
        };
        router.Notification("initialized", ProtocolJson.Default.JsonElement, _ => Begin(session));
        router.Notification("workspace/didChangeWatchedFiles", ProtocolJson.Default.DidChangeWatchedFilesParams, _ =>
        {
            session.Files.Changed();
            Refresh(session);
        });
        router.Notification("workspace/didChangeWorkspaceFolders", ProtocolJson.Default.DidChangeWorkspaceFoldersParams, p =>
        {
            foreach (var folder in p.Event.Removed)
            {
                session.Files.Remove(folder);
            }

            foreach (var folder in p.Event.Added)
            {
                session.Files.Add(folder);
            }

            Refresh(session);
        });
        router.Notification("workspace/didChangeConfiguration", ProtocolJson.Default.DidChangeConfigurationParams, p =>
        {
            if (session.Client.Workspace?.Configuration == true)
            {
                AskForSettings(session);
            }
            else if (p.Settings is { ValueKind: JsonValueKind.Object } settings && settings.TryGetProperty(Settings.Section, out var section))
            {
                session.Settings.Read(section);
                Refresh(session);
            }
        });
    }

    private static void Begin(Session session)
    {
        var registrations = new List<Registration>();
        if (session.Client.Workspace?.DidChangeWatchedFiles?.DynamicRegistration == true)
        {
            registrations.Add(new Registration("recipe-files", "workspace/didChangeWatchedFiles")
            {
                RegisterOptions = new DidChangeWatchedFilesRegistrationOptions([.. Watched.Select(ending => new Protocol.FileSystemWatcher("**/*" + ending))]),
            });
        }

        if (session.Client.Workspace?.DidChangeConfiguration?.DynamicRegistration == true)
        {
            registrations.Add(new Registration("recipe-settings", "workspace/didChangeConfiguration"));
        }

        if (registrations.Count > 0)
        {
            // An error is answered with nothing: then nobody tells of files, and each question looks for them.
            session.Connection.Ask(
                "client/registerCapability",
                new RegistrationParams([.. registrations]),
                ProtocolJson.Default.RegistrationParams,
                answer => session.Files.IsTold = !answer.IsEmpty && registrations[0].RegisterOptions is not null);
        }

        if (session.Client.Workspace?.Configuration == true)
        {
            AskForSettings(session);
        }
    }

    private static void AskForSettings(Session session) => session.Connection.Ask(
        "workspace/configuration",
        new ConfigurationParams([new ConfigurationItem { Section = Settings.Section }]),
        ProtocolJson.Default.ConfigurationParams,
        answer =>
        {
            if (!answer.IsEmpty && JsonSerializer.Deserialize(answer.Span, ProtocolJson.Default.JsonElement) is { ValueKind: JsonValueKind.Array } sections)
            {
                foreach (var section in sections.EnumerateArray())
                {
                    session.Settings.Read(section);
                }

                Refresh(session);
            }
        });

    /// <summary>What the client shows may be old: findings are sent anew, and the rest it is asked to ask for.</summary>
    private static void Refresh(Session session)
    {
        PushDiagnostics.After(session, null);
        var client = session.Client.Workspace;
        Ask(session, client?.Diagnostics?.RefreshSupport, "workspace/diagnostic/refresh");
        Ask(session, client?.InlayHint?.RefreshSupport, "workspace/inlayHint/refresh");
        Ask(session, client?.CodeLens?.RefreshSupport, "workspace/codeLens/refresh");
        Ask(session, client?.SemanticTokens?.RefreshSupport, "workspace/semanticTokens/refresh");
    }

    private static void Ask(Session session, bool? isSupported, string method)
    {
        if (isSupported == true)
        {
            session.Connection.Ask<object>(method, null, null, _ => { });
        }
    }
}
