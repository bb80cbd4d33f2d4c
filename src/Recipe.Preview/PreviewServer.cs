using System.Globalization;
using Recipe.Preview.Http;

namespace Recipe.Preview;

/// <summary>Serves the page that follows one file, on the loopback address, until it is disposed of.</summary>
public sealed class PreviewServer : IDisposable
{
    private readonly LocalListener _listener;
    private readonly EventStreams _streams;
    private readonly Desk _desk;

    private PreviewServer(LocalListener listener, string token, PreviewWish wish)
    {
        _listener = listener;
        _streams = new EventStreams();
        _desk = new Desk(wish, _streams.Say);
        Address = new Uri(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{listener.Port}/{token}/"));
        _listener.Begin(new Routes(new Doorman(token, listener.Port), _desk, _streams, wish).Answer);
    }

    /// <summary>Where the page is; whoever knows it may look at it, and may write into the file.</summary>
    public Uri Address { get; }

    /// <summary>Starts it.</summary>
    /// <param name="wish">What is previewed.</param>
    /// <exception cref="PreviewException">The port that was asked for is taken, or there is none at all.</exception>
    public static PreviewServer Start(PreviewWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var seat = Seat.Remembered(wish.SeatFolder, wish.Path);
        if (wish.Port != 0)
        {
            var asked = LocalListener.TryListen(wish.Port)
                ?? throw new PreviewException(string.Create(CultureInfo.InvariantCulture, $"port {wish.Port} is taken, or may not be used; without --port any that is free is taken."));
            return Begin(asked, seat, wish);
        }

        if (seat.Port != 0 && LocalListener.TryListen(seat.Port) is { } again)
        {
            return Begin(again, seat, wish);
        }

        // Somebody sits there, perhaps another preview of the same file: then a new place and a new token, and that one stays the remembered one.
        var free = LocalListener.TryListen(0) ?? throw new PreviewException("no port of this machine could be opened.");
        return seat.Port == 0 ? Begin(free, seat, wish) : new PreviewServer(free, Seat.New().Token, wish);
    }

    /// <summary>Says that a text may have changed: for buffers of an editor, which no system watches.</summary>
    public void Look() => _desk.Look();

    /// <inheritdoc/>
    public void Dispose()
    {
        _listener.Dispose();
        _streams.Dispose();
        _desk.Dispose();
    }

    private static PreviewServer Begin(LocalListener listener, Seat seat, PreviewWish wish)
    {
        (seat with { Port = listener.Port }).Remember(wish.SeatFolder, wish.Path);
        return new PreviewServer(listener, seat.Token, wish);
    }
}
