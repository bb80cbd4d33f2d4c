using System.Reflection;
using Recipe.Compiler.Comparing;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Features;
using Recipe.LanguageServer.Protocol;
using Recipe.LanguageServer.Transport;
using Recipe.RuleProtocol;

namespace Recipe.LanguageServer;

/// <summary>The life of a session: begin, work, shut down, leave; and who answers what in between.</summary>
internal sealed class Server : IMessageHandler
{
    private readonly Router _router = new();
    private readonly Session _session;
    private readonly Action<int>? _clientIs;
    private bool _isInitialized;
    private bool _isShutDown;

    private Server(Session session, Action<int>? clientIs)
    {
        _session = session;
        _clientIs = clientIs;
    }

    public int? ExitStatus { get; private set; }

    public int StatusAtEnd => _isShutDown ? 0 : 1;

    /// <summary>Serves one client; the status for the process.</summary>
    /// <param name="input">Where the client's messages come from.</param>
    /// <param name="output">Where ours go.</param>
    /// <param name="today">The day, asked for at each question.</param>
    /// <param name="lastCommit">Opens the texts of the last commit, or null.</param>
    /// <param name="rules">Runs rules in C#; null where nobody can.</param>
    /// <param name="bookFolder">Where copies of the shipped book are laid for the editor to open; null lays none.</param>
    /// <param name="clientIs">Told the number of the client's process when it says it.</param>
    public static int Run(Stream input, Stream output, Func<DateOnly> today, Func<string, OpenedRevision>? lastCommit = null, IRuleRunner? rules = null, string? bookFolder = null, Action<int>? clientIs = null)
    {
        using var connection = new Connection(input, output);
        var session = new Session(connection, today, rules) { LastCommit = lastCommit, Book = new BookCopies(bookFolder) };
        using var previews = session.Previews;
        return connection.Run(new Server(session, clientIs));
    }

    public void OnRequest(Message request, MessageWriter writer, CancellationToken token)
    {
        if (_isShutDown)
        {
            throw new RpcException(ErrorCode.InvalidRequest, "The server has been shut down.");
        }

        switch (request.Method)
        {
            case "initialize" when _isInitialized:
                throw new RpcException(ErrorCode.InvalidRequest, "The server is initialized already.");
            case "initialize":
                writer.Result(request.Id, Initialize(Router.Read(request, ProtocolJson.Default.InitializeParams)), ProtocolJson.Default.InitializeResult);
                break;
            case var _ when !_isInitialized:
                throw new RpcException(ErrorCode.ServerNotInitialized, "The server waits for initialize.");
            case "shutdown":
                _isShutDown = true;
                writer.Result(request.Id, null, ProtocolJson.Default.String);
                break;
            default:
                if (!_router.TryRequest(request, writer, token))
                {
                    throw new RpcException(ErrorCode.MethodNotFound, $"There is no {request.Method} here.");
                }

                break;
        }
    }

    public void OnNotification(Message notification)
    {
        if (notification.Method == "exit")
        {
            ExitStatus = StatusAtEnd;
        }
        else if (_isInitialized && !_isShutDown)
        {
            _router.TryNotification(notification);
        }
    }

    public void OnFailure(string what)
    {
        if (_isInitialized)
        {
            _session.Writer.Notification("window/logMessage", new LogMessageParams(LogMessageParams.Error, what), ProtocolJson.Default.LogMessageParams);
        }
    }

    private InitializeResult Initialize(InitializeParams client)
    {
        _session.Client = client.Capabilities;
        var encoding = PositionEncodings.Choose(client.Capabilities.General?.PositionEncodings);
        _session.Documents.Positions = new Positions(encoding);
        _session.Settings.Read(client.InitializationOptions ?? default);
        if (client.WorkspaceFolders is { } folders)
        {
            foreach (var folder in folders)
            {
                _session.Files.Add(folder);
            }
        }
        else if (client.RootUri is { } root)
        {
            _session.Files.Add(new WorkspaceFolder(root, ""));
        }

        var capabilities = new ServerCapabilities { PositionEncoding = PositionEncodings.Name(encoding) };
        foreach (var feature in FeatureList.Make())
        {
            feature.Enter(_router, capabilities, _session);
        }

        if (client.ProcessId is { } process)
        {
            _clientIs?.Invoke(process);
        }

        _isInitialized = true;
        return new InitializeResult(capabilities, new ServerInfo("recipe", typeof(Server).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion));
    }
}
