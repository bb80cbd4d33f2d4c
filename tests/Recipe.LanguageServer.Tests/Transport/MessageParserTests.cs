using System.Text;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer.Tests.Transport;

public sealed class MessageParserTests
{
    [Fact]
    public void A_request_has_a_method_an_id_and_parameters()
    {
        var message = Parse("""{ "id": 7, "params": { "a": [1, {}] }, "other": [[]], "method": "m", "jsonrpc": "2.0" }""");
        Assert.Equal(MessageKind.Request, message.Kind);
        Assert.Equal("m", message.Method);
        Assert.Equal(new RequestId(7, null), message.Id);
        Assert.Equal("""{ "a": [1, {}] }""", Encoding.UTF8.GetString(message.Params.Span));
    }

    [Fact]
    public void An_id_may_be_a_text() =>
        Assert.Equal(new RequestId(null, "x-1"), Parse("""{"jsonrpc":"2.0","id":"x-1","method":"m"}""").Id);

    [Theory]
    [InlineData("""{"jsonrpc":"2.0","method":"m"}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"m","params":null}""")]
    public void Without_an_id_it_is_a_notification_and_parameters_may_be_missing(string json)
    {
        var message = Parse(json);
        Assert.Equal(MessageKind.Notification, message.Kind);
        Assert.True(message.Params.IsEmpty);
    }

    [Fact]
    public void An_answer_has_a_result_or_an_error()
    {
        Assert.Equal("[1]", Encoding.UTF8.GetString(Parse("""{"jsonrpc":"2.0","id":1,"result":[1]}""").Result.Span));
        var error = Parse("""{"jsonrpc":"2.0","id":1,"error":{"code":-1,"message":"no"}}""");
        Assert.Equal(MessageKind.Response, error.Kind);
        Assert.True(error.Result.IsEmpty);
    }

    [Theory]
    [InlineData("""{"id":3,"method":"m"}""", 3)]
    [InlineData("""{"jsonrpc":"1.0","id":3,"method":"m"}""", 3)]
    [InlineData("""{"jsonrpc":"2.0","id":3,"method":5}""", 3)]
    [InlineData("""{"jsonrpc":"2.0","id":3}""", 3)]
    [InlineData("""{"jsonrpc":"2.0","id":3,"method":"m","params":1}""", 3)]
    [InlineData("""{"jsonrpc":"2.0","id":1.5,"method":"m"}""", null)]
    [InlineData("""{"jsonrpc":"2.0","id":{},"method":"m"}""", null)]
    [InlineData("""{"jsonrpc":"2.0","id":99999999999999999999,"method":"m"}""", null)]
    [InlineData("""[{"jsonrpc":"2.0","id":1,"method":"m"}]""", null)]
    [InlineData("[]", null)]
    [InlineData("1", null)]
    [InlineData("null", null)]
    [InlineData("\"m\"", null)]
    public void Json_that_is_no_message_is_an_invalid_request(string json, int? id)
    {
        var message = Parse(json);
        Assert.Equal(MessageKind.Faulty, message.Kind);
        Assert.Equal(ErrorCode.InvalidRequest, message.Fault!.Code);
        Assert.Equal(new RequestId(id, null), message.Id);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("{")]
    [InlineData("{]")]
    [InlineData("""{"jsonrpc":"2.0","method":"m"}}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"m"} {}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"m",}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"\ud800"}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"m","id":"\udc00"}""")]
    [InlineData("garbage")]
    public void What_is_no_json_is_a_parse_error(string json) => Assert.Equal(ErrorCode.ParseError, Parse(json).Fault!.Code);

    [Fact]
    public void Bytes_that_are_no_utf8_in_the_envelope_are_a_parse_error() =>
        Assert.Equal(ErrorCode.ParseError, MessageParser.Parse((byte[])[.. "{\"jsonrpc\":\"2.0\",\"method\":\""u8, 0xFF, .. "\"}"u8]).Fault!.Code);

    [Theory]
    [InlineData('[', ']')]
    [InlineData('{', '}')]
    public void Nesting_has_a_limit(char open, char close)
    {
        Assert.Equal(ErrorCode.ParseError, Parse(new string(open, 100_000)).Fault!.Code);
        var nested = open == '[' ? new string(open, 100) + new string(close, 100) : string.Concat(Enumerable.Repeat("{\"a\":", 100)) + "1" + new string(close, 100);
        Assert.Equal(ErrorCode.ParseError, Parse($$"""{"jsonrpc":"2.0","method":"m","params":{{nested}}}""").Fault!.Code);
    }

    private static Message Parse(string json) => MessageParser.Parse(Encoding.UTF8.GetBytes(json));
}
