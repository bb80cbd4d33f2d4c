using Recipe.Compiler.Comparing;
using Recipe.LanguageServer.Documents;
using Recipe.Preview;

namespace Recipe.LanguageServer;

/// <summary>The pages that follow documents: one server for each document that somebody wants to see, fed by what is typed. None is begun before it is asked for.</summary>
internal sealed class Previews(Func<DateOnly> today, Func<string, OpenedRevision>? lastCommit) : IDisposable
{
    private readonly Dictionary<string, PreviewServer> _servers = new(StringComparer.Ordinal);
    private BufferTexts? _buffers;

    /// <summary>Where the page of a document is; it is served from now on.</summary>
    /// <param name="name">The document, a file of this machine.</param>
    /// <param name="documents">What is open in the editor.</param>
    /// <exception cref="PreviewException">It cannot be served.</exception>
    public Uri AddressOf(string name, DocumentStore documents)
    {
        _buffers ??= new BufferTexts(documents.Open.Select(document => (document.Name, document.Text.Text)), documents.Rules);
        if (!_servers.TryGetValue(name, out var server))
        {
            _servers[name] = server = PreviewServer.Start(new PreviewWish(name, Path.GetFileName(name), _buffers, today) { LastCommit = lastCommit });
        }

        return server.Address;
    }

    /// <summary>An open document reads so now; null when it was closed and the disk says what it reads.</summary>
    public void Follow(string name, string? text)
    {
        if (_buffers is not null)
        {
            _buffers.Set(name, text);
            foreach (var server in _servers.Values)
            {
                server.Look();
            }
        }
    }

    public void Dispose()
    {
        foreach (var server in _servers.Values)
        {
            server.Dispose();
        }
    }
}
