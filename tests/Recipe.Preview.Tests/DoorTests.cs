using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace Recipe.Preview.Tests;

/// <summary>Who is let in, by requests as they go over the wire: a browser would not let a test say most of these.</summary>
public sealed class DoorTests : IDisposable
{
    private readonly Shop _shop = new();
    private readonly PreviewServer _server;

    public DoorTests() => _server = _shop.Serve();

    private int Port => _server.Address.Port;

    private string Token => _server.Address.AbsolutePath.Trim('/');

    private string Own => string.Create(CultureInfo.InvariantCulture, $"127.0.0.1:{Port}");

    public void Dispose()
    {
        _server.Dispose();
        _shop.Dispose();
    }

    [Theory]
    [InlineData("", "text/html")]
    [InlineData("view", "application/json")]
    [InlineData("page.css", "text/css")]
    [InlineData("main.js", "text/javascript")]
    public void The_page_itself_is_let_in_and_nothing_may_come_from_outside(string path, string type)
    {
        var answer = Get(path);
        Assert.StartsWith("HTTP/1.1 200 ", answer, StringComparison.Ordinal);
        Assert.Contains($"Content-Type: {type}", answer, StringComparison.Ordinal);
        foreach (var header in (string[])
            [
                "Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'",
                "X-Content-Type-Options: nosniff", "Referrer-Policy: no-referrer", "Cache-Control: no-store", "Cross-Origin-Resource-Policy: same-origin",
            ])
        {
            Assert.Contains(header, answer, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("Access-Control", answer, StringComparison.Ordinal);
    }

    // A name that was made to point to this machine is how a page of the wide world would get at us.
    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:{0}")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("localhost.evil.example:{0}")]
    [InlineData("")]
    public void Another_host_is_refused(string host) => Refused(403, $"GET /{Token}/view HTTP/1.1\r\nHost: {string.Format(CultureInfo.InvariantCulture, host, Port)}\r\n\r\n");

    [Fact]
    public void A_request_without_a_host_is_refused() => Refused(403, $"GET /{Token}/view HTTP/1.1\r\n\r\n");

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("null")]
    [InlineData("https://127.0.0.1:{0}")]
    [InlineData("http://127.0.0.1:1")]
    public void Another_origin_is_refused(string origin)
    {
        var own = string.Format(CultureInfo.InvariantCulture, origin, Port);
        Refused(403, $"GET /{Token}/view HTTP/1.1\r\nHost: {Own}\r\nOrigin: {own}\r\n\r\n");
        Refused(403, Post("apply", "{}", origin: own));
        Refused(403, $"GET /hello?nonce=0123456789abcdef HTTP/1.1\r\nHost: {Own}\r\nOrigin: {own}\r\n\r\n");
    }

    [Theory]
    [InlineData("")]
    [InlineData("view")]
    [InlineData("0000000000000000000000000000000000000000000000000000000000000000/view")]
    [InlineData("../view")]
    public void Without_the_token_nothing_is_shown(string path)
    {
        var answer = Refused(403, $"GET /{path} HTTP/1.1\r\nHost: {Own}\r\n\r\n");
        Assert.DoesNotContain("hatch", answer, StringComparison.Ordinal);
        Refused(403, $"GET /{Token[..^1]}/view HTTP/1.1\r\nHost: {Own}\r\n\r\n");
        Refused(403, $"GET /{Token}x/view HTTP/1.1\r\nHost: {Own}\r\n\r\n");
    }

    [Fact]
    public void What_changes_something_needs_the_token_in_a_header_and_our_own_origin()
    {
        var before = _shop.Read();
        var body = $$$"""{"part":"hatch-lid","stamp":"{{{Stamp()}}}","values":{"laminators":2}}""";
        Refused(403, Post("apply", body, token: null));
        Refused(403, Post("apply", body, token: "wrong"));
        Refused(403, Post("apply", body, origin: null));
        Refused(403, Post("record/write", """{"form":"x","file":"evil.recipe"}""", token: null));
        Assert.Equal(before, _shop.Read());
        Assert.False(File.Exists(_shop.PathOf("evil.recipe")));

        // With both it is done, so the refusals were about them.
        Assert.StartsWith("HTTP/1.1 200 ", Send(Post("apply", body)), StringComparison.Ordinal);
        Assert.Equal(before.Replace("laminators         1", "laminators         2", StringComparison.Ordinal), _shop.Read());
    }

    [Theory]
    [InlineData("../hatch-lid.recipe")]
    [InlineData("sub/x.recipe")]
    [InlineData("/tmp/x.recipe")]
    [InlineData("x.sh")]
    [InlineData(".x.recipe")]
    [InlineData("-x.recipe")]
    [InlineData("a\\\\b.recipe")]
    [InlineData(".recipe")]
    [InlineData("C:x.recipe")]
    public void A_record_is_written_beside_the_recipe_and_nowhere_else(string file)
    {
        var files = Files();
        Refused(400, Post("record/write", $$"""{"form":"x","typed":{},"file":"{{file}}"}"""));
        Assert.Equal(files, Files());
    }

    [Fact]
    public void A_record_is_never_written_over_a_file()
    {
        var before = _shop.Read();
        Assert.Contains("is there already", Refused(409, Post("record/write", """{"form":"x","typed":{},"file":"hatch-lid.recipe"}""")), StringComparison.Ordinal);
        Assert.Equal(before, _shop.Read());
    }

    [Theory]
    [InlineData("no-such-page", 404)]
    [InlineData("page/", 404)]
    [InlineData("..%2f..%2fetc%2fpasswd", 404)]
    [InlineData("../../etc/passwd", 404)]
    [InlineData("index.html", 404)]
    [InlineData("apply", 404)]
    public void There_is_no_other_file_and_no_list_of_files(string path, int status) => Refused(status, $"GET /{Token}/{path} HTTP/1.1\r\nHost: {Own}\r\n\r\n");

    [Theory]
    [InlineData("DELETE /{0}/view HTTP/1.1\r\nHost: {1}\r\n\r\n", 405)]
    [InlineData("OPTIONS /{0}/apply HTTP/1.1\r\nHost: {1}\r\nOrigin: http://evil.example\r\n\r\n", 405)]
    [InlineData("GET http://127.0.0.1/{0}/view HTTP/1.1\r\nHost: {1}\r\n\r\n", 400)]
    [InlineData("GET /{0}/view HTTP/2\r\nHost: {1}\r\n\r\n", 400)]
    [InlineData("GET /{0}/view HTTP/1.1\r\nHost: {1}\r\nHost: evil.example\r\n\r\n", 400)]
    [InlineData("GET /{0}/view HTTP/1.1\r\nHost : {1}\r\n\r\n", 400)]
    [InlineData("GET /{0}/view HTTP/1.1\r\nHost: {1}\r\nA: \u0001\r\n\r\n", 400)]
    [InlineData("POST /{0}/trial HTTP/1.1\r\nHost: {1}\r\nTransfer-Encoding: chunked\r\n\r\n", 400)]
    [InlineData("POST /{0}/trial HTTP/1.1\r\nHost: {1}\r\n\r\n", 400)]
    [InlineData("POST /{0}/trial HTTP/1.1\r\nHost: {1}\r\nContent-Length: 99999999\r\n\r\n", 413)]
    [InlineData("POST /{0}/trial HTTP/1.1\r\nHost: {1}\r\nContent-Length: -1\r\n\r\n", 413)]
    [InlineData("\r\n\r\n", 400)]
    public void What_no_page_says_is_not_read(string request, int status) => Refused(status, string.Format(CultureInfo.InvariantCulture, request, Token, Own));

    [Fact]
    public void A_head_without_an_end_is_not_read_for_ever() => Refused(431, $"GET /{Token}/view HTTP/1.1\r\nHost: {Own}\r\nX: {new string('x', 20_000)}");

    [Theory]
    [InlineData("not json", 400)]
    [InlineData("[]", 400)]
    [InlineData("""{"part":1,"values":{}}""", 400)]
    [InlineData("""{"part":"hatch-lid","values":{"laminators":"2"}}""", 400)]
    [InlineData("""{"part":"hatch-lid","values":{"laminators":1e400}}""", 400)]
    [InlineData("""{"part":"hatch-lid","values":{"laminators":1000}}""", 409)]
    [InlineData("""{"part":"hatch-lid","values":{"no-such-lever":1}}""", 409)]
    [InlineData("""{"part":"no-such-part","values":{}}""", 409)]
    public void A_body_that_makes_no_sense_is_refused_in_words(string body, int status) => Assert.Contains("\"error\":", Refused(status, Post("trial", body)), StringComparison.Ordinal);

    [Fact]
    public void Two_previews_of_a_file_have_places_of_their_own()
    {
        using var first = _shop.Serve(remember: true);
        using var second = _shop.Serve(remember: true);
        Assert.NotEqual(first.Address.Port, second.Address.Port);
        Assert.NotEqual(first.Address.AbsolutePath, second.Address.AbsolutePath);
        Assert.Contains("taken", Assert.Throws<PreviewException>(() => _shop.Serve(port: first.Address.Port)).Message, StringComparison.Ordinal);

        // The place is kept from others, and one that is not is not believed.
        var seat = Directory.GetFiles(_shop.PathOf(".seats")).Single();
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, Shop.ModeOf(seat));
        Assert.Contains(first.Address.AbsolutePath.Trim('/'), File.ReadAllText(seat), StringComparison.Ordinal);
        first.Dispose();
        Shop.SetMode(seat, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead);
        using var third = _shop.Serve(remember: true);
        Assert.NotEqual(first.Address.AbsolutePath, third.Address.AbsolutePath);
    }

    [Fact]
    public void Only_this_machine_is_listened_to()
    {
        var others = System.Net.Dns.GetHostAddresses(System.Net.Dns.GetHostName(), AddressFamily.InterNetwork).Where(address => !System.Net.IPAddress.IsLoopback(address)).ToList();
        foreach (var address in others)
        {
            using var client = new TcpClient();
            Assert.ThrowsAny<SocketException>(() => client.Connect(address, Port));
        }

        Assert.Equal("127.0.0.1", _server.Address.Host);
    }

    private List<string> Files() => [.. Directory.EnumerateFiles(_shop.Folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    private string Stamp()
    {
        var view = Get("view");
        var at = view.IndexOf("\"stamp\":\"", StringComparison.Ordinal) + 9;
        return view[at..view.IndexOf('"', at)];
    }

    private string Get(string path) => Send($"GET /{Token}/{path} HTTP/1.1\r\nHost: {Own}\r\n\r\n");

    private string Post(string path, string body, string? token = "", string? origin = "")
    {
        var head = new StringBuilder();
        head.Append(CultureInfo.InvariantCulture, $"POST /{Token}/{path} HTTP/1.1\r\nHost: {Own}\r\n");
        head.Append(token is null ? "" : $"X-Recipe-Token: {(token.Length == 0 ? Token : token)}\r\n");
        head.Append(origin is null ? "" : $"Origin: {(origin.Length == 0 ? "http://" + Own : origin)}\r\n");
        return head.Append(CultureInfo.InvariantCulture, $"Content-Length: {Encoding.UTF8.GetByteCount(body)}\r\n\r\n{body}").ToString();
    }

    private string Refused(int status, string request)
    {
        var answer = Send(request);
        Assert.True(answer.StartsWith(string.Create(CultureInfo.InvariantCulture, $"HTTP/1.1 {status} "), StringComparison.Ordinal), $"{request}\n{answer}");
        return answer;
    }

    private string Send(string request)
    {
        using var client = new TcpClient();
        client.Connect(_server.Address.Host, Port);
        using var stream = client.GetStream();
        stream.Write(Encoding.UTF8.GetBytes(request));
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
