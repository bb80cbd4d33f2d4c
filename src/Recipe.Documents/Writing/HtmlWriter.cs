using System.Text;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing;

/// <summary>
/// Writes a paper as one HTML file that is well-formed XML too. It needs nothing from outside and runs nothing: a policy in its
/// head refuses scripts and requests. On paper each station of a bench paper starts a page; page numbers come from the page boxes
/// of CSS Paged Media, and a browser without them still prints part, revision and station on every station.
/// </summary>
internal static class HtmlWriter
{
    public static string Write(Document document)
    {
        var html = new StringBuilder();
        Head(html, document);
        html.Append($"<h1>{HtmlText.Escape(document.Title)}</h1>\n");
        html.Append($"<p class=\"identity\">{HtmlText.Escape(IdentityLine.Of(document.Identity))}</p>\n");
        for (var i = 0; i < document.Stations.Length; i++)
        {
            Append(html, document, i);
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static void Head(StringBuilder html, Document document) => html
        .Append($"<!DOCTYPE html>\n<html lang=\"{(document.Identity.Wording.Language == "en" ? "en-GB" : document.Identity.Wording.Language)}\">\n<head>\n<meta charset=\"utf-8\" />\n")
        .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\" />\n")
        .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n")
        .Append($"<title>{HtmlText.Escape(TitleOf(document))}</title>\n")
        .Append($"<style>\n{HtmlStyle.For(document)}</style>\n</head>\n")
        .Append($"<body class=\"{(document.ForTheBench ? "bench" : "desk")}\">\n<main>\n");

    // Browsers that know no page boxes print the title on every page instead.
    private static string TitleOf(Document document) =>
        document.Identity.Revision is { } revision ? document.Identity.Wording.Say($"{document.Title}, revision {revision}") : document.Title;

    private static void Append(StringBuilder html, Document document, int index)
    {
        var (station, say) = (document.Stations[index], document.Identity.Wording);
        var id = $"station-{index + 1}";
        html.Append($"<section class=\"station{(document.OnePlace ? " one-place" : "")}\" aria-labelledby=\"{id}\">\n");
        if (document.ForTheBench)
        {
            html.Append("<header class=\"station-head\">\n")
                .Append($"<h2 id=\"{id}\"><span class=\"number\">{index + 1}</span> {HtmlText.Escape(station.Title)}</h2>\n")
                .Append($"<p>{HtmlText.Escape(document.Identity.Part)}<br />")
                .Append(HtmlText.Escape(IdentityLine.Revision(document.Identity, document.Identity.Revision)))
                .Append($"<br />{HtmlText.Escape(say.Say($"station {index + 1} of {document.Stations.Length}"))}</p>\n")
                .Append($"<p>{HtmlText.Escape(say.Say("Serial"))} {Serial(document.Identity.Serial, say)}</p>\n</header>\n");
        }
        else
        {
            html.Append($"<h2 id=\"{id}\">{HtmlText.Escape(station.Title)}</h2>\n");
        }

        foreach (var block in station.Blocks)
        {
            if (block is Drawing drawing)
            {
                // Straight behind the rest: a sheet of codes is long, and each string on the way a copy of it.
                html.Append($"<figure class=\"drawing\">\n<figcaption>{HtmlText.Escape(drawing.Title)}</figcaption>\n");
                SvgWriter.Write(html, drawing);
                html.Append("\n</figure>\n");
            }
            else
            {
                html.Append(Of(block, say)).Append('\n');
            }
        }

        html.Append("</section>\n");
    }

    private static string Of(Block block, Wording say) => block switch
    {
        Heading heading => $"<h3>{HtmlText.Escape(heading.Text)}</h3>",
        Paragraph paragraph => $"<p{(paragraph.Fine ? " class=\"fine\"" : "")}>{HtmlText.Of(paragraph.Text)}</p>",
        Facts facts => $"<dl class=\"facts\">\n{Lines(facts.Items.Select(fact => Of(fact, say)))}\n</dl>",
        KeyNumbers numbers => Of(numbers, say),
        HoldPoint hold => Of(hold, say),
        Caution { Lines: [var line] } caution => $"<p class=\"box caution\"><strong><span class=\"mark\" aria-hidden=\"true\">▲</span> {HtmlText.Escape(caution.Title)}:</strong> {HtmlText.Of(line)}</p>",
        Caution caution => Box("caution", "▲", caution.Title, $"<ul>\n{Items(caution.Lines.Select(HtmlText.Of))}\n</ul>"),
        IfBox box => Box("if", "?", say.Say("If it goes wrong"), $"<ul>\n{Items(box.Lines.Select(
            line => $"<strong>{HtmlText.Escape(line.If)}:</strong> {HtmlText.Escape(line.Then)}"))}\n</ul>"),
        BulletList list => $"<ul{(list.Fine ? " class=\"fine\"" : "")}>\n{Items(list.Items.Select(HtmlText.Of))}\n</ul>",
        TickList list => Ticks(list.Items, say),
        Table table => HtmlTables.Of(table, say),
        _ => throw new ArgumentException($"No HTML for {block.GetType().Name}.", nameof(block)),
    };

    private static string Of(Fact fact, Wording say)
    {
        var blank = fact.Blank is { } space ? (fact.Value.IsEmpty ? "" : " ") + Of(space, say) : "";
        return $"<div{(fact.Blank is null ? " class=\"wide\"" : "")}><dt>{HtmlText.Escape(fact.Label)}</dt><dd>{HtmlText.Of(fact.Value)}{blank}</dd></div>";
    }

    private static string Of(KeyNumbers numbers, Wording say)
    {
        var cards = numbers.Items.Select(number =>
            $"<div class=\"card{(number.Alarm ? " alarm" : "")}\"><dt>{(number.Alarm ? "▲ " : "")}{HtmlText.Escape(number.Label)}</dt>"
            + $"<dd class=\"big\">{HtmlText.Big(number.Value)}</dd>"
            + (number.Blank is { } blank ? $"<dd class=\"beside\">{HtmlText.Escape(blank.What)} {Of(blank, say)}</dd>" : "")
            + (number.Note is null ? "" : $"<dd class=\"note\">{HtmlText.Escape(number.Note)}</dd>")
            + "</div>");
        return $"<section class=\"panel{(PanelColumns.AtTheBench(numbers) == 3 ? " three" : "")}\">\n<h3>{HtmlText.Escape(numbers.Caption)}</h3>\n<dl>\n{Lines(cards)}\n</dl>\n</section>";
    }

    private static string Of(HoldPoint hold, Wording say)
    {
        var spaces = hold.Blanks(say);
        var blanks = spaces.Select(blank => $"<span class=\"labelled\">{HtmlText.Escape(blank.What)} {Of(blank, say)}</span>");
        var checks = hold.Checks.IsEmpty ? "" : Ticks(hold.Checks, say) + "\n";
        return Box("hold", "●", say.Say($"{hold.Id} HOLD: {hold.Title}"), $"{checks}<p class=\"blanks{(spaces.Length == 4 ? " four" : "")}\">{string.Concat(blanks)}</p>");
    }

    private static string Box(string kind, string mark, string title, string inner) =>
        $"<section class=\"box {kind}\">\n<h3><span class=\"mark\" aria-hidden=\"true\">{mark}</span> {HtmlText.Escape(title)}</h3>\n{inner}\n</section>";

    private static string Ticks(IEnumerable<Phrase> items, Wording say) =>
        $"<ul class=\"ticks\">\n{Items(items.Select(item => $"{HtmlTables.Tick(say)} <span>{HtmlText.Of(item)}</span>"))}\n</ul>";

    private static string Serial(string? serial, Wording say) =>
        serial is null ? Of(new Blank(say.Say("serial number")), say) : $"<strong class=\"serial\">{HtmlText.Escape(serial)}</strong>";

    /// <summary>A space to write in; a screen reader hears what belongs there.</summary>
    private static string Of(Blank blank, Wording say) =>
        $"<span class=\"blank\" role=\"img\" aria-label=\"{HtmlTables.Named(blank, say)}\">{HtmlText.Escape(blank.Unit)}</span>";

    private static string Items(IEnumerable<string> items) => Lines(items.Select(item => $"<li>{item}</li>"));

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);
}
