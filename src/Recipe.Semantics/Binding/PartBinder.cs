using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>Binds a part; a variant is bound from the lines of the part it comes from with its own over them.</summary>
internal static class PartBinder
{
    public static Bound<Part> Bind(PartDeclaration declaration)
    {
        var sink = new FindingSink();
        var lines = PartLines.Read(declaration, declaration.Context with { Sink = sink });
        var part = Bind(declaration, lines);
        return new(part, sink.Findings, sink.Names);
    }

    private static Part Bind(PartDeclaration declaration, PartLines part)
    {
        var lines = part.All;
        var mould = lines.One("mould");
        var resin = lines.One("resin");
        var target = lines.One("target");
        var overlap = lines.Figure("overlap", Si.Length);
        var trim = lines.Figure("trim", Si.Length);
        var (stack, unread) = StackBinder.Bind(part, overlap, trim);
        var bound = new Part
        {
            Name = declaration.Name,
            Where = declaration.Where,
            VariantOf = part.VariantOf,
            Title = lines.Text("title"),
            TitleIsInherited = part.VariantOf is not null && part.Chain[^1].One("title") is null,
            Mould = mould?.Named<MouldDeclaration>(Define.Value)?.Mould,
            MouldWhere = mould?.Reading.Find(Define.Value)?.Where,
            Process = new(Process.Hand, Basis.Assumed, "hand"),
            Resin = Resin(resin),
            ResinWhere = resin?.Reading.Find(Define.Value)?.Where ?? resin?.Where,
            TargetMass = target?.Figure("mass", Si.Mass),
            TargetTolerance = target?.Tolerance("mass", Si.Mass),
            Quantity = lines.Count("quantity")?.Value ?? 1,
            Trim = trim,
            Overlap = overlap,
            Service = lines.Figure("service", Si.Temperature),
            Use = lines.Choice("use", word => word switch
            {
                "cosmetic" => PartUse.Cosmetic,
                "structural" => PartUse.Structural,
                _ => PartUse.Flying,
            }),
            Axis = lines.Text("axis"),
            Surface = SurfaceBinder.Bind(lines.One("surface")),
            Regions = ShapeBinder.Regions(lines.Many("region")),
            Drape = ShapeBinder.Drape(lines.One("drape")),
            Outdoors = lines.YesNoFigure("outdoors"),
            Colour = lines.Choice("colour", word => word switch
            {
                "white" => PartColour.White,
                "light" => PartColour.Light,
                _ => PartColour.Dark,
            }),
            Stagger = lines.Figure("stagger", Si.Length),
            Coats = Coats(lines),
            Loads = LoadBinder.Bind(lines.Many("load")),
            Stack = stack,
            UnreadPlies = unread,
            StackWhere = lines.One("plies")?.HeadWhere,
            WetOut = ProcessBinder.WetOut(part.Block("wet-out")),
            Mixing = MixBinder.Mixing(part.Block("mix")),
            Prepreg = MixBinder.Prepreg(part.Block("prepreg")),
            Bag = BagBinder.Bind(part.Block("bag")),
            Infusion = ProcessBinder.Infusion(part.Block("infuse")),
            Vacuum = ProcessBinder.Vacuum(part.Block("vacuum")),
            Cure = CureBinder.Bind(part.Block("cure")),
            Finish = FinishBinder.Steps(part.Block("finish")),
            FinishWhere = lines.One("finish")?.HeadWhere,
            Join = FinishBinder.Join(part.Block("join")),
            Waivers = WaiverBinder.Bind(lines.Many("accept")),
        };
        return bound with { Process = lines.Choice("process", ProcessOf) ?? Computed(bound) };
    }

    /// <summary>The process that a word of the schema names.</summary>
    public static Process ProcessOf(string word) => word switch
    {
        "hand" => Process.Hand,
        "bagged" => Process.Bagged,
        "infused" => Process.Infused,
        _ => Process.Prepreg,
    };

    /// <summary>
    /// How the part is made when its author does not say: an <c>infuse</c> block, pre-impregnated plies without a resin, a bag or
    /// vacuum, each say so by standing there; that there is none of them is only taken as by hand.
    /// </summary>
    private static Figure<Process> Computed(Part part)
    {
        if (part.Infusion is { } infusion)
        {
            return new(Process.Infused, Basis.Stated, "infused", infusion.Where, "computed from the infuse block");
        }

        var plies = part.Stack.OfType<PlyItem>().ToArray();
        if (part.Resin is null && plies.Length > 0 && plies.All(p => p.Material.PrepregContent is not null || p.Content is not null)
            && plies.Any(p => p.Material.PrepregContent is not null))
        {
            return new(Process.Prepreg, Basis.Stated, "prepreg", part.StackWhere, "computed from pre-impregnated plies without a resin");
        }

        if ((part.Bag?.Where ?? part.Vacuum?.Where) is { } where)
        {
            return new(Process.Bagged, Basis.Stated, "bagged", where, "computed from the bag");
        }

        return new(Process.Hand, Basis.Assumed, "hand", null, "there is no bag, vacuum or infuse block");
    }

    /// <summary>The resin with the hardener the line names; one that has a single hardener needs no word.</summary>
    private static ResinSystem? Resin(Line? line)
    {
        if (line?.Named<MaterialDeclaration>(Define.Value) is not { } declaration || declaration.Material is not ResinSystem resin)
        {
            return null;
        }

        var where = line.Reading.Find(Define.Value)!.Where;
        if (line.Reading.Find("with") is { Word: { } name } with)
        {
            var chosen = resin.Hardeners.FirstOrDefault(h => h.Hardener == name);
            line.Context.Sink.Use(NameKind.Hardener, name, with.Where, chosen is null ? null : declaration.Where);
            if (chosen is null)
            {
                line.Context.Sink.Report(UnknownName.Create(with.Where, name, $"a hardener of `{resin.Name}`", resin.Hardeners.Select(h => h.Hardener!)));
            }

            return chosen is null ? resin : Chosen(chosen, resin);
        }

        if (resin.Hardeners.Length == 1)
        {
            return Chosen(resin.Hardeners[0], resin);
        }

        if (resin.Hardeners.Length > 1 && !line.Reading.WasTried("with"))
        {
            line.Context.Sink.Report(MissingValue.Hardener(where, resin.Name, [.. resin.Hardeners.Select(h => h.Hardener!)]));
        }

        return resin;
    }

    private static ResinSystem Chosen(ResinSystem hardener, ResinSystem resin) => hardener with { Hardeners = resin.Hardeners };

    private static ImmutableArray<Coat> Coats(Lines lines)
    {
        var coats = ImmutableArray.CreateBuilder<Coat>();
        foreach (var line in lines.Many("coat"))
        {
            if (line.Named<MaterialDeclaration>("material")?.Material is ResinSystem material)
            {
                coats.Add(new Coat(material, line.Figure(Define.Value, Si.ArealWeight) ?? material.Film, line.Where) { Wait = line.Figure("wait", Si.Time) });
            }
        }

        return coats.ToImmutable();
    }
}
