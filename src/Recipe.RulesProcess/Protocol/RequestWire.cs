using System.Text.Json;

namespace Recipe.RulesProcess.Protocol;

/// <summary>Requests on the wire.</summary>
internal static class RequestWire
{
    /// <summary>A request as a line.</summary>
    public static byte[] Write(HostRequest request) => Wire.Line(json =>
    {
        json.WriteNumber("protocol", Wire.Version);
        json.WriteNumber("id", request.Id);
        WriteBody(json, request);
    });

    /// <summary>Everything of a request that its answer depends on.</summary>
    public static byte[] Body(HostRequest request) => Wire.Line(json => WriteBody(json, request));

    /// <summary>Reads a request.</summary>
    /// <exception cref="JsonException">It is none, or of another protocol.</exception>
    public static HostRequest Read(ReadOnlyMemory<byte> line)
    {
        using var document = Wire.Parse(line);
        var root = document.RootElement;
        if (root.ValueKind != JsonValueKind.Object || Wire.Whole(root, "protocol") != Wire.Version)
        {
            throw new JsonException("it is of another protocol");
        }

        return new HostRequest(
            Wire.Whole(root, "id"),
            Wire.ReadList(root, "files", file => new RuleSource(Wire.Text(file, "name"), Wire.Text(file, "text"))),
            root.TryGetProperty("parts", out _) ? Wire.ReadList(root, "parts", FactWire.Read) : null,
            Wire.ReadList(root, "skip", rule => new SkippedRule(Wire.Text(rule, "file"), Wire.Text(rule, "rule"))),
            Wire.ReadList(root, "skipFiles", file => file.GetString() ?? ""));
    }

    private static void WriteBody(Utf8JsonWriter json, HostRequest request)
    {
        Wire.WriteObjects(json, "files", request.Files, file =>
        {
            json.WriteString("name", file.Name);
            json.WriteString("text", file.Text);
        });
        Wire.WriteObjects(json, "skip", request.Skip, rule =>
        {
            json.WriteString("file", rule.File);
            json.WriteString("rule", rule.Rule);
        });
        Wire.WriteList(json, "skipFiles", request.SkipFiles, json.WriteStringValue);
        if (request.Parts is { } parts)
        {
            Wire.WriteObjects(json, "parts", parts, part => FactWire.Write(json, part));
        }
    }
}
