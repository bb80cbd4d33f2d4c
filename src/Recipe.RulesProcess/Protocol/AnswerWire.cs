using System.Text.Json;

namespace Recipe.RulesProcess.Protocol;

/// <summary>What the host writes: its greeting, progress, answers.</summary>
internal static class AnswerWire
{
    /// <summary>The first line of a host.</summary>
    public static byte[] Greeting(string version) => Wire.Line(json =>
    {
        json.WriteNumber("protocol", Wire.Version);
        json.WriteString("host", version);
    });

    /// <summary>Progress as a line.</summary>
    public static byte[] Write(HostProgress progress) => Wire.Line(json =>
    {
        json.WriteNumber("at", progress.Id);
        json.WriteString("file", progress.File);
        if (progress.Rule is { } rule)
        {
            json.WriteString("rule", rule);
        }

        if (progress.Part is { } part)
        {
            json.WriteNumber("part", part);
        }
    });

    /// <summary>An answer as a line.</summary>
    public static byte[] Write(HostAnswer answer) => Wire.Line(json =>
    {
        json.WriteNumber("answer", answer.Id);
        DescriptionWire.WriteAll(json, answer.Run.Rules);
        Wire.WriteObjects(json, "diagnostics", answer.Run.Diagnostics, one =>
        {
            json.WriteString("file", one.File);
            json.WriteNumber("start", one.Start);
            json.WriteNumber("end", one.End);
            json.WriteString("code", one.Code);
            json.WriteString("message", one.Message);
        });
        Wire.WriteObjects(json, "findings", answer.Run.Findings, one =>
        {
            WriteRule(json, one.File, one.Rule, one.Part);
            if (one.Group is { } group)
            {
                json.WriteString("group", group);
            }

            json.WriteNumber("index", one.Index);
            json.WriteNumber("severity", (int)one.Severity);
            json.WriteString("message", one.Message);
        });
        Wire.WriteObjects(json, "notChecked", answer.Run.NotChecked, one =>
        {
            WriteRule(json, one.File, one.Rule, one.Part);
            json.WriteString("missing", one.Missing);
        });
        Wire.WriteObjects(json, "problems", answer.Run.Problems, one =>
        {
            json.WriteNumber("kind", (int)one.Kind);
            WriteRule(json, one.File, one.Rule, one.Part);
            json.WriteString("message", one.Message);
        });
        Wire.WriteList(json, "compiled", answer.Compiled, json.WriteStringValue);
        Wire.WriteList(json, "assemblies", answer.Assemblies, json.WriteStringValue);
    });

    /// <summary>The protocol and version that a host greets with.</summary>
    /// <exception cref="JsonException">It is no greeting.</exception>
    public static (int Protocol, string Host) ReadGreeting(ReadOnlyMemory<byte> line)
    {
        using var document = Wire.Parse(line);
        return (Wire.Whole(document.RootElement, "protocol"), Wire.Text(document.RootElement, "host"));
    }

    /// <summary>Reads progress or an answer.</summary>
    /// <exception cref="JsonException">It is neither.</exception>
    public static (HostProgress? Progress, HostAnswer? Answer) Read(ReadOnlyMemory<byte> line)
    {
        using var document = Wire.Parse(line);
        var root = document.RootElement;
        if (root.ValueKind != JsonValueKind.Object)
        {
            throw new JsonException("it is no object");
        }

        if (Wire.MaybeWhole(root, "at") is { } at)
        {
            return (new HostProgress(at, Wire.Text(root, "file"), Wire.MaybeText(root, "rule"), Wire.MaybeWhole(root, "part")), null);
        }

        var run = new RuleRunAnswer(
            DescriptionWire.ReadAll(root),
            Wire.ReadList(root, "diagnostics", one => new RuleDiagnostic(Wire.Text(one, "file"), Wire.Whole(one, "start"), Wire.Whole(one, "end"), Wire.Text(one, "code"), Wire.Text(one, "message"))),
            Wire.ReadList(root, "findings", ReadFinding),
            Wire.ReadList(root, "notChecked", one => new RuleNotChecked(Wire.Text(one, "file"), Wire.Text(one, "rule"), Wire.Whole(one, "part"), Wire.Text(one, "missing"))),
            Wire.ReadList(root, "problems", one => new RuleProblem((RuleProblemKind)Wire.Whole(one, "kind"), Wire.MaybeText(one, "file"), Wire.MaybeText(one, "rule"), Wire.MaybeWhole(one, "part"), Wire.Text(one, "message"))));
        return (null, new HostAnswer(Wire.Whole(root, "answer"), run, Texts(root, "compiled"), Texts(root, "assemblies")));
    }

    private static RuleRunFinding ReadFinding(JsonElement one) =>
        new(
            Wire.Text(one, "file"),
            Wire.Text(one, "rule"),
            Wire.Whole(one, "part"),
            Wire.MaybeText(one, "group"),
            Wire.Whole(one, "index"),
            DescriptionWire.Severity(Wire.Whole(one, "severity")),
            Wire.Text(one, "message"));

    private static System.Collections.Immutable.ImmutableArray<string> Texts(JsonElement root, string name) =>
        Wire.ReadList(root, name, one => one.GetString() ?? "");

    private static void WriteRule(Utf8JsonWriter json, string? file, string? rule, int? part)
    {
        if (file is not null)
        {
            json.WriteString("file", file);
        }

        if (rule is not null)
        {
            json.WriteString("rule", rule);
        }

        if (part is { } index)
        {
            json.WriteNumber("part", index);
        }
    }
}
