using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Recipe.Compiler.Previewing;
using Recipe.Disk;
using Recipe.Preview.Http;
using Recipe.Text;

namespace Recipe.Preview;

/// <summary>
/// What is answered. Looking (GET) changes nothing; a trial (POST) computes and changes nothing either; only <c>apply</c> writes into the recipe and
/// only <c>record/write</c> makes a new file beside it, each when somebody pressed the button that says so.
/// </summary>
internal sealed class Routes(Doorman doorman, Desk desk, EventStreams streams, PreviewWish wish)
{
    /// <summary>Answers one request.</summary>
    public async Task<HttpReply?> Answer(HttpRequest request, Stream stream, CancellationToken stop)
    {
        switch (request.Method, doorman.Admit(request))
        {
            case (_, null):
                return Hello(request);
            case ("GET", "events"):
                await streams.Serve(stream, stop).ConfigureAwait(false);
                return null;
            case ("GET", "view"):
                return Json(await desk.View(request.Asked("part")).ConfigureAwait(false));
            case ("GET", "bench"):
                return Json(await desk.Bench(request.Asked("part") ?? "", Serial(request.Asked("serial"))).ConfigureAwait(false));
            case ("GET", var name):
                return PageFiles.Find(name) ?? HttpReply.Refused(404, "There is nothing of that name here.");
            case (_, "trial"):
                using (var body = Read(request))
                {
                    return Json(await desk.Trial(Text(body, "part"), Values(body)).ConfigureAwait(false));
                }

            case (_, "apply"):
                using (var body = Read(request))
                {
                    await desk.Apply(Text(body, "part"), Text(body, "stamp"), Values(body)).ConfigureAwait(false);
                    return Json("{}"u8.ToArray());
                }

            case (_, "record"):
                using (var body = Read(request))
                {
                    return Json(await desk.Record(Filled(body)).ConfigureAwait(false));
                }

            case (_, "record/write"):
                using (var body = Read(request))
                {
                    var file = Text(body, "file");
                    WholeFile.Create(BesideTheRecipe(file), Filled(body), "a record is never written over");
                    return Json("{}"u8.ToArray());
                }

            default:
                return HttpReply.Refused(404, "There is nothing of that name here.");
        }
    }

    private HttpReply Hello(HttpRequest request) => request.Asked("nonce") is { Length: >= 16 and <= 128 } nonce
        ? new HttpReply(200, "text/plain; charset=utf-8", Encoding.ASCII.GetBytes(doorman.Prove(nonce)))
        : HttpReply.Refused(400, "A greeting needs a nonce.");

    private static HttpReply Json(byte[] body) => new(200, HttpReply.Json, body);

    private static int? Serial(string? asked) => asked is null
        ? null
        : int.TryParse(asked, NumberStyles.None, CultureInfo.InvariantCulture, out var serial) ? serial : throw new HttpRefusal(400, "A serial number is a whole number.");

    private static JsonDocument Read(HttpRequest request)
    {
        try
        {
            var body = JsonDocument.Parse(request.Body, new JsonDocumentOptions { MaxDepth = 8 });
            if (body.RootElement.ValueKind == JsonValueKind.Object)
            {
                return body;
            }

            body.Dispose();
        }
        catch (JsonException)
        {
            // As below.
        }

        throw new HttpRefusal(400, "The body is no object of JSON.");
    }

    private static string Text(JsonDocument body, string name) => body.RootElement.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String
        ? value.GetString()!
        : throw new HttpRefusal(400, $"'{name}' is missing.");

    private static Dictionary<string, double> Values(JsonDocument body)
    {
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        if (body.RootElement.TryGetProperty("values", out var given) && given.ValueKind == JsonValueKind.Object)
        {
            foreach (var value in given.EnumerateObject())
            {
                values[value.Name] = value.Value.ValueKind == JsonValueKind.Number && value.Value.TryGetDouble(out var number) && double.IsFinite(number)
                    ? number
                    : throw new HttpRefusal(400, $"'{value.Name}' is no number.");
            }
        }

        return values;
    }

    // The form as it was begun comes back with what was typed, so that a recipe that changes in the middle of a build does not change its record.
    private static string Filled(JsonDocument body)
    {
        var typed = new Dictionary<int, ImmutableArray<string>>();
        if (body.RootElement.TryGetProperty("typed", out var given) && given.ValueKind == JsonValueKind.Object)
        {
            foreach (var line in given.EnumerateObject())
            {
                if (!int.TryParse(line.Name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || line.Value.ValueKind != JsonValueKind.Array
                    || line.Value.EnumerateArray().Any(value => value.ValueKind != JsonValueKind.String))
                {
                    throw new HttpRefusal(400, "What was typed is no list of texts by line.");
                }

                typed[number] = [.. line.Value.EnumerateArray().Select(value => value.GetString()!)];
            }
        }

        return new RecordDraft(Text(body, "form")).Fill(typed);
    }

    // A name and no path, and nothing that some system takes for something else.
    private string BesideTheRecipe(string file) =>
        file.Length > FileEndings.Recipe.Length && file.Length <= 100 && file.EndsWith(FileEndings.Recipe, StringComparison.Ordinal) && file[0] is not ('.' or '-') && file[..^FileEndings.Recipe.Length].All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_')
            ? Path.Combine(Path.GetDirectoryName(wish.Path)!, file)
            : throw new HttpRefusal(400, "A record is named by letters, digits, hyphens, and .recipe at the end; it is written beside the recipe.");
}
