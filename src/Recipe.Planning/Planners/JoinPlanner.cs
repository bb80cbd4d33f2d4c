using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>The join while the plan is made.</summary>
/// <param name="Join">As written.</param>
/// <param name="Seam">Length of the seam, m.</param>
/// <param name="TapeArea">Cloth over the seam, m2.</param>
/// <param name="TapeCloth">Its dry mass, kg.</param>
/// <param name="TapeResin">Its resin, kg.</param>
/// <param name="Adhesive">Adhesive in the bond line, kg.</param>
/// <param name="Fillet">Filler, kg.</param>
/// <param name="Time">Time to work along it, s.</param>
internal sealed record JoinWork(Join Join, Num? Seam, Num? TapeArea, Num? TapeCloth, Num? TapeResin, Num? Adhesive, Num? Fillet, Num? Time)
{
    /// <summary>Whether its wet work is done with the laminate's resin, in the same session.</summary>
    public bool SameSession => Join.Manner is { Value: JoinManner.WetInWet };

    /// <summary>What the join adds, kg; what is unknown adds nothing.</summary>
    public Num Mass => (TapeCloth ?? Num.Zero) + (TapeResin ?? Num.Zero) + (Adhesive ?? Num.Zero) + (Fillet ?? Num.Zero);

    /// <summary>Laminating resin that it takes: the tape's, and the filler's where no adhesive is named for it.</summary>
    public Num LaminatingResin => (TapeResin ?? Num.Zero) + (Join.Adhesive is null ? Fillet ?? Num.Zero : Num.Zero);
}

/// <summary>
/// Seam tape, adhesive and filler. Seam tape is laid by hand, so it holds what the cloth holds by hand. Halves that are taped meet edge
/// to edge: there is a bond line only where they are bonded, or where the recipe says how thick it is.
/// </summary>
internal static class JoinPlanner
{
    private const string Subject = "materials of the join";

    public static JoinWork? Work(PlanContext context, Ground? ground, Conditions conditions)
    {
        if (context.Part.Join is not { } join)
        {
            return null;
        }

        var figures = context.Figures;
        var seam = figures.Length(join.Seam, context.PartOwner, "seam") ?? Rim(context, ground);
        if (seam is null)
        {
            context.Miss(Subject, "the length of the seam is not known");
        }

        var tape = join.Tape is { } cloth ? Tape(context, join, cloth, seam) : default;
        var fillet = seam * figures.LinearDensity(join.Fillet, context.PartOwner, "fillet");
        var bond = IsBonded(join) ? Adhesive(context, join, seam) : null;
        if (join.Adhesive is { } unsaid && join.Fillet is null && !IsBonded(join))
        {
            context.Miss($"{unsaid.Label} in the join", "neither a fillet nor a bond line says how much");
        }

        return new JoinWork(join, seam, tape.Area, tape.Cloth, tape.Resin, bond, fillet, Time(context, join, seam, conditions));
    }

    public static JoinPlan Publish(PlanLedger ledger, JoinWork join, AssemblyWork? assembly) => new()
    {
        Seam = ledger.PublishLength(join.Seam),
        TapeArea = ledger.PublishArea(join.TapeArea),
        TapeCloth = ledger.PublishMass(join.TapeCloth),
        TapeResin = ledger.PublishMass(join.TapeResin),
        Adhesive = ledger.PublishMass(join.Adhesive),
        Fillet = ledger.PublishMass(join.Fillet),
        SameSession = join.SameSession,
        Work = ledger.PublishTime(join.Time),
        Mass = ledger.PublishMass(join.Mass),
        Parts = assembly is null ? [] : [.. assembly.Parts.Select(part => new JoinedPart(part.Name, part.Publish(ledger)))],
        Whole = assembly?.Whole.Publish(ledger),
    };

    private static Num? Rim(PlanContext context, Ground? ground) =>
        ground is { Sides: 2 } ? ground.Rim.And(context.Ledger.Assume(Defaults.Seam)) : null;

    private static bool IsBonded(Join join) =>
        join.BondLine is not null || join.Manner is { Value: JoinManner.CuredThenBonded } || (join.Manner is null && join.Tape is null);

    private static Num? Time(PlanContext context, Join join, Num? seam, Conditions conditions)
    {
        var layers = join.Tape is null ? 0 : Math.Clamp(join.TapeLayers, 1, 1000);
        Num? along = seam * context.Take(Defaults.SeamPace);
        var work = layers > 0 ? along + (context.Take(Defaults.PieceHandling) * layers) : along;
        return (work / conditions.Laminators.Value)?.And(conditions.Laminators.On);
    }

    private static (Num? Area, Num? Cloth, Num? Resin) Tape(PlanContext context, Join join, Reinforcement cloth, Num? seam)
    {
        var owner = Owner.Of(cloth);
        var width = context.Figures.Length(join.TapeWidth, context.PartOwner, "tape width") ?? context.Figures.Length(cloth.Width, owner, "width");
        if (width is null)
        {
            context.Miss(Subject, $"no width is known for the tape of {cloth.Name}");
        }

        var area = seam * width * Math.Clamp(join.TapeLayers, 1, 1000);
        var weight = context.Figures.ArealWeight(cloth.ArealWeight, owner, "areal-weight");
        var content = context.Figures.Any(cloth.HandContent, owner, "resin-content hand") is { Value.Basis: ContentBasis.ResinByWeight, Value.Fraction: >= 0 and < 1 } stated
            ? new Num(stated.Value.Fraction, stated.On)
            : context.Take(Defaults.ResinContent(Process.Hand, cloth.Form));
        Num? resin = weight is { } w
            ? new Num(FibreContent.ResinPerArea(AreaDensity.FromKilogramsPerSquareMeter(w.Si), Ratio.FromDecimalFractions(content.Si)).KilogramsPerSquareMeter, w.On | content.On)
            : null;
        return (area, area * weight, area * resin);
    }

    // Bond line times overlap times seam: what stays in it, squeeze-out left out.
    private static Num? Adhesive(PlanContext context, Join join, Num? seam)
    {
        if (join.Adhesive is not { } adhesive)
        {
            return null;
        }

        var figures = context.Figures;
        var owner = Owner.Of(adhesive);
        var overlap = figures.Length(join.Overlap, context.PartOwner, "join overlap") ?? context.Take(Defaults.Overlap);
        var thickness = figures.Length(join.BondLine, context.PartOwner, "bond-line")
            ?? figures.Length(adhesive.BondLine, owner, "thickness")
            ?? context.Take(Defaults.BondLine);
        var density = figures.Density(adhesive.CuredDensity, owner, "density cured")
            ?? figures.Density(adhesive.Density, owner, "density")
            ?? context.Take(Defaults.CuredDensity(adhesive.Chemistry));
        return seam * overlap * thickness * density;
    }
}
