using Recipe.Documents.Layout;
using Recipe.Model;

namespace Recipe.Documents.Writing;

/// <summary>
/// The style sheet of the papers. Sizes follow how a paper is read at the bench, a metre away and with gloves on: instructions
/// 14 pt, the number that matters 28 pt, ply numbers 36 pt in a ring, spaces to write in 12 mm high and 40 mm wide, boxes to tick
/// 10 mm, 20 mm on the left for holes. Black on white: meaning is carried by shapes and words, never by colour.
/// </summary>
internal static class HtmlStyle
{
    public static string For(Document document) => PageBox(document) + Common + (document.ForTheBench ? Bench : Desk);

    private static string PageBox(Document document)
    {
        var size = document.Paper == PaperSize.Letter ? "letter" : "A4";
        var identity = document.Identity;
        var foot = string.Join(" · ", Foot(identity));
        return $$"""
            @page {
              size: {{size}} {{(document.Landscape ? "landscape" : "portrait")}};
              margin: 7mm 9mm 12mm 20mm;
              @bottom-left { content: {{HtmlText.CssString(foot)}}; font: 9pt sans-serif; white-space: nowrap; }
              @bottom-right { content: {{PageNumber(identity.Wording)}}; font: 9pt sans-serif; white-space: nowrap; }
            }

            """;
    }

    private static IEnumerable<string> Foot(Identity identity)
    {
        var say = identity.Wording;
        yield return identity.Part;
        yield return IdentityLine.Revision(identity, identity.Revision);
        if (identity.Serial is not null || identity.OfOneBuild)
        {
            yield return say.Say($"serial {identity.Serial ?? "____________"}");
        }

        if (identity.OfOneBuild)
        {
            yield return say.Say("destroy after build");
        }

        if (identity.Printed is { } day)
        {
            yield return say.Say($"printed {Quantities.Numbers.Day(day)}");
        }
    }

    // Characters of the private use area stand where the style sheet counts.
    private static string PageNumber(Languages.Wording say)
    {
        const char page = '\uE000', pages = '\uE001';
        var parts = say.Say($"page {page} of {pages}").Replace($"{page}", $"\n{page}\n", StringComparison.Ordinal).Replace($"{pages}", $"\n{pages}\n", StringComparison.Ordinal);
        return string.Join(' ', parts.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(part => part[0] switch
        {
            page => "counter(page)",
            pages => "counter(pages)",
            _ => HtmlText.CssString(part),
        }));
    }

    private const string Common = """
        * { box-sizing: border-box; }
        html { color: #000; background: #fff; }
        body { margin: 0 1mm 0 0; font-family: "DejaVu Sans Condensed", sans-serif; font-stretch: condensed; line-height: 1.25; font-variant-numeric: lining-nums tabular-nums; }
        h1, h2, h3 { line-height: 1.15; break-after: avoid; break-inside: avoid; }
        p { margin: 0 0 2mm; orphans: 2; widows: 2; }
        ul { margin: 0 0 2mm; padding-left: 6mm; }
        dl, dd { margin: 0; }
        code { font-family: monospace; white-space: pre-wrap; }
        table { border-collapse: collapse; width: 100%; margin: 0 0 4mm; }
        caption { text-align: left; font-weight: bold; padding: 1mm 0; break-after: avoid; }
        thead { display: table-header-group; }
        tr { break-inside: avoid; }
        th, td { border: 0.3mm solid #000; padding: 1mm 1.5mm; text-align: left; vertical-align: middle; overflow-wrap: break-word; }
        thead th { border-bottom-width: 0.8mm; vertical-align: bottom; }
        tr.group { break-after: avoid; }
        tr.group th { border-top-width: 0.8mm; }
        tr.sum th, tr.sum td { border-top-width: 0.8mm; font-weight: bold; }
        .right { text-align: right; }
        .centre { text-align: center; }
        .note { display: block; font-weight: normal; }
        .facts { margin: 0 0 3mm; }
        .facts > div { display: flex; gap: 3mm; align-items: center; border-bottom: 0.2mm solid #000; padding: 0.8mm 0; break-inside: avoid; }
        .facts dd { display: flex; flex-wrap: wrap; gap: 1mm 3mm; align-items: center; justify-content: space-between; flex: 1; font-weight: bold; }
        .blank { display: inline-flex; align-items: flex-end; justify-content: flex-end; min-width: 40mm; height: 12mm; padding: 0 1.5mm 0.5mm; border: 0.5mm solid #000; font-size: 11pt; font-weight: normal; vertical-align: middle; }
        td.write { height: 13mm; padding: 0; vertical-align: bottom; text-align: right; border-width: 0.5mm; }
        .in { display: block; padding: 0 1.5mm 0.5mm; font-size: 11pt; }
        .tick { display: inline-block; flex: none; width: 10mm; height: 10mm; border: 0.6mm solid #000; vertical-align: middle; }
        .facts .wide dd { font-weight: normal; }
        .facts .blank { margin-left: auto; }
        .facts .blank:only-child { flex: 1; }
        .short { break-inside: avoid; }
        .labelled { display: inline-flex; gap: 2mm; align-items: center; flex-wrap: wrap; max-width: 100%; overflow-wrap: break-word; }
        .labelled.long { overflow-wrap: anywhere; }
        .box { margin: 0 0 2.5mm; padding: 1.2mm 3mm; break-inside: avoid; }
        .box h3 { margin: 0 0 1mm; }
        .box ul:last-child, .box p:last-child { margin-bottom: 0; }
        .caution { border: 1mm solid #000; }
        .if { border: 0.6mm dashed #000; }
        .hold { border: 0.5mm solid #000; border-top-width: 3mm; border-bottom-width: 1.5mm; }
        .hold, .if { break-before: avoid; }
        .blanks { display: grid; grid-template-columns: repeat(3, 1fr); gap: 1mm 3mm; }
        .blanks.four { grid-template-columns: repeat(4, 1fr); }
        .blanks .labelled { flex-direction: column; gap: 0; align-items: stretch; font-size: 11pt; }
        .ticks { list-style: none; padding: 0; display: grid; grid-template-columns: 1fr 1fr; gap: 0 5mm; }
        .ticks li:only-child { grid-column: 1 / -1; }
        .ticks li { display: flex; gap: 3mm; align-items: center; margin: 0 0 1mm; min-height: 10mm; line-height: 1.15; break-inside: avoid; }
        .panel { break-inside: avoid; margin: 0 0 3mm; }
        .panel dl { display: grid; grid-template-columns: 1fr 1fr; border: 0.8mm solid #000; }
        .card:only-child { grid-column: 1 / -1; }
        .card { padding: 1.5mm 2.5mm; border: 0.2mm solid #000; }
        .alarm { border-width: 1.2mm; }
        .big { font-size: 28pt; font-weight: bold; line-height: 1.1; }
        .big .unit { font-size: 65%; }
        .ring { display: inline-flex; align-items: center; justify-content: center; min-width: 15mm; height: 15mm; padding: 0 1mm; border: 0.8mm solid #000; border-radius: 7.5mm; font-size: 36pt; font-weight: bold; line-height: 1; }
        .direction { display: flex; gap: 1.5mm; align-items: center; }
        .direction svg { flex: none; width: 12mm; height: 12mm; fill: none; stroke: #000; stroke-width: 1.6; }
        .direction circle { stroke-width: 0.3; }
        .direction path { stroke-width: 0.5; }
        .drawing { margin: 0 0 3mm; break-inside: avoid; }
        .drawing figcaption { font-weight: bold; padding: 0 0 1mm; break-after: avoid; }
        .drawing svg { display: block; max-width: 100%; height: auto; }
        @media screen {
          main { max-width: 260mm; margin: 0 auto; padding: 4mm; }
          .station { margin: 0 0 12mm; }
        }

        """;

    private const string Bench = """
        body { font-size: 14pt; line-height: 1.2; }
        h1 { font-size: 16pt; margin: 0; }
        h2 { font-size: 24pt; margin: 0; white-space: nowrap; }
        h3 { font-size: 15pt; margin: 2mm 0 1mm; }
        .identity { font-size: 9pt; margin: 0 0 1mm; }
        .station-head { display: flex; gap: 4mm; align-items: center; border-bottom: 1mm solid #000; padding: 0 0 1.5mm; margin: 0 0 2.5mm; break-inside: avoid; break-after: avoid; }
        .station-head h2 { flex: 1; }
        .station-head > * { min-width: 0; overflow-wrap: anywhere; }
        .station-head > p:last-child { flex: none; }
        .station-head p { margin: 0; font-size: 9pt; text-align: right; }
        .station-head .number { display: inline-block; min-width: 11mm; padding: 0 1.5mm; border: 0.8mm solid #000; text-align: center; }
        .station-head .serial { font-size: 14pt; }
        .note { font-size: 11pt; }
        .fine, table.reference, .facts dt { font-size: 11pt; }
        ul.fine { font-size: 9pt; columns: 2; column-gap: 6mm; padding-left: 4mm; }
        ul.fine li { margin: 0 0 1mm; break-inside: avoid; }
        .facts { display: grid; grid-template-columns: 1fr 1fr; gap: 0 6mm; }
        .facts .wide { grid-column: 1 / -1; }
        .facts dt { flex: 0 0 24mm; }
        .panel .card { display: grid; grid-template-columns: 1fr auto; column-gap: 2mm; align-content: start; }
        .card:last-child:nth-child(odd) { grid-column: 1 / -1; }
        .panel.three dl { grid-template-columns: 1fr 1fr 1fr; }
        .panel.three .card { grid-column: auto; }
        .card dt, .card .big { grid-column: 1; }
        .card .note { grid-column: 1 / -1; }
        .card .beside { display: flex; flex-direction: column; grid-area: 1 / 2 / 3 / 3; font-size: 11pt; line-height: 1.1; }
        table.steps { table-layout: fixed; margin: 0 0 3mm; }
        table.steps .centre { padding-left: 0.5mm; padding-right: 0.5mm; }
        table.steps .centre .labelled { justify-content: center; gap: 0 2mm; }
        table.steps .big { white-space: nowrap; overflow-wrap: normal; }
        table.steps .big .unit { font-size: 50%; }
        .ring.long { font-size: 22pt; white-space: nowrap; }
        table.steps tbody { break-inside: avoid; }
        table.steps thead th, caption { font-size: 11pt; }
        table.steps tbody td, table.steps tbody th { height: 11mm; padding: 0.4mm 1.5mm; font-weight: normal; }
        table.steps tbody td.write { height: 12.5mm; padding: 0; }
        table.steps tbody tr.group th { height: auto; padding: 1mm 1.5mm; font-weight: bold; }
        .direction strong { font-size: 14pt; white-space: nowrap; }
        .station { break-before: page; }
        .station:first-of-type { break-before: auto; }
        .station.one-place { break-before: auto; break-inside: avoid; }

        """;

    private const string Desk = """
        body { font-size: 10.5pt; }
        h1 { font-size: 20pt; margin: 0 0 1mm; }
        h2 { font-size: 14pt; margin: 5mm 0 2mm; border-bottom: 0.8mm solid #000; }
        h3 { font-size: 12pt; margin: 3mm 0 1mm; }
        .identity, .fine, .note { font-size: 9pt; }
        table { font-size: 9.5pt; }
        table.reference { table-layout: fixed; }
        table.reference th, table.reference td { padding: 0.6mm 1.2mm; line-height: 1.2; }
        code { font-size: 8.5pt; }
        ul { break-inside: avoid; }
        .tick { width: 6mm; height: 6mm; }
        .panel dl { grid-template-columns: 1fr 1fr 1fr; }
        .facts { display: grid; grid-template-columns: 1fr 1fr; gap: 0 8mm; }
        .facts dt { flex: 0 0 38mm; }
        .big { font-size: 20pt; }

        """;
}
