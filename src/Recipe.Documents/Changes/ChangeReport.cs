using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Recipe.Documents.Changes;
using Recipe.Documents.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Writing;
using Recipe.Model;

namespace Recipe.Documents;

/// <summary>The difference of two versions, in the words of the trade and in figures: for review, not for the bench.</summary>
public static class ChangeReport
{
    /// <summary>The name and version of the JSON schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/changes/1";

    /// <summary>For programs: every line of both stacks, every figure in SI, the lines that were written differently, new and gone findings.</summary>
    public static string AsJson(IReadOnlyList<ComparedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return JsonSerializer.Serialize(new ChangesRecord(Schema, [.. files.Where(file => !file.IsSame).Select(ComparedFileRecord.Of)]), JsonOutput.Shapes.ChangesRecord) + "\n";
    }

    /// <summary>As plain text for a terminal; each line that changed has one letter: + new, - gone, ~ changed, > moved, = renamed.</summary>
    public static string AsText(IReadOnlyList<ComparedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var text = new StringBuilder();
        foreach (var toSay in SaidOnce.Of(files).Where(file => Sections(file).Any()))
        {
            Line($"{toSay.File.Before} -> {toSay.File.After}");
            if (!toSay.Reaches.IsEmpty)
            {
                Line($"reaches {SaidOnce.Names(toSay.Reaches)}");
            }

            foreach (var part in Sections(toSay))
            {
                text.Append('\n');
                Line(part.Title);
                foreach (var group in part.Rows.GroupBy(row => row.Group, StringComparer.Ordinal))
                {
                    Line("  ", group.Key);
                    var width = Math.Min(28, group.Max(row => row.What.Length));
                    foreach (var row in group)
                    {
                        Line($"    {row.Letter} ", $"{row.What.PadRight(width)}  {Arrow(row)}".TrimEnd());
                    }
                }
            }
        }

        return text.ToString();

        // What stands in a recipe may not steer the terminal.
        void Line(string indent, string said = "") => text.Append(said.Length == 0 ? PlainText.Spaced(indent) : indent + PlainText.Spaced(said)).Append('\n');
    }

    /// <summary>As Markdown for a review comment.</summary>
    public static string AsMarkdown(IReadOnlyList<ComparedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return MarkdownWriter.Write(Document(files));
    }

    /// <summary>As HTML with both stacks side by side.</summary>
    public static string AsHtml(IReadOnlyList<ComparedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return HtmlWriter.Write(Document(files));
    }

    /// <summary>What is different in one file, section by section; none where nothing is.</summary>
    internal static IEnumerable<Station> StationsOf(ComparedFile file) => StationsOf(SaidOnce.Of(file));

    private static IEnumerable<Station> StationsOf(FileToSay file) => Sections(file).Select((section, i) => new Station(
        section.Title,
        [.. i == 0 && !file.Reaches.IsEmpty ? [new Paragraph($"The changes of this file reach {SaidOnce.Names(file.Reaches)}.")] : ImmutableArray<Block>.Empty, .. Blocks(section)]));

    private static Document Document(IReadOnlyList<ComparedFile> files)
    {
        var said = SaidOnce.Of(files).Where(file => Sections(file).Any()).ToList();
        var changed = said.ConvertAll(file => file.File);
        return new Document
        {
            Kind = "Changes",
            Identity = new Identity(
                changed is [var one] ? one.After : $"{Numbers.Whole(changed.Count)} files", "all", changed is [{ } file] ? file.Parts.FirstOrDefault()?.After?.Revision : null, null,
                changed is [var only] ? $"{only.Before} -> {only.After}" : "several", OfOneBuild: false),
            Paper = PaperSize.A4,
            ForTheBench = false,
            Stations =
            [
                .. said.SelectMany(StationsOf).DefaultIfEmpty(new Station("No change", [new Paragraph("Nothing is different.")])),
            ],
        };
    }

    private static IEnumerable<Block> Blocks(Section section)
    {
        foreach (var block in ChangeBlocks.Lines(section.Written, "What was written"))
        {
            yield return block;
        }

        if (section.Part is { Before: { } before, After: { } after } && section.Written.Any(row => row.Group == PartChanges.Stack) && StacksDrawing.Of(before.Plan, after.Plan) is { } drawing)
        {
            yield return drawing;
        }

        foreach (var block in ChangeBlocks.Effect(section.Figures, PartChanges.Effect))
        {
            yield return block;
        }

        foreach (var block in ChangeBlocks.Lines(section.Findings, ""))
        {
            yield return block;
        }
    }

    private static IEnumerable<Section> Sections(FileToSay toSay)
    {
        var file = toSay.File;
        foreach (var part in file.Parts)
        {
            if (Of(part, file) is { Rows: { IsEmpty: false } } section)
            {
                yield return section;
            }
        }

        var things = file.Parts.Select(part => part.Thing).ToHashSet(StringComparer.Ordinal);
        var rest = PartChanges.OfLines(file.Lines.Where(line => !things.Contains(line.Thing)), null, withoutPlies: false);
        var unread = PartChanges.OfFindings(file.Unread.Before, file.Unread.After);
        if (!rest.IsEmpty || !unread.IsEmpty)
        {
            yield return new Section("Besides the parts", null, rest, [], unread);
        }

        foreach (var (name, lines, usedBy) in toSay.OfUsed)
        {
            var title = usedBy.IsEmpty ? $"In {name}, which it uses" : $"In {name}, which it uses, as {(usedBy.Length == 1 ? "does" : "do")} {SaidOnce.Names(usedBy)}";
            yield return new Section(title, null, PartChanges.OfLines(lines, null, withoutPlies: false), [], []);
        }
    }

    private static Section Of(ComparedPart part, ComparedFile file)
    {
        var title = part.Thing + (part.IsRenamed ? $" (was {part.Before!.Plan.Part.Name})" : "");
        if (part is not { Before: { } before, After: { } after })
        {
            var mark = part.Before is null ? ChangeMark.Added : ChangeMark.Removed;
            var figures = Figures.All.Select(figure => (figure, Value: figure.Value((part.After ?? part.Before)!.Plan))).Where(pair => pair.Value is not null)
                .Select(pair => (pair.figure.Label, Text: pair.figure.Text(new QuantityText((part.After ?? part.Before)!.Plan.Shop), pair.Value!.Value)));
            return new Section(
                title, part, [new ChangeRow("The part", mark, part.Name, "", "")], [.. figures.Select(f => new ChangeRow(PartChanges.Effect, mark, f.Label, part.Before is null ? "" : f.Text, part.Before is null ? f.Text : ""))], []);
        }

        var stack = PartChanges.OfStack(before.Plan, after.Plan);
        return new Section(
            title,
            part,
            [.. stack, .. PartChanges.OfLines(file.Lines, part.Thing, withoutPlies: !stack.IsEmpty)],
            PartChanges.OfFigures(before.Plan, after.Plan, new QuantityText(after.Plan.Shop)),
            PartChanges.OfFindings(before.Findings, after.Findings));
    }

    private static string Arrow(ChangeRow row)
    {
        var value = row.Mark switch
        {
            ChangeMark.Added => row.Now,
            ChangeMark.Removed => row.Was,
            ChangeMark.Moved when row.Was == row.Now => row.Now,
            _ => $"{row.Was}  ->  {row.Now}",
        };
        return row.Difference.Length == 0 ? value : $"{value}  {row.Difference}";
    }

    private sealed record Section(string Title, ComparedPart? Part, ImmutableArray<ChangeRow> Written, ImmutableArray<ChangeRow> Figures, ImmutableArray<ChangeRow> Findings)
    {
        public ImmutableArray<ChangeRow> Rows => [.. Written, .. Figures, .. Findings];
    }
}
