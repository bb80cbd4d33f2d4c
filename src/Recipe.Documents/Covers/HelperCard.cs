using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Covers;

/// <summary>The card for who helps: one line a station, three rules, when to say stop, who signs, and whether the helper may be there at all.</summary>
internal static class HelperCard
{
    public static Station Of(PaperContext context)
    {
        var say = context.Wording;
        return new Station(
            say.Say("Card for the helper"),
            [
                new Paragraph(say.Say("Whoever helps reads this line of his station first and signs it. Stop words hold for everybody: who hears one puts the work down.")),
                new TickList([say.Say("Sensitised to epoxy or hardener: no"), say.Say("Knows the eye wash, the way out, the fire blanket"), say.Say("Gloves, glasses, mask fit")]),
                new Table(
                    say.Say("Stations"),
                    [
                        new(say.Say("Station"), WidthMm: 20, NamesTheRow: true), new(say.Say("Three rules")), new(say.Say("Say stop when"), WidthMm: 46), new(say.Say("Who signs"), WidthMm: 24),
                        new(say.Say("Trained on"), WidthMm: 41),
                    ],
                    [.. Lines(context).Select(line => new CellRow([line.Station, line.Rules, line.Stop, new Blank(say.Say("who signs")), new Blank(say.Say("trained on"))]))]),
            ]);
    }

    private static IEnumerable<(string Station, string Rules, string Stop)> Lines(PaperContext context)
    {
        var (say, part) = (context.Wording, context.Part);
        if (!part.IsAssembly)
        {
            yield return (say.Say("Cut"), say.Say("Letter and arrow on every piece. Sharp blade, away from you. Weigh what you cut."), say.Say("the cloth is not the one on the list"));
        }

        if (part.Process.Value != Process.Prepreg)
        {
            yield return (say.Say("Mix"), say.Say("By weight, A first. Write the time. Scrape, second cup."), say.Say("the pot is warm, or the scale is past the band"));
        }

        if (part.IsAssembly)
        {
            yield return (say.Say("Join"), say.Say("Keyed and clean, dry fit first. Clamp in time. Wipe what squeezes out."), say.Say("it will not close, or the glue stiffens"));
        }
        else
        {
            foreach (var line in Laid(context))
            {
                yield return line;
            }
        }

        yield return (say.Say("Trim"), say.Say("Fully cured only. Mask and extraction. Weigh before and after."), say.Say("a nail marks it, or it is soft"));
    }

    private static IEnumerable<(string Station, string Rules, string Stop)> Laid(PaperContext context)
    {
        var say = context.Wording;
        yield return (
            say.Say("Lay"), context.StaysOn ? say.Say("Ply 1 first, on what stays. Tick each ply. Change gloves often.") : context.IsWrapped ? say.Say("Ply 1 first, on the mandrel. Tick each ply. Change gloves often.") : say.Say("Ply 1 first, on the mould. Tick each ply. Change gloves often."),
            context.Part.Process.Value is Process.Hand or Process.Bagged ? say.Say("resin strings, a ply is short, or a white spot stays") : context.IsWrapped ? say.Say("a ply slips, is short, or creases")
            : say.Say("a ply slips, is short, or spans a corner"));
        if (!context.IsBagged)
        {
            yield return (say.Say("Cure"), say.Say("Nobody moves it before it is hard. Coldest probe counts. Watch the heat."), say.Say("it smokes, smells, or passes its limit"));
        }
        else
        {
            yield return (say.Say("Bag"), say.Say("From the part outwards. Pleats before the pump. Gauge on the far side."), say.Say("the level falls, or a line bridges"));
            yield return (say.Say("Cure"), say.Say("No heat before H5. Coldest probe counts. Vacuum stays on."), say.Say("it smokes, smells, or passes its limit"));
        }
    }
}
