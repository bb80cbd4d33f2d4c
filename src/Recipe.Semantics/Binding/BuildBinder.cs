using Recipe.Model;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Syntax;

namespace Recipe.Semantics.Binding;

/// <summary>Build records. Of a word that stands once in a record, the last line counts: a correction is written below.</summary>
internal static class BuildBinder
{
    public static BuildRecord? Build(Line head)
    {
        var block = BlockReader.Read(head.Entry.Block, head.Word.Block!, head.Context);
        if (head.Named<PartDeclaration>("part") is not { } part)
        {
            return null;
        }

        // A line of which all is still blank corrects nothing.
        var lines = new Lines([.. block.All.Where(line => line.Reading.Blanks is null || line.Reading.Arguments.Count > 0).Reverse()]);
        var wetOut = block.Many("wet-out").Select(WetOut);
        return new BuildRecord(
            part.Name,
            head.Reading.Find("no") is { } number ? (int)number.Si : null,
            head.Reading.Find("on")?.Date,
            [.. block.All.Where(l => l.Word.Word != "planned").Select(l => new BuildLine(l.Head, Rest(l), l.Where))],
            head.Where)
        {
            Revision = lines.Choice("revision", text => text),
            By = lines.Text("by"),
            Helper = lines.Text("helper"),
            PullsSinceRelease = lines.Count("pulls-since-release"),
            Changed = Said(lines.One("changed")),
            Room = lines.Figure("room", Si.Temperature),
            Humidity = lines.Plain("humidity"),
            Used = [.. block.Many("used").Select(Used).OfType<UsedStock>()],
            Kit = lines.Figure("kit", Si.Mass),
            Pots = [.. block.Many("pot").Select((line, i) => Pot(line, i + 1))],
            Mixed = lines.Figure("mixed", Si.Mass),
            Left = lines.Figure("left", Si.Mass),
            WetOut = [.. wetOut],
            Vacuum = lines.One("vacuum") is { } vacuum ? Vacuum(vacuum) : null,
            Rise = lines.Figure("rise", Si.Pressure),
            RiseTime = lines.One("rise")?.Figure("in", Si.Time),
            Pickups = [.. block.Many("pickup").Select(Pickup).OfType<RecordedPickup>()],
            Hottest = lines.One("cure")?.Figure("hottest", Si.Temperature),
            CureTime = lines.One("cure")?.Figure("lasted", Si.Time),
            Demould = lines.One("demould")?.Figure("after", Si.Time),
            DemouldTemperature = lines.One("demould")?.Figure("at", Si.Temperature),
            Untrimmed = lines.Figure("untrimmed", Si.Mass),
            Mass = lines.Figure("mass", Si.Mass),
            Thickness = [.. block.Many("thickness").Select(l => l.Figure(Define.Value, Si.Length)).OfType<Figure<UnitsNet.Length>>()],
            Pinholes = lines.Count("pinholes"),
            PeelPly = lines.Text("peel-ply"),
            Cause = Said(lines.One("cause"))?.Value,
            Action = Said(lines.One("action"))?.Value,
            Defects = [.. block.Many("defect").Where(IsFilled).Select(Defect)],
            Deviations = [.. block.Many("deviation").Where(IsFilled).Select(l => new RecordedDeviation(l.Text(Define.Value) ?? Rest(l), l.Text("because"), l.Where))],
            Disposition = block.Many("disposition").Select(Decision).OfType<RecordedDisposition>().LastOrDefault(),
            Signatures = [.. block.Many("signed").Where(l => l.Reading.Blanks is null && l.Text("hold") is not null).Select(l => new RecordedSignature(l.Text("hold")!, l.Text("by"), l.Payload<TimeOnly>("at")?.Value, l.Where))],
            Planned = block.One("planned") is { Entry.Block: not null } planned ? Planned(BlockReader.Read(planned)) : null,
            Blanks = [.. block.All.SelectMany(l => l.Reading.Blanks ?? [], (l, where) => (l.Head, where))],
        };
    }

    private static bool IsFilled(Line line) => line.Reading.Find(Define.Value) is not null;

    private static Figure<string>? Said(Line? line) =>
        line?.Reading.Find(Define.Value) is { } said ? new Figure<string>(said.Word ?? said.Written, Basis.Stated, said.Written, said.Where) : null;

    private static RecordedPot Pot(Line line, int place) => new(
        line.Reading.Find("number") is { } number ? (int)number.Si : place,
        line.Figure("resin", Si.Mass),
        line.Figure("hardener", Si.Mass),
        line.Payload<TimeOnly>("mixed-at")?.Value,
        line.Payload<TimeOnly>("dead-at")?.Value,
        line.Where);

    private static RecordedWetOut WetOut(Line line) => new(
        line.Payload<TimeOnly>("from")?.Value,
        line.Payload<TimeOnly>("until")?.Value,
        line.Figure("over", Si.Area),
        line.Reading.Find("pieces") is { } pieces ? (int)pieces.Si : 0,
        line.Reading.Find("laminators") is { } hands ? (int)hands.Si : 1,
        line.Text("by"),
        line.Where);

    private static RecordedVacuum Vacuum(Line line) => new(
        line.Payload<TimeOnly>("on")?.Value,
        line.Payload<VacuumLevel>("reached")?.Value,
        line.Reading.Find("reached")?.Written,
        line.Payload<TimeOnly>("off")?.Value,
        line.Where);

    private static UsedStock? Used(Line line) => line.Named<MaterialDeclaration>("material") is { } material
        ? new UsedStock(material.Name, line.Reading.Find(Define.Value)?.Payload as StockAmount?, line.Reading.Find(Define.Value)?.Written ?? "", line.Text("lot"), line.Where)
        : null;

    private static RecordedPickup? Pickup(Line line) =>
        line.Named<MaterialDeclaration>("material") is { } material && line.Figure(Define.Value, Si.Mass) is { } mass && line.Figure("over", Si.Area) is { } area
            ? new RecordedPickup(material.Name, mass, area, line.Where)
            : null;

    private static RecordedDefect Defect(Line line)
    {
        var what = line.Text(Define.Value) ?? line.Reading.Find(Define.Value)?.Written ?? Rest(line);
        var first = what.Split(' ', 2)[0];
        return new RecordedDefect(what, DefectCodes.MeaningOf(first) is null ? null : first, line.Text("at"), line.Figure("size", Si.Length), line.Where);
    }

    private static RecordedDisposition? Decision(Line line) => line.Text(Define.Value) switch
    {
        "use" => Decided(Disposition.Use),
        "repair" => Decided(Disposition.Repair),
        "scrap" => Decided(Disposition.Scrap),
        _ => null,
    } is { } decision ? new RecordedDisposition(decision, line.Text("because"), line.Text("by"), line.Where) : null;

    private static Disposition? Decided(Disposition decision) => decision;

    private static PlannedFigures Planned(Lines lines) => new()
    {
        Process = lines.Text("process") is { } process ? PartBinder.ProcessOf(process) : null,
        Resin = lines.One("resin")?.Named<MaterialDeclaration>(Define.Value)?.Name,
        Mass = lines.Figure("mass", Si.Mass)?.Value,
        MassLow = lines.One("mass")?.Figure("band", Si.Mass)?.Value,
        MassHigh = lines.One("mass")?.High("band", Si.Mass)?.Value,
        Thickness = lines.Figure("thickness", Si.Length)?.Value,
        Fibre = lines.Figure("fibre", Si.Mass)?.Value,
        Other = lines.Figure("other", Si.Mass)?.Value,
        Kit = lines.Figure("kit", Si.Mass)?.Value,
        Mixed = lines.Figure("mixed", Si.Mass)?.Value,
        WetOut = lines.Figure("wet-out", Si.Time)?.Value,
        Laminators = lines.Count("laminators")?.Value,
        Vacuum = lines.One("vacuum")?.Reading.Find(Define.Value)?.Written,
        VacuumLevel = lines.Payload<VacuumLevel>("vacuum")?.Value,
        RiseAtMost = lines.Figure("rise", Si.Pressure)?.Value,
        RiseTime = lines.One("rise")?.Figure("in", Si.Time)?.Value,
        Hottest = lines.One("cure")?.Figure("hottest", Si.Temperature)?.Value,
        CureTime = lines.One("cure")?.Figure("lasted", Si.Time)?.Value,
        HeatLimit = lines.Figure("heat-limit", Si.Temperature)?.Value,
        Cloths = [.. lines.Many("cloth").Select(Cloth).OfType<PlannedCloth>()],
        Bag = [.. lines.Many("bag").Select(l => l.Named<MaterialDeclaration>(Define.Value)?.Name).OfType<string>()],
    };

    private static PlannedCloth? Cloth(Line line) =>
        line.Named<MaterialDeclaration>("material") is { } material
        && line.Figure(Define.Value, Si.Mass) is { } fibre
        && line.Payload<Content>("holds")?.Value is { Basis: ContentBasis.ResinByWeight } content
            ? new PlannedCloth(material.Name, fibre.Value, content.Fraction, line.Where)
            : null;

    private static string Rest(Line line) => line.Entry.Values is [TextSyntax text] ? text.Text : line.Rest;
}
