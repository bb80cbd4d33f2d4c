using Recipe.Documents.Writing.Pdf;

namespace Recipe.Documents.Tests;

public sealed class GoldenTests
{
    /// <summary>How many pages each paper of a case has, and which station begins on which.</summary>
    internal const string PagesFile = "pages.txt";

    /// <summary>A traveller in German.</summary>
    internal const string GermanFile = "hatch-lid/paper.traveller.de.md";

    public static TheoryData<string, string, PaperFormat> Papers
    {
        get
        {
            var data = new TheoryData<string, string, PaperFormat>();
            foreach (var (name, kind, format) in Cases.Papers)
            {
                data.Add(name, kind.Name, format);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void A_paper_is_written_as_it_was_kept(string name, string kind, PaperFormat format)
    {
        var paper = Documents.Papers.Find(kind)!;
        Golden.Check(Path.Combine(name, paper.FileName("paper", format)), Documents.Papers.Write(Cases.All[name], paper, format));
    }

    [Fact]
    public void Findings_are_written_as_they_were_kept()
    {
        foreach (var (name, input) in Cases.All)
        {
            Golden.Check(Path.Combine(name, "findings.json"), FindingsJson.Write(input.Findings, input.NotChecked));
        }
    }

    [Fact]
    public void The_pages_of_every_case_are_the_kept_ones()
    {
        foreach (var (name, input) in Cases.All)
        {
            var lines = new List<string>();
            foreach (var size in PdfPageTests.Sizes)
            {
                foreach (var document in Cases.Built(input with { Paper = size }))
                {
                    var paper = PdfPages.Of(document);
                    lines.Add($"{document.Kind}, {size}{(document.Landscape ? " landscape" : "")}, {paper.Pages.Count} pages");
                    lines.AddRange(document.Stations.Select((station, i) => $"  page {paper.Starts[i] + 1} {station.Title}"));
                }
            }

            Golden.Check(Path.Combine(name, PagesFile), string.Join('\n', lines) + "\n");
        }
    }

    [Fact]
    public void No_kept_paper_is_left_over()
    {
        var expected = Cases.Papers.Select(paper => Path.Combine(paper.Case, paper.Kind.FileName("paper", paper.Format)))
            .Concat(Cases.All.Keys.SelectMany(name => (string[])[Path.Combine(name, "findings.json"), Path.Combine(name, PagesFile)]))
            .Concat(PartsReportTests.Kept.Select(file => file.Replace('/', Path.DirectorySeparatorChar)))
            .Append(GermanFile.Replace('/', Path.DirectorySeparatorChar))
            .Order(StringComparer.Ordinal);
        var kept = Directory.EnumerateFiles(Golden.Folder(), "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Golden.Folder(), path))
            .Order(StringComparer.Ordinal);
        Assert.Equal(expected, kept);
    }
}
