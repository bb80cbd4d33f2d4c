using System.Buffers;
using System.Text.Json;
using Recipe.Compiler.Comparing;
using Recipe.Documents;

namespace Recipe.Compiler.Previewing;

/// <summary>
/// What the page that follows a recipe shows at a moment, as JSON in the schema <c>recipe/preview/1</c>. It remembers the file as it last was sound:
/// while the text cannot be understood it shows the pictures of that, marked as old, beside the findings. For one thread.
/// </summary>
/// <param name="name">The name of the file, as it is shown.</param>
public sealed class PreviewPage(string name)
{
    /// <summary>The name and version of the JSON schema.</summary>
    public const string Schema = "recipe/preview/1";

    private CompiledFile? _now;
    private CompiledFile? _sound;
    private string? _trouble;

    /// <summary>The file as it is understood now; null when it is not there or cannot be understood.</summary>
    public CompiledFile? Sound => _now is { NotUnderstood.IsEmpty: true } ? _now : null;

    /// <summary>The part that is shown when another one, or none, is asked for; null when there is none.</summary>
    /// <param name="file">The file.</param>
    /// <param name="part">The part that is asked for.</param>
    public static CompiledPart? Find(CompiledFile file, string? part)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Parts.FirstOrDefault(known => known.Name == part) ?? file.Parts.FirstOrDefault();
    }

    /// <summary>Takes the file as it is now; whether that is another moment than before.</summary>
    /// <param name="file">The file; null when it is not there.</param>
    /// <param name="trouble">Why it cannot be read, as a sentence; null when it can.</param>
    public bool Take(CompiledFile? file, string? trouble)
    {
        if (ReferenceEquals(file, _now) && trouble == _trouble)
        {
            return false;
        }

        (_now, _trouble) = (file, trouble);
        _sound = Sound ?? _sound;
        return true;
    }

    /// <summary>Writes the moment.</summary>
    /// <param name="part">The part to show; the first one when there is no such part.</param>
    /// <param name="stamp">What this text is known by, when a change of it is asked for.</param>
    /// <param name="earlier">What it is compared with; null while that is not known yet.</param>
    /// <param name="today">The day, as the workspace was given it.</param>
    public byte[] Write(string? part, string stamp, EarlierText? earlier, DateOnly? today) => Object(json =>
    {
        json.WriteString("schema", Schema);
        json.WriteString("file", name);
        json.WriteString("stamp", stamp);
        json.WriteString("state", _now is null ? "gone" : Sound is null ? "broken" : "sound");
        if (_trouble is not null)
        {
            json.WriteString("trouble", _trouble);
        }

        json.WriteStartArray("parts");
        foreach (var known in _sound?.Parts ?? [])
        {
            json.WriteStartObject();
            json.WriteString("name", known.Name);
            json.WriteString("label", known.Part.Label);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FindingRows.Write(json, _now);
        if (_sound is not null && Find(_sound, part) is { } found)
        {
            json.WriteString("part", found.Name);
            json.WriteStartObject("picture");
            Picture(json, _sound, found, earlier, today);
            json.WriteEndObject();
        }
    });

    /// <summary>What a change of the text would do, against the text as it stands: the pictures of the changed text, and the lines that differ.</summary>
    /// <param name="now">The file as it stands.</param>
    /// <param name="changed">The same with the changed text.</param>
    /// <param name="part">The part to show.</param>
    /// <param name="today">The day, as the workspace was given it.</param>
    public static byte[] WriteTrial(CompiledFile now, CompiledFile changed, string part, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(changed);
        return Object(json =>
        {
            json.WriteString("schema", Schema);
            json.WriteString("part", part);
            FindingRows.Write(json, changed);
            json.WriteStartArray("diff");
            foreach (var line in UnifiedDiff.Of(now.Source.Text, changed.Source.Text))
            {
                json.WriteStringValue(line);
            }

            json.WriteEndArray();
            if (changed.Parts.FirstOrDefault(known => known.Name == part) is { } found)
            {
                json.WriteStartObject("picture");
                Picture(json, changed, found, new EarlierText(now, "the file as it stands", null), today);
                json.WriteEndObject();
            }
        });
    }

    /// <summary>The stations of a part, its pots, and the blanks of a build record.</summary>
    /// <param name="file">The file.</param>
    /// <param name="part">The part.</param>
    /// <param name="serial">Its serial number.</param>
    /// <param name="draft">The record that is begun.</param>
    /// <param name="today">The day.</param>
    public static byte[] WriteBench(CompiledFile file, CompiledPart part, int serial, RecordDraft draft, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(draft);
        return Object(json =>
        {
            json.WriteString("schema", Schema);
            json.WriteString("part", part.Name);
            json.WriteString("label", part.Part.Label);
            json.WriteString("revision", file.Revision);
            json.WriteNumber("serial", serial);
            json.WriteString("form", draft.Form);
            var input = BenchPapers.InputFor(file, part, new PaperWish { Part = part.Name, Today = today });
            PreviewJson.WriteStations(json, input);
            PreviewJson.WritePots(json, input);
            draft.WriteLines(json);
        });
    }

    /// <summary>A record as far as it is filled in, and what the checks find in it.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="compiled">The same, compiled.</param>
    public static byte[] WriteRecord(string text, CompiledFile? compiled) => Object(json =>
    {
        json.WriteString("schema", Schema);
        json.WriteString("text", text);
        FindingRows.Write(json, compiled);
    });

    private static void Picture(Utf8JsonWriter json, CompiledFile file, CompiledPart part, EarlierText? earlier, DateOnly? today)
    {
        var input = BenchPapers.InputFor(file, part, new PaperWish { Part = part.Name, Today = today });
        var compared = earlier is { Refusal: null }
            ? FileComparer.Of(new FileVersions(earlier.File, earlier.Name, file, file.Source.Name), today, part.Name)
            : null;
        json.WriteString("label", part.Part.Label);
        json.WriteString("name", part.Name);
        json.WriteString("revision", file.Revision);
        PreviewJson.WriteFigures(json, input, compared?.Parts is [{ Before: { } before }, ..] ? before : null);
        json.WriteStartObject("changes");
        if (compared is not null)
        {
            json.WriteString("against", earlier!.Name);
            PreviewJson.WriteChanges(json, compared);
        }
        else
        {
            json.WriteString("refusal", earlier?.Refusal ?? "The last commit is being read.");
        }

        json.WriteEndObject();
        PreviewJson.WritePanels(json, input);
        json.WriteStartArray("levers");
        foreach (var lever in WhatIf.LeversOf(file, part))
        {
            json.WriteStartObject();
            json.WriteString("id", lever.Id);
            json.WriteString("label", lever.Label);
            json.WriteNumber("value", lever.Value);
            json.WriteNumber("low", lever.Low);
            json.WriteNumber("high", lever.High);
            json.WriteNumber("step", lever.Step);
            json.WriteString("unit", lever.Unit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static byte[] Object(Action<Utf8JsonWriter> write)
    {
        var bytes = new ArrayBufferWriter<byte>(64 * 1024);
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return bytes.WrittenSpan.ToArray();
    }
}
