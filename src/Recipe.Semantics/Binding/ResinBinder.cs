using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>Resins, coats and adhesives, each hardener applied to its resin.</summary>
internal static class ResinBinder
{
    public static ResinSystem Bind(MaterialDeclaration declaration, Lines lines, ResinRole role)
    {
        ReportFaults(lines, lines);
        var system = System(declaration, lines, role);
        var hardeners = ImmutableArray.CreateBuilder<ResinSystem>();
        foreach (var line in lines.Many("hardener"))
        {
            var name = line.Text("name");
            if (name is null)
            {
                continue;
            }

            if (line.Context.Sink is { IsQuiet: false } sink && line.Reading.Find("name") is { } argument)
            {
                sink.Use(NameKind.Hardener, name, argument.Where, argument.Where);
            }

            var own = BlockReader.Read(line);
            var applied = Lines.Over(lines, own);
            ReportFaults(own, applied);
            hardeners.Add(System(declaration, applied, role) with { Hardener = name });
        }

        return system with { Hardeners = hardeners.ToImmutable() };
    }

    private static ResinSystem System(MaterialDeclaration declaration, Lines lines, ResinRole role)
    {
        var viscosity = lines.One("viscosity");
        return new ResinSystem
        {
            Name = declaration.Name,
            Keyword = declaration.Word.Word,
            Where = declaration.Where,
            Role = role,
            Density = Density(lines, null),
            Chemistry = Chemistry(lines),
            CuresWith = lines.Text("cures-with"),
            Waxed = lines.YesNo("waxed"),
            PreAccelerated = lines.YesNo("pre-accelerated"),
            Mix = lines.Payload<MixRatio>("mix"),
            ResinDensity = Density(lines, "resin"),
            HardenerDensity = Density(lines, "hardener"),
            CuredDensity = Density(lines, "cured"),
            Viscosity = viscosity?.Figure(Define.Value, Si.Viscosity),
            ViscosityAt = viscosity?.Figure("at", Si.Temperature),
            PotLife = TimeAt(lines.One("pot-life")),
            FilmLife = TimeAt(lines.One("film-life")),
            GelTime = TimeAt(lines.One("gel-time")),
            MinimumTemperature = lines.Figure("minimum-temperature", Si.Temperature),
            Demould = TimeAt(lines.One("demould")),
            FullCure = TimeAt(lines.One("full-cure")),
            PostCure = PostCure(lines.One("post-cure")),
            GlassTransition = GlassTransition(lines.One("glass-transition")),
            GlassTransitionLimit = lines.Figure("glass-transition-limit", Si.Temperature),
            LargestPot = lines.Figure("largest-pot", Si.Mass),
            HeatOfReaction = lines.Figure("heat-of-reaction", Si.SpecificEnergy),
            Modulus = lines.Figure("modulus", Si.Pressure),
            Poisson = lines.Plain("poisson"),
            Expansion = lines.Figure("expansion", Si.Expansion),
            Shrinkage = lines.Plain("shrinkage"),
            Film = lines.Figure("film", Si.ArealWeight),
            BondLine = lines.Figure("thickness", Si.Length),
            Filler = lines.Text("filler"),
            FillerParts = lines.One("filler")?.Figure("parts", Si.Plain),
            Kinetics = Kinetics(lines.One("kinetics")),
        };
    }

    /// <summary>How a resin cures, by its word; the same words say what a mould is laid with.</summary>
    public static Chemistry Chemistry(Lines lines) => lines.Text("chemistry") switch
    {
        "epoxy" => Model.Chemistry.Epoxy,
        "polyester" => Model.Chemistry.Polyester,
        "vinylester" => Model.Chemistry.Vinylester,
        "phenolic" => Model.Chemistry.Phenolic,
        _ => Model.Chemistry.Unknown,
    };

    /// <summary>
    /// What shows only when the lines are seen together: a ratio that says neither by weight nor by volume, shown both ways when the
    /// densities are known; and the faults of the constants, which each hardener reads again.
    /// </summary>
    private static void ReportFaults(Lines own, Lines all)
    {
        if (own.One("mix") is { } line && line.Reading.Find(Define.Value) is { Payload: MixRatio { Basis: null } mix } argument)
        {
            line.Context.Sink.Report(RatioWithoutBasis.Create(
                argument.Where,
                argument.Written,
                mix,
                Density(all, "resin")?.Value.KilogramsPerCubicMeter,
                Density(all, "hardener")?.Value.KilogramsPerCubicMeter));
        }

        if (own.One("kinetics") is { Entry.Block: not null } kinetics)
        {
            BlockReader.Read(kinetics);
        }
    }

    private static Figure<Density>? Density(Lines lines, string? of)
    {
        foreach (var line in lines.Many("density"))
        {
            if (line.Text("of") == of)
            {
                return line.Figure(Define.Value, Si.Density);
            }
        }

        return null;
    }

    /// <summary>A time that holds at a temperature; without the temperature it is no figure to reckon with.</summary>
    private static Figure<TimeAt>? TimeAt(Line? line)
    {
        if (line?.Reading.Find(Define.Value) is not { } time || line.Reading.Find("at") is not { } at)
        {
            return null;
        }

        var mass = line.Reading.Find("in");
        return Whole(line, new TimeAt(Si.Time(time.Si), Si.Temperature(at.Si), mass is null ? null : Si.Mass(mass.Si)), $"{time.Written} at {at.Written}{(mass is null ? "" : " in " + mass.Written)}");
    }

    private static Figure<Soak>? PostCure(Line? line) =>
        line?.Reading.Find(Define.Value) is { } at && line.Reading.Find("for") is { } time
            ? Whole(line, new Soak(Si.Temperature(at.Si), Si.Time(time.Si)), $"{at.Written} for {time.Written}")
            : null;

    private static Figure<GlassTransition>? GlassTransition(Line? line)
    {
        if (line?.Reading.Find(Define.Value) is not { } tg)
        {
            return null;
        }

        var after = line.Reading.Find("after");
        var time = line.Reading.Find("for");
        var cure = after is not null && time is not null ? new Soak(Si.Temperature(after.Si), Si.Time(time.Si)) : (Soak?)null;
        return Whole(line, new GlassTransition(Si.Temperature(tg.Si), cure), cure is null ? tg.Written : $"{tg.Written} after {after!.Written} for {time!.Written}");
    }

    private static Figure<T> Whole<T>(Line line, T value, string written)
    {
        var first = line.Reading.Arguments[0].Where;
        var last = line.Reading.Arguments[^1].Where;
        return new Figure<T>(value, line.Basis, written, first with { Span = first.Span.Union(last.Span) }, line.Source?.Text);
    }

    private static Kinetics? Kinetics(Line? line)
    {
        if (line?.Text(Define.Value) is not { } model || line.Entry.Block is null)
        {
            return null;
        }

        var constants = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (var constant in BlockReader.Read(line with { Context = line.Context.Quietly() }).All)
        {
            if (constant.IsNameLine && constant.Reading.Find(Define.Value) is { } value)
            {
                constants.TryAdd(constant.Head, value.Si);
            }
        }

        return new Kinetics(model, constants.ToImmutable(), line.Where, line.Basis, line.Source?.Text);
    }
}
