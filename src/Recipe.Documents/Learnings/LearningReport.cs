using System.Collections.Immutable;
using System.Text.Json;
using Recipe.Documents.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Learnings;
using Recipe.Documents.Quantities;
using Recipe.Documents.Writing;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents;

/// <summary>What a shop's build records say of its own figures.</summary>
public static class LearningReport
{
    /// <summary>The name and version of the JSON schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/learnt/1";

    /// <summary>As text for a terminal.</summary>
    public static string AsText(IReadOnlyList<BuildLog> logs, Shop? shop) => PlainWriter.Write(Document(logs, shop));

    /// <summary>As Markdown.</summary>
    public static string AsMarkdown(IReadOnlyList<BuildLog> logs, Shop? shop) => MarkdownWriter.Write(Document(logs, shop));

    /// <summary>For programs: SI units.</summary>
    public static string AsJson(IReadOnlyList<BuildLog> logs)
    {
        ArgumentNullException.ThrowIfNull(logs);
        return JsonSerializer.Serialize(LearntRecord.Of(ShopLearner.Learn(logs)), JsonOutput.Shapes.LearntRecord) + "\n";
    }

    /// <summary>The lines that a shop block can take up, each with the words that it begins with; none where there are too few records.</summary>
    public static IReadOnlyList<(string Key, string Line)> ShopLines(IReadOnlyList<BuildLog> logs, Shop? shop)
    {
        ArgumentNullException.ThrowIfNull(logs);
        var text = new LearntText(shop);
        return [.. ShopLearner.Learn(logs).Select(figure => (Key: LearntText.KeyOf(figure) ?? "", Line: text.LineOf(figure))).Where(pair => pair.Line is not null).Select(pair => (pair.Key, pair.Line!))];
    }

    private static Document Document(IReadOnlyList<BuildLog> logs, Shop? shop)
    {
        ArgumentNullException.ThrowIfNull(logs);
        var figures = ShopLearner.Learn(logs);
        var text = new LearntText(shop);
        var builds = logs.Sum(log => log.Builds.Length);
        return new Document
        {
            Kind = "Learnt figures",
            Identity = new Identity(shop?.Name ?? "this shop", "all", null, null, "build records", OfOneBuild: false),
            Paper = shop?.Paper ?? PaperSize.A4,
            ForTheBench = false,
            Stations =
            [
                new Station($"From {Numbers.Whole(builds)} build {(builds == 1 ? "record" : "records")} of {Numbers.Whole(logs.Count)} {(logs.Count == 1 ? "part" : "parts")}",
                [
                    .. Known(figures, text),
                    .. Lines("Left out, since they do not belong to the others (Grubbs' test, 1 % risk)", figures.SelectMany(figure => figure.Outliers.Select(value => $"{LearntText.NameOf(figure)}: {text.Say(figure.Kind, value.Si)} of {value.Build.Title}"))),
                    .. Lines(
                        $"Too few to say anything; {Numbers.Whole(Estimate.Fewest)} are needed",
                        figures.Where(figure => !figure.IsEnough).Select(figure => $"{LearntText.NameOf(figure)}: {Numbers.Whole(figure.Values.Length)} {(figure.Values.Length == 1 ? "value" : "values")}")),
                    .. Lines("Does not count where it is stated", Stated(logs, figures)),
                    .. Lines("For the shop block", ShopLines(logs, shop).Select(pair => pair.Line)),
                ]),
            ],
        };
    }

    private static IEnumerable<Block> Known(ImmutableArray<LearntFigure> figures, LearntText text)
    {
        if (figures.Any(figure => figure.IsEnough))
        {
            yield return new Table(
                "",
                [new("Figure", NamesTheRow: true), new("Builds", Align.Right), new("Mean", Align.Right), new("95 % of means", Align.Right), new("95 % of the next", Align.Right)],
                [.. figures.Where(figure => figure.IsEnough).Select(figure => Row(figure, figure.Estimate!, text))]);
        }
        else
        {
            yield return new Paragraph("Nothing can be concluded yet.");
        }
    }

    private static CellRow Row(LearntFigure figure, Estimate estimate, LearntText text) => new(
    [
        LearntText.NameOf(figure),
        Numbers.Whole(estimate.Count),
        text.Say(figure.Kind, estimate.Mean),
        text.Say(figure.Kind, Math.Max(0, estimate.Mean - estimate.HalfWidth), estimate.Mean + estimate.HalfWidth),
        text.Say(figure.Kind, LearntText.Least(figure, estimate), estimate.Mean + estimate.NextHalfWidth),
    ]);

    /// <summary>Recipes that state a resin content of their own do not hear of the shop's.</summary>
    private static IEnumerable<string> Stated(IReadOnlyList<BuildLog> logs, ImmutableArray<LearntFigure> figures) =>
        figures.Any(figure => figure.Kind == LearntKind.ResinContent)
            ? logs.Select(log => log.Builds[^1].Part).Where(part => part.WetOut?.Content is not null)
                .Select(part => $"{part.Name} states resin-content {part.WetOut!.Content!.Written} in its wet-out: take that line away, and its plan takes the shop's figures")
            : [];

    private static IEnumerable<Block> Lines(string title, IEnumerable<string> lines)
    {
        var items = lines.Select(line => (Phrase)line).ToImmutableArray();
        if (items.Length > 0)
        {
            yield return new Heading(title);
            yield return new BulletList(items);
        }
    }
}
