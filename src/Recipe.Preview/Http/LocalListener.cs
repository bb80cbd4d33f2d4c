using System.Net;
using System.Net.Sockets;
using Recipe.Disk;

namespace Recipe.Preview.Http;

/// <summary>
/// Takes connections on the loopback address alone: one request each, then it is closed. Written here because the listener of the framework cannot take
/// whatever port is free, hands the port to a service of the system on Windows, and reads more of HTTP than a page of ours ever says.
/// </summary>
internal sealed class LocalListener : IDisposable
{
    private const int MostAtATime = 64;
    private static readonly TimeSpan ReadWithin = TimeSpan.FromSeconds(10);

    private readonly Socket _socket;
    private readonly SemaphoreSlim _room = new(MostAtATime);
    private readonly CancellationTokenSource _stop = new();

    private LocalListener(Socket socket) => _socket = socket;

    /// <summary>The port.</summary>
    public int Port => ((IPEndPoint)_socket.LocalEndPoint!).Port;

    /// <summary>Listens on a port, 0 for any that is free; null when it is taken.</summary>
    public static LocalListener? TryListen(int port)
    {
        var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        try
        {
            if (OperatingSystem.IsWindows())
            {
                // There another program could take the port over; elsewhere nobody can, and this would keep us off our own closed connections.
                socket.ExclusiveAddressUse = true;
            }

            socket.Bind(new IPEndPoint(IPAddress.Loopback, port));
            socket.Listen(MostAtATime);
            return new LocalListener(socket);
        }
        catch (SocketException)
        {
            socket.Dispose();
            return null;
        }
    }

    /// <summary>Begins to serve.</summary>
    /// <param name="answer">Answers a request; null when it has written to the stream by itself.</param>
    public void Begin(Func<HttpRequest, Stream, CancellationToken, Task<HttpReply?>> answer) => _ = Task.Run(() => Accept(answer));

    public void Dispose()
    {
        _stop.Cancel();
        _socket.Dispose();
    }

    private async Task Accept(Func<HttpRequest, Stream, CancellationToken, Task<HttpReply?>> answer)
    {
        while (!_stop.IsCancellationRequested)
        {
            try
            {
                await _room.WaitAsync(_stop.Token).ConfigureAwait(false);
                var connection = await _socket.AcceptAsync(_stop.Token).ConfigureAwait(false);
                _ = Task.Run(() => Serve(connection, answer));
            }
            catch (Exception problem) when (problem is OperationCanceledException or ObjectDisposedException)
            {
                return;
            }
            catch (SocketException)
            {
                _room.Release();
            }
        }
    }

    private async Task Serve(Socket connection, Func<HttpRequest, Stream, CancellationToken, Task<HttpReply?>> answer)
    {
        try
        {
            connection.NoDelay = true;
            await using var stream = new NetworkStream(connection, ownsSocket: true);
            var reply = await Reply(stream, answer).ConfigureAwait(false);
            if (reply is not null)
            {
                await stream.WriteAsync(reply.Head(reply.Body.Length), _stop.Token).ConfigureAwait(false);
                await stream.WriteAsync(reply.Body, _stop.Token).ConfigureAwait(false);
                connection.Shutdown(SocketShutdown.Send);
            }
        }
        catch (Exception problem) when (problem is IOException or SocketException or OperationCanceledException or ObjectDisposedException)
        {
            // The page went away, or we do.
        }
        finally
        {
            _room.Release();
        }
    }

    private async Task<HttpReply?> Reply(NetworkStream stream, Func<HttpRequest, Stream, CancellationToken, Task<HttpReply?>> answer)
    {
        try
        {
            using var late = CancellationTokenSource.CreateLinkedTokenSource(_stop.Token);
            late.CancelAfter(ReadWithin);
            var request = await RequestReader.Read(stream, late.Token).ConfigureAwait(false);
            return request is null ? null : await answer(request, stream, _stop.Token).ConfigureAwait(false);
        }
        catch (HttpRefusal refusal)
        {
            return HttpReply.Refused(refusal.Status, refusal.Message);
        }
        catch (Exception problem) when (problem is PreviewException or CannotWriteException)
        {
            return HttpReply.Refused(409, problem.Message);
        }
        catch (Exception problem) when (problem is not (IOException or SocketException or OperationCanceledException or ObjectDisposedException))
        {
            // Whatever fails, the page is owed an answer, and the next request deserves a server. What is inside stays inside.
            return HttpReply.Refused(500, $"That failed inside the preview ({problem.GetType().Name}).");
        }
    }
}
