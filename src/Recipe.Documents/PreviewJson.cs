using System.Collections.Immutable;
using System.Text.Json;
using Recipe.Documents.Changes;
using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Previews;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Writing;
using Recipe.Model;

namespace Recipe.Documents;

/// <summary>
/// What the page that follows a recipe shows, as members of a JSON object: what papers say, in the same words. Texts are plain and clean of what
/// could steer a terminal or turn text round; drawings are SVG without script, style or address.
/// </summary>
public static class PreviewJson
{
    // What is seen first, at the head of the page.
    private static readonly ImmutableArray<PartFigure> Head =
        [PartFigure.Mass, PartFigure.Thickness, PartFigure.ResinContent, PartFigure.Resin, PartFigure.Pots, PartFigure.ClockLeft, PartFigure.CureEnd, PartFigure.Hottest, PartFigure.Cost];

    /// <summary>Writes <c>figures</c>: the figures at the head, each with its difference to an earlier version where there is one.</summary>
    /// <param name="json">Where it is written, inside an object.</param>
    /// <param name="input">The part.</param>
    /// <param name="before">The part in the earlier version, or null.</param>
    public static void WriteFigures(Utf8JsonWriter json, PaperInput input, PaperInput? before)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(input);
        var text = new QuantityText(input.Plan.Shop, input.Units);
        json.WriteStartArray("figures");
        foreach (var figure in Head.Select(Figures.Of))
        {
            if (figure.Value(input.Plan) is not { } now)
            {
                continue;
            }

            json.WriteStartObject();
            json.WriteString("label", figure.Label);
            json.WriteString("value", figure.Text(text, now));
            json.WriteBoolean("alarm", figure.Kind == PartFigure.ClockLeft && now < 0);
            if (before is not null && figure.Value(before.Plan) is { } was && figure.Text(text, was) != figure.Text(text, now))
            {
                json.WriteString("was", figure.Text(text, was));
                json.WriteString("difference", Figures.Difference(figure, text, was, now));
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes <c>panels</c>: stack, shape, clock, bag, cure, pieces, those that the part has, and what the numbers rest on.</summary>
    /// <param name="json">Where it is written, inside an object.</param>
    /// <param name="input">The part.</param>
    public static void WritePanels(Utf8JsonWriter json, PaperInput input)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(input);
        var blocks = new BlockJson(json, withTicks: false);
        json.WriteStartArray("panels");
        foreach (var panel in PreviewPanels.Of(input))
        {
            json.WriteStartObject();
            json.WriteString("id", panel.Id);
            json.WriteString("title", panel.Title);
            json.WriteBoolean("folded", panel.IsFolded);
            blocks.Write("blocks", panel.Blocks);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes <c>blocks</c>: what is different between two versions of a part; empty when nothing is.</summary>
    /// <param name="json">Where it is written, inside an object.</param>
    /// <param name="compared">The two versions.</param>
    public static void WriteChanges(Utf8JsonWriter json, ComparedFile compared)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(compared);
        new BlockJson(json, withTicks: false).Write("blocks", ChangeReport.StationsOf(compared).SelectMany(station => station.Blocks));
    }

    /// <summary>Writes <c>stations</c>: those of the traveller, then those of the cards that it names, in the order of the day.</summary>
    /// <param name="json">Where it is written, inside an object.</param>
    /// <param name="input">The part.</param>
    public static void WriteStations(Utf8JsonWriter json, PaperInput input)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(input);
        var blocks = new BlockJson(json, withTicks: true);
        json.WriteStartArray("stations");
        foreach (var kind in (PaperKind[])[Papers.Traveller, Papers.CutList, Papers.MixCards, Papers.LayUp, Papers.Bag, Papers.Vacuum, Papers.Cure])
        {
            if (!kind.AppliesTo(input))
            {
                continue;
            }

            foreach (var station in kind.Build(input).Stations)
            {
                json.WriteStartObject();
                json.WriteString("paper", kind.Title);
                json.WriteString("title", PlainText.Clean(station.Title));
                json.WriteStartArray("holds");
                foreach (var hold in station.Blocks.OfType<HoldPoint>())
                {
                    json.WriteStringValue(hold.Id);
                }

                json.WriteEndArray();
                blocks.Write("blocks", station.Blocks);
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    /// <summary>Writes <c>pots</c>: every pot with what goes into it and how long it lives; seconds, null where nobody knows.</summary>
    /// <param name="json">Where it is written, inside an object.</param>
    /// <param name="input">The part.</param>
    public static void WritePots(Utf8JsonWriter json, PaperInput input)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(input);
        var context = new PaperContext(input);
        json.WriteStartArray("pots");
        foreach (var run in MixRun.Of(context))
        {
            foreach (var pot in run.Pots)
            {
                json.WriteStartObject();
                json.WriteString("name", run.Pots.Length > 1 || run.Own is null ? $"{run.Name} {Numbers.Whole(pot.Number)}" : run.Name);
                json.WriteNumber("number", run.Own is null ? pot.Number : 0);
                json.WriteString("use", PlainText.Clean(run.Use));
                json.WriteString("amount", pot is { Resin: { } resin, Hardener: { } hardener }
                    ? $"{context.Text.Weight(resin.Value).Main} + {context.Text.Weight(hardener.Value).Main}"
                    : context.Text.Weight(pot.Mass.Value).Main);
                if (pot.PotLife is { } life && double.IsFinite(life.Value.Seconds))
                {
                    // Rounded down as papers do: the timer must not promise more than the card.
                    json.WriteNumber("life_s", Math.Floor(life.Value.Minutes) * 60);
                }

                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }
}
