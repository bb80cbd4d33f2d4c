using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>Wetting out, infusion and vacuum.</summary>
internal static class ProcessBinder
{
    public static WetOut? WetOut((Lines Lines, Line Head)? block)
    {
        if (block is not var (lines, head))
        {
            return null;
        }

        return new WetOut
        {
            Where = head.HeadWhere,
            Room = lines.Figure("room", Si.Temperature),
            RoomHigh = lines.One("room")?.High(Define.Value, Si.Temperature),
            ResinTemperature = lines.Figure("resin-temperature", Si.Temperature),
            MouldTemperature = lines.Figure("mould-temperature", Si.Temperature),
            Laminators = lines.Count("laminators"),
            Pace = lines.Figure("pace", Si.Pace),
            Content = OneOf(lines, lines.One("resin-content"), lines.One("fibre-content"))?.Payload<Content>(Define.Value),
            Pots = lines.Count("pots"),
            PotMasses = PotMasses(lines),
            Tray = lines.Choice("tray", word => word == "yes"),
            Mixing = lines.Figure("mixing", Si.Time),
            Loss = lines.Figure("loss", Si.Mass),
            Spare = lines.Plain("spare"),
            Humidity = lines.Plain("humidity"),
            Start = lines.Payload<TimeOnly>("start"),
        };
    }

    public static Infusion? Infusion((Lines Lines, Line Head)? block)
    {
        if (block is not var (lines, head))
        {
            return null;
        }

        var feed = lines.One("feed-line");
        return new Infusion
        {
            Where = head.HeadWhere,
            FeedLine = feed?.Figure("length", Si.Length),
            LineDiameter = feed?.Figure("diameter", Si.Length),
            FeedLines = lines.Count("feed-lines"),
            Degas = lines.Figure("degas", Si.Time),
            Path = lines.Figure("path", Si.Length),
            ResinTemperature = lines.Figure("resin-temperature", Si.Temperature),
            MouldTemperature = lines.Figure("mould-temperature", Si.Temperature),
            ClampFeed = lines.Text("clamp-feed"),
            Vent = lines.Text("vent"),
            VentWhere = lines.One("vent")?.Where,
            Reserve = lines.Plain("reserve"),
            DropTest = Check(lines.One("drop-test")),
        };
    }

    public static VacuumPlan? Vacuum((Lines Lines, Line Head)? block)
    {
        if (block is not var (lines, head))
        {
            return null;
        }

        var off = lines.One("off");
        var hold = OneOf(lines, lines.One("hold"), OffAfter(off) is null ? null : off);
        return new VacuumPlan
        {
            Where = head.HeadWhere,
            Draw = lines.Payload<VacuumLevel>("draw"),
            Within = lines.One("draw")?.Figure("within", Si.Time),
            Settle = lines.Figure("settle", Si.Time),
            LeakCheck = Check(lines.One("leak-check")),
            Hold = hold is null ? null : ReferenceEquals(hold, off) ? OffAfter(off) : hold.Figure(Define.Value, Si.Time),
            Off = lines.Text("off"),
            OffWhere = lines.One("off")?.Where,
        };
    }

    // A variant that says how many pots there are, where the part lists several one by one, leaves their masses to the plan.
    private static ImmutableArray<Figure<Mass>> PotMasses(Lines lines)
    {
        var pots = lines.Many("pot").ToArray();
        if (pots.Length > 1 && lines.One("pots") is { } count && count.Figure(Define.Value, Si.Count) is { } said)
        {
            if (!ReferenceEquals(count.Inside, pots[0].Inside) && ReferenceEquals(lines.All.Last(line => line.Word.Word is "pot" or "pots"), count))
            {
                return [];
            }

            if (ReferenceEquals(count.Inside, pots[0].Inside) && said.Value != pots.Length)
            {
                count.Context.Sink.Report(SaidTwice.PotsListed(count.HeadWhere, said.Value, pots[0].HeadWhere, pots.Length));
            }
        }

        return [.. pots.Select(line => line.Figure(Define.Value, Si.Mass)).OfType<Figure<Mass>>()];
    }

    // Two lines that say one thing in two ways. Of one block the first counts; else the one further down, which is the variant's own.
    private static Line? OneOf(Lines lines, Line? one, Line? other)
    {
        if (one is null || other is null)
        {
            return one ?? other;
        }

        var first = lines.All.First(line => ReferenceEquals(line, one) || ReferenceEquals(line, other));
        var second = ReferenceEquals(first, one) ? other : one;
        if (!ReferenceEquals(first.Inside, second.Inside))
        {
            return second;
        }

        second.Context.Sink.Report(SaidTwice.InOtherWords(second.HeadWhere, second.Head, first.HeadWhere, first.Head));
        return first;
    }

    // `off after 2 h` says how long it is held, as `hold 2 h` does; `off after gel` does not.
    private static Figure<Duration>? OffAfter(Line? off)
    {
        if (off?.Entry.Values is not [WordSyntax { Text: "after" }, var time])
        {
            return null;
        }

        QuantitySyntax[] parts = time switch
        {
            QuantitySyntax one => [one],
            CompoundSyntax several => [.. several.Parts],
            _ => [],
        };
        var where = off.Context.At(time.Span);
        return parts.Length > 0 && parts.All(part => part.Unit?.Dimension == DimensionNames.Time)
            ? new Figure<Duration>(Si.Time(parts.Sum(part => part.Unit!.ToSi(part.Number))), Basis.Stated, where.Text, where)
            : null;
    }

    private static LeakCheck? Check(Line? line) =>
        line is null
            ? null
            : new LeakCheck(
                line.Figure(Define.Value, Si.Time),
                line.Figure("rise at-most", Si.Pressure),
                line.Reading.Has("isolated"),
                line.Where);
}
