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
        foreach (var file in files.Where(file => !file.IsSame))
        {
            Line($"{file.Before} -> {file.After}");
            foreach (var part in Sections(file))
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
    internal static IEnumerable<Station> StationsOf(ComparedFile file) => Sections(file).Select(section => new Station(section.Title, [.. Blocks(section)]));

    private static Document Document(IReadOnlyList<ComparedFile> files)
    {
        var changed = files.Where(file => !file.IsSame).ToList();
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
                .. changed.SelectMany(StationsOf).DefaultIfEmpty(new Station("No change", [new Paragraph("Nothing is different.")])),
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

    private static IEnumerable<Section> Sections(ComparedFile file)
    {
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
