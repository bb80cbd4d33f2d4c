using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Recipe.Compiler.Records;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler.Previewing;

/// <summary>
/// A build record while it is filled in at the bench: the form of <see cref="RecordForm"/>, its lines taken apart at the blanks, and put together again
/// with what was typed. A blank that nobody filled stays one.
/// </summary>
public sealed partial class RecordDraft
{
    private const string Blank = "__";

    // Where the guide puts them: the records of a part are soon more than its folder should show.
    private const string RecordsFolder = "records";

    // Behind these words stands what somebody says or is called, not a figure or a word of the language.
    private static readonly ImmutableHashSet<string> Said = ["by", "helper", "lot", "defect", "cause", "action", "deviation", "because", "note"];

    // What would end a value, its line or its block early.
    private static readonly SearchValues<char> EndsTheLine = SearchValues.Create("\"\\{}#;");

    private readonly string[] _lines;

    /// <summary>Takes up a form that was begun earlier.</summary>
    /// <param name="form">Its text, blanks and all.</param>
    public RecordDraft(string form)
    {
        ArgumentNullException.ThrowIfNull(form);
        _lines = form.Split('\n');
    }

    /// <summary>The text of the form, blanks and all.</summary>
    public string Form => string.Join('\n', _lines);

    /// <summary>Begins one.</summary>
    /// <param name="file">The recipe.</param>
    /// <param name="part">The part.</param>
    /// <param name="serial">Its serial number; 0 or more.</param>
    /// <param name="on">The day.</param>
    /// <param name="usePath">How the record names another file.</param>
    public static RecordDraft Of(CompiledFile file, CompiledPart part, int serial, DateOnly on, Func<string, string> usePath)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(RecordForm.Write(file, part.Name, serial, on, usePath));
    }

    /// <summary>The serial number after the greatest of the records that stand in the file, in its folder and in <c>records</c> beside it.</summary>
    /// <param name="file">The recipe.</param>
    /// <param name="part">The part.</param>
    /// <param name="files">Where its neighbours are read.</param>
    public static int NextSerial(CompiledFile file, CompiledPart part, IFileStore files)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(files);
        var folder = PathNames.FolderOf(file.Source.Name);
        var beside = files.RecipesIn(folder).Concat(files.RecipesIn(PathNames.Resolve(file.Source.Name, RecordsFolder)))
            .Select(name => files.TryRead(name, out var text) ? SyntaxTree.Parse(new SourceText(name, text)) : null)
            .OfType<SyntaxTree>();
        return beside.Prepend(file.Tree).SelectMany(tree => RecordHead.SerialsOf(tree, part.Name)).DefaultIfEmpty(0).Max() + 1;
    }

    /// <summary>Writes <c>lines</c>: each line with blanks, its pieces of text between them and the remark behind it.</summary>
    /// <param name="json">Where it is written, inside an object.</param>
    public void WriteLines(Utf8JsonWriter json)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartArray("lines");
        for (var i = 0; i < _lines.Length; i++)
        {
            var (said, remark) = Parts(_lines[i]);
            var pieces = Blanks().Split(said);
            if (pieces.Length < 2 || said.TrimStart().StartsWith('#'))
            {
                continue;
            }

            json.WriteStartObject();
            json.WriteNumber("line", i);
            json.WriteStartArray("pieces");
            foreach (var piece in pieces)
            {
                json.WriteStringValue(string.Join(' ', piece.Split(' ', StringSplitOptions.RemoveEmptyEntries)));
            }

            json.WriteEndArray();
            if (remark.Length > 0)
            {
                json.WriteString("remark", remark);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The record with what was typed.</summary>
    /// <param name="typed">By the number of a line: what stands in its blanks, in order; empty where nothing was typed.</param>
    public string Fill(IReadOnlyDictionary<int, ImmutableArray<string>> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return string.Join('\n', _lines.Select((line, i) => typed.TryGetValue(i, out var values) ? Filled(line, values) : line));
    }

    private static string Filled(string line, ImmutableArray<string> values)
    {
        var (said, remark) = Parts(line);
        var pieces = Blanks().Split(said.TrimEnd());
        if (pieces.Length < 2 || said.TrimStart().StartsWith('#'))
        {
            return line;
        }

        var text = new StringBuilder(pieces[0]);
        var head = pieces[0].TrimStart().Split(' ')[0];
        for (var i = 1; i < pieces.Length; i++)
        {
            text.Append(i <= values.Length ? Value(head, LastWord(pieces[i - 1]), values[i - 1]) : Blank).Append(pieces[i]);
        }

        return remark.Length > 0 ? $"{text}   # {remark}" : text.ToString();
    }

    private static string LastWord(string piece) => piece.TrimEnd().Split(' ')[^1];

    // Where a defect is is said in words; at what a part was demoulded, or when a hold point was signed, is a figure.
    private static bool IsSaid(string head, string word) => Said.Contains(word) || (head == "defect" && word == "at");

    private static string Value(string head, string word, string typed)
    {
        var value = string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (value.Length == 0)
        {
            return Blank;
        }

        return IsSaid(head, word) || value.AsSpan().ContainsAny(EndsTheLine) || (value.Contains(' ') && !char.IsAsciiDigit(value[0]) && value[0] is not ('-' or '+'))
            ? QuotedText.Of(value)
            : value;
    }

    // A blank is a word of its own: a name may hold two underscores.
    [GeneratedRegex(@"(?<!\S)__(?!\S)", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();

    // A remark begins at a number sign outside quotes.
    private static (string Said, string Remark) Parts(string line)
    {
        var (quoted, escaped) = (false, false);
        for (var i = 0; i < line.Length; i++)
        {
            quoted ^= line[i] == '"' && !escaped;
            escaped = line[i] == '\\' && !escaped;
            if (line[i] == '#' && !quoted)
            {
                return (line[..i], line[(i + 1)..].Trim());
            }
        }

        return (line, "");
    }
}
