using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Recipe.Preview.Http;

/// <summary>
/// Who is let in. The address is on this machine alone, but every page that a browser has open can send requests to it, and so can every user of
/// the machine: a request must name us as its host (no name that was made to point here), must not come from another origin, and must know the token;
/// what changes anything must carry the token in a header too, which no other origin can set.
/// </summary>
/// <param name="token">The token, letters and digits.</param>
/// <param name="port">Our port.</param>
internal sealed class Doorman(string token, int port)
{
    public const string Header = "X-Recipe-Token";

    private readonly byte[] _token = Encoding.ASCII.GetBytes(token);
    private readonly string[] _hosts = [.. new[] { "127.0.0.1", "localhost" }.Select(host => string.Create(CultureInfo.InvariantCulture, $"{host}:{port}"))];

    /// <summary>What is asked for below the token: <c>view</c>. Null when the asker only wants to know whether we are who we were.</summary>
    /// <exception cref="HttpRefusal">It is not let in.</exception>
    public string? Admit(HttpRequest request)
    {
        if (request.Header("Host") is not { } host || !_hosts.Contains(host, StringComparer.OrdinalIgnoreCase))
        {
            throw new HttpRefusal(403, "This preview answers to its own address only.");
        }

        var origin = request.Header("Origin");
        if (origin is not null && !_hosts.Any(own => origin.Equals("http://" + own, StringComparison.OrdinalIgnoreCase)))
        {
            throw new HttpRefusal(403, "Another page may not ask this preview.");
        }

        if (request is { Method: "GET", Path: "/hello" })
        {
            return null;
        }

        var parts = request.Path.Split('/', 3);
        if (parts is not ["", var given, var rest] || !Knows(given))
        {
            throw new HttpRefusal(403, "Open the whole address that `recipe preview` printed.");
        }

        if (request.Method == "POST" && (origin is null || request.Header(Header) is not { } again || !Knows(again)))
        {
            throw new HttpRefusal(403, "What changes something needs the token in a header, from the page itself.");
        }

        return rest;
    }

    /// <summary>
    /// Proof that we know the token, for a page that waits for this preview to come back and must not give the token to whoever sits on the port now. The
    /// port is part of it, so that nobody can have it answered by another preview.
    /// </summary>
    /// <param name="nonce">What the page made up.</param>
    public string Prove(string nonce) => Convert.ToHexStringLower(
        HMACSHA256.HashData(_token, Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{port}|{nonce}"))));

    private bool Knows(string given) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), _token);
}
