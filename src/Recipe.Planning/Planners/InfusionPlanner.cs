using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>The flow of an infusion while the plan is made, SI.</summary>
internal sealed record FlowWork(
    Num Path, Length Lead, bool FromALine, Num Drive, PorousMedium Medium, ViscosityCurve Resin, Num Opened, Num? Gel, Rests On, FillOutcome Fill, FillOutcome Best, FillOutcome Worst)
{
    /// <summary>Time from the opened feed to the full part, s; null when it never fills.</summary>
    public Num? Time => Of(Fill);

    public Num? Of(FillOutcome outcome) => outcome.Time is { } time ? new Num(time.Seconds, On) : null;
}

/// <summary>
/// From plies, flow medium, vacuum and resin to the time that the resin takes. The layers are taken to fill together
/// (Recipe.Engineering PorousStack), the resin to be as warm as the mould from the moment it enters.
/// </summary>
internal static class InfusionPlanner
{
    public const string Subject = "time to fill the part";

    public static FlowWork? Work(
        PlanContext context, Conditions conditions, ImmutableArray<LineWork> stack, BagWork? bag, VacuumWork? vacuum, PlyContents contents, PotLives? lives)
    {
        if (context.Process != Process.Infused || context.Part.Infusion is not { } infusion)
        {
            return null;
        }

        if (context.MissesForAPly(Subject))
        {
            return null;
        }

        if (context.Figures.Length(infusion.Path, context.PartOwner, "path") is not { } path)
        {
            context.Miss(Subject, "the `infuse` block gives no `path`, the longest way that the resin flows");
            return null;
        }

        if (vacuum is not { Below: { Si: > 0 } below, Ceiling: var ceiling })
        {
            context.Miss(Subject, "the vacuum level is not known");
            return null;
        }

        if (Layers(context, stack, bag, contents) is not { } layers || Resin(context, infusion, conditions, lives) is not { } resin)
        {
            return null;
        }

        try
        {
            // A level beyond the air there is drives no harder than all of it.
            return Fill(context, infusion, path, below.Si <= ceiling.Si ? below : ceiling.And(below.On), layers, resin);
        }
        catch (ArgumentOutOfRangeException)
        {
            context.Miss(Subject, "its figures are beyond what the model answers for");
            return null;
        }
    }

    public static InfusionFlow Publish(PlanLedger ledger, FlowWork work)
    {
        var (drop, on, medium) = (Pressure.FromPascals(work.Drive.Si), work.On, work.Medium);
        var opened = Duration.FromSeconds(work.Opened.Si);
        var thickens = work.Resin.DoublesIn!.Value;
        var front = FeedLines.GreatestSpacing(medium, drop, work.Resin, thickens, FeedSides.One, opened);
        var longest = front > work.Lead ? front - work.Lead : Length.Zero;
        return new InfusionFlow
        {
            Path = ledger.PublishLength(work.Path),
            FromALine = work.FromALine,
            Drive = ledger.PublishPressure(work.Drive),
            Permeability = ledger.Publish(medium.Permeability, on),
            Porosity = ledger.Publish(medium.Porosity.DecimalFractions, on),
            Viscosity = ledger.Publish(work.Resin.At(opened), on),
            Fill = ledger.PublishTime(work.Time),
            FillAtBest = ledger.PublishTime(work.Of(work.Best)),
            FillAtWorst = ledger.PublishTime(work.Of(work.Worst)),
            Reach = ledger.Publish(longest.Meters < work.Path.Si ? longest : Length.FromMeters(work.Path.Si), on),
            Thickens = ledger.Publish(thickens, on),
            Gel = ledger.PublishTime(work.Gel),
            LongestPath = ledger.Publish(longest, on),
        };
    }

    private static FlowWork Fill(PlanContext context, Infusion infusion, Num path, Num drive, StackFlow layers, ResinRun resin)
    {
        // From a line across the part, or from one point where none is given; the slower of the two when in doubt.
        var line = infusion.FeedLine is not null;
        var bore = line ? (Num?)null : FeedPlanner.Bore(context);
        var medium = PorousStack.Layered([.. layers.Plies, .. layers.Media]);
        var lead = Lead(context, layers);
        var scatter = layers.IsAssumed ? context.Take(Defaults.PermeabilityScatter) : context.Take(Defaults.OwnPermeabilityScatter);
        var on = path.On | drive.On | layers.On | resin.On | scatter.On | lead.On | (bore?.On ?? Rests.None);
        return new FlowWork(
            path, lead.Value, line, drive, medium, resin.Curve, resin.Opened, resin.Gel, on, Run(1), Run(scatter.Si), Run(1 / scatter.Si));

        FillOutcome Run(double factor)
        {
            var (drop, length, opened) = (Pressure.FromPascals(drive.Si), Length.FromMeters(path.Si) + lead.Value, Duration.FromSeconds(resin.Opened.Si));
            var scaled = new PorousMedium(medium.Permeability * factor, medium.Porosity);
            return bore is { } port
                ? InfusionFill.Circle(scaled, drop, Length.FromMeters(port.Si / 2), length, resin.Curve, opened: opened)
                : InfusionFill.Line(scaled, drop, length, resin.Curve, opened: opened);
        }
    }

    // The front on the mould lags behind the one in the medium: the medium has to be filled so much further than the part.
    private static Known<Length> Lead(PlanContext context, StackFlow layers)
    {
        if (layers.Media.Count == 0)
        {
            return new Known<Length>(Length.Zero, Rests.None);
        }

        var (medium, plies) = (AsOne(layers.Media), AsOne(layers.Plies));
        var through = context.Take(Defaults.ThroughThickness);
        return new Known<Length>(LeadLag.Lead(medium, plies, plies.Medium.Permeability / through.Si), through.On);

        static PorousLayer AsOne(List<PorousLayer> layers)
        {
            var thickness = 0.0;
            foreach (var layer in layers)
            {
                thickness += layer.Thickness.Meters;
            }

            return new PorousLayer(Length.FromMeters(thickness), PorousStack.Layered(layers));
        }
    }

    private static StackFlow? Layers(PlanContext context, ImmutableArray<LineWork> stack, BagWork? bag, PlyContents contents)
    {
        var (plies, media) = (new List<PorousLayer>(), new List<PorousLayer>());
        var (on, assumed) = (Rests.None, false);
        foreach (var line in stack)
        {
            if (line.Item is not PlyItem ply || !line.CoversAll)
            {
                continue;
            }

            if (line.Stuff is not { } stuff || line.Thickness is not { Si: > 0 } thickness)
            {
                context.Miss(Subject, $"the thickness of {ply.Name} is not known");
                return null;
            }

            var own = context.Figures.Any(ply.Material.Permeability, Owner.Of(ply.Material), "permeability");
            assumed |= own is not { On: var basis } || !basis.Equals(Rests.None);
            var permeability = own ?? Usual(context, ply.Material);
            var solid = stuff.Weight / stuff.Solid * stuff.Layers / thickness;
            plies.Add(new PorousLayer(
                Length.FromMeters(thickness.Si), PorousMedium.OfFibre(permeability.Value, Ratio.FromDecimalFractions(Math.Clamp(solid.Si, 0, 0.999)))));
            on |= permeability.On | thickness.On | solid.On;
        }

        if (plies.Count == 0)
        {
            context.Miss(Subject, "no ply covers the whole part");
            return null;
        }

        foreach (var layer in bag?.Layers ?? [])
        {
            if (layer.Layer.Class == LayerClass.FlowMedium && Medium(context, layer, contents) is { } mesh)
            {
                media.Add(mesh.Value);
                on |= mesh.On;
                assumed |= layer.Layer.Material.Permeability is not { IsAssumed: false };
            }
        }

        return new StackFlow(plies, media, on, assumed);
    }

    // A mesh under the bag holds what it is said to pick up; the rest of its thickness is its own yarn and air squeezed out.
    private static Known<PorousLayer>? Medium(PlanContext context, LayerWork layer, PlyContents contents)
    {
        var (material, owner) = (layer.Layer.Material, Owner.Of(layer.Layer.Material));
        var thickness = (context.Figures.Length(material.Thickness, owner, "thickness") ?? context.Take(Defaults.FlowMediumThickness))
            * Math.Clamp(layer.Layer.Count, 1, 1000);
        var known = context.Figures.Any(material.Permeability, owner, "permeability") ?? context.TakeKnown(Defaults.FlowMediumPermeability);
        var pores = layer.PickupPerArea / contents.CuredDensity / thickness;
        return thickness.Si > 0
            ? new Known<PorousLayer>(
                new PorousLayer(Length.FromMeters(thickness.Si), new PorousMedium(known.Value, Ratio.FromDecimalFractions(Math.Clamp(pores.Si, 0.05, 0.98)))),
                thickness.On | known.On | pores.On)
            : null;
    }

    private static Known<Area> Usual(PlanContext context, Reinforcement material) => context.TakeKnown(material switch
    {
        { Form: ReinforcementForm.Mat or ReinforcementForm.Veil } => Defaults.MatPermeability,
        { FibreAngles: not null } => Defaults.StitchedPermeability,
        _ => Defaults.ClothPermeability,
    });

    private static ResinRun? Resin(PlanContext context, Infusion infusion, Conditions conditions, PotLives? lives)
    {
        if (context.Part.Resin is not { } resin)
        {
            context.Miss(Subject, "the part names no resin");
            return null;
        }

        var (figures, owner) = (context.Figures, Owner.Of(resin));
        if (figures.Any(resin.Viscosity, owner, "viscosity") is not { } sheet || figures.Temperature(resin.ViscosityAt, owner, "viscosity") is not { } at)
        {
            context.Miss(Subject, $"{resin.Name} gives no viscosity");
            return null;
        }

        var warm = figures.Temperature(infusion.MouldTemperature, context.PartOwner, "mould-temperature")
            ?? figures.Temperature(infusion.ResinTemperature, context.PartOwner, "resin-temperature")
            ?? conditions.Room;
        if (lives?.SmallAt(warm) is not { } doubling)
        {
            context.Miss(Subject, $"{resin.Name} gives no pot life that can be used at that temperature");
            return null;
        }

        // A mix that is colder than its sheet is thicker.
        var difference = at.Value.Kelvins - warm.Value.Kelvins;
        var thinning = Math.Abs(difference) > 1e-9 ? context.Take(Defaults.ViscosityHalves) : Num.Zero;
        var start = thinning.Si > 0 ? sheet.Value * Math.Pow(2, difference / thinning.Si) : sheet.Value;
        var mixing = PotPlanner.Mixing(context);
        var on = sheet.On | at.On | warm.On | doubling.On | thinning.On | mixing.On | context.Ledger.Assume(Defaults.ViscosityDoubles);
        try
        {
            return new ResinRun(ViscosityCurve.Doubling(start, Duration.FromSeconds(doubling.Si)), mixing, lives.Gel(warm) - mixing, on);
        }
        catch (ArgumentOutOfRangeException)
        {
            context.Miss(Subject, $"viscosity '{resin.Viscosity!.Written}' cannot be used");
            return null;
        }
    }

    private sealed record StackFlow(List<PorousLayer> Plies, List<PorousLayer> Media, Rests On, bool IsAssumed);

    private sealed record ResinRun(ViscosityCurve Curve, Num Opened, Num? Gel, Rests On);
}
