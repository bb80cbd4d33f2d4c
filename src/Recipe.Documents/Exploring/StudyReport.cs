using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Recipe.Documents.Changes;
using Recipe.Documents.Exploring;
using Recipe.Documents.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Writing;
using Recipe.Model;
using Recipe.Planning.Exploring;

namespace Recipe.Documents;

/// <summary>The front of a study, for the desk: as text, pages, tables, a picture, and for programs.</summary>
public static class StudyReport
{
    /// <summary>The name and version of the JSON schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/exploration/1";

    // A terminal is no place for more; the tables have all.
    private const int MostRows = 60;

    /// <summary>As plain text for a terminal.</summary>
    public static string AsText(StudyResult result)
    {
        var tables = new StudyTables(result);
        var text = new StringBuilder();
        Line(tables.Heading);
        Line("  " + tables.Counts);
        var troubles = tables.Troubles.ToList();
        var width = troubles.Select(trouble => trouble.What.Length).DefaultIfEmpty(0).Max();
        troubles.ForEach(trouble => Line($"    {trouble.What.PadRight(width)}  {trouble.HowMany}"));
        Line("  " + tables.FrontSays);
        if (tables.Shared.Length > 0)
        {
            Line("  " + tables.Shared);
        }

        Front();
        foreach (var line in tables.AsWritten.Concat(tables.Checked))
        {
            Line("  " + line);
        }

        return text.ToString();

        void Front()
        {
            var rows = tables.Rows.ToList();
            if (rows.Count == 0)
            {
                return;
            }

            var shown = rows.Take(MostRows).Prepend(tables.Columns).ToList();
            var widths = tables.Columns.Select((_, i) => shown.Max(row => row[i].Length)).ToArray();
            Line("");
            foreach (var row in shown)
            {
                Line("    " + string.Join("  ", row.Select((cell, i) => i == 0 || i >= tables.FirstFigure ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i]))));
            }

            if (rows.Count > MostRows)
            {
                Line($"    and {Numbers.Whole(rows.Count - MostRows)} more; --format csv has all of them");
            }

            Line("");
        }

        // What stands in a recipe may not steer the terminal.
        void Line(string said) => text.Append(PlainText.Spaced(said).TrimEnd()).Append('\n');
    }

    /// <summary>As Markdown.</summary>
    public static string AsMarkdown(StudyResult result) => MarkdownWriter.Write(Document(result));

    /// <summary>As one HTML file with the picture in it.</summary>
    public static string AsHtml(StudyResult result) => HtmlWriter.Write(Document(result));

    /// <summary>A record for each candidate of the front, figures in SI.</summary>
    public static string AsCsv(StudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return CsvHead(result.Study, result.Figures) + CsvRows(result.Study, result.Front);
    }

    /// <summary>The header of records of candidates.</summary>
    public static string CsvHead(Study study, ImmutableArray<PartFigure> figures)
    {
        ArgumentNullException.ThrowIfNull(study);
        return CsvWriter.Write(new DataTable(["candidate", "fate", .. study.Choices.Select(choice => choice.Label), .. figures.Select(figure => Figures.Of(figure).Key)], []));
    }

    /// <summary>A record for each candidate, without a header.</summary>
    public static string CsvRows(Study study, IEnumerable<Candidate> candidates)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(candidates);
        var figures = study.Figures.Length;
        return CsvWriter.WriteRows(candidates.Select(candidate => (ImmutableArray<object?>)
        [
            candidate.Index, FateOf(candidate.Fate),
            .. study.OptionsOf(candidate.Index).Select((option, i) => (object?)study.Choices[i].Options[option].Written),
            .. candidate.Values.IsEmpty ? Enumerable.Repeat<object?>(null, figures) : candidate.Values.Select(value => (object?)value),
        ]));
    }

    /// <summary>For programs.</summary>
    public static string AsJson(StudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return JsonSerializer.Serialize(ExplorationRecord.Of(result, Schema), JsonOutput.Shapes.ExplorationRecord) + "\n";
    }

    /// <summary>The picture as a file; null when the study has only one figure, or no candidate is feasible.</summary>
    public static string? AsSvg(StudyResult result) => new StudyTables(result).Picture is { } picture ? SvgWriter.WriteFile(picture) : null;

    /// <summary>What became of a candidate, as programs read it.</summary>
    internal static string FateOf(CandidateFate fate) => fate switch
    {
        CandidateFate.Feasible => "feasible",
        CandidateFate.Broken => "breaks a limit",
        CandidateFate.Unknown => "not computed",
        _ => "same as another",
    };

    private static Document Document(StudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var tables = new StudyTables(result);
        return new Document
        {
            Kind = "Exploration",
            Identity = new Identity(result.Study.Label, result.Study.Name, result.Revision, null, result.SourceName, OfOneBuild: false),
            Paper = PaperSize.A4,
            Landscape = tables.Columns.Length > 6,
            ForTheBench = false,
            Stations =
            [
                new Station("The front", [.. Blocks(tables)]),
                .. tables.Picture is { } picture ? [new Station("Picture", [picture])] : (ImmutableArray<Station>)[],
                new Station("The recipe as written", [new BulletList([.. tables.AsWritten.Concat(tables.Checked).Select(line => Phrase.WithCode(line.Trim()))])]),
            ],
        };
    }

    private static IEnumerable<Block> Blocks(StudyTables tables)
    {
        yield return new Paragraph(tables.Heading + ". " + tables.Counts);
        if (tables.Troubles.Any())
        {
            yield return new Facts([.. tables.Troubles.Select(trouble => new Fact(trouble.What, trouble.HowMany))]);
        }

        yield return new Paragraph(tables.FrontSays + (tables.Shared.Length > 0 ? " " + tables.Shared : ""));
        if (tables.Rows.Any())
        {
            yield return new Table(
                "The front",
                [.. tables.Columns.Select((column, i) => new Column(column, i == 0 || i >= tables.FirstFigure ? Align.Right : Align.Left, NamesTheRow: i == 0))],
                [.. tables.Rows.Select(row => new CellRow([.. row.Select(cell => (Cell)cell)]))]);
        }
    }
}
