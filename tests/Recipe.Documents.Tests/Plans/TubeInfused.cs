using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Units;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests.Plans;

/// <summary>A telescope tube, carbon infused on a mandrel, both unit systems, free-standing post-cure, cured halves bonded. Invented figures.</summary>
internal static class TubeInfused
{
    private static readonly ResinSystem Infusion = new()
    {
        Name = "infusion-epoxy",
        Keyword = "resin",
        Where = Here,
        Title = "Infusion epoxy",
        Role = ResinRole.Laminating,
        Chemistry = Chemistry.Epoxy,
        Hardener = "slow",
        Mix = Stated(new MixRatio(100, 26, MixBasis.Volume), "100:26 by volume"),
    };

    private static readonly Reinforcement Carbon = Cloth("carbon-twill-200", 200, "Carbon, twill, 200 g", fibre: "carbon");
    private static readonly Consumable Mesh = Sheet("flow-mesh", LayerClass.FlowMedium, "Flow mesh");

    public static PaperInput Input => new(Nests.LaidOut(Plan), [], [], "0a1b2c3", null, "tube.recipe");

    public static Plan Plan => new()
    {
        Part = Part,
        Shop = new Shop { Name = "ours", Where = Here, Units = Model.UnitSystem.Both, ScaleResolution = Stated(G(1), "1 g") },
        Conditions = new ConditionsPlan
        {
            Room = Known(C(21)),
            Resin = Known(C(25)),
            Laminators = Known(2),
            Altitude = Known(Length.FromMeters(250)),
            Ambient = Known(Mbar(983.6)),
        },
        Geometry = new GeometryPlan
        {
            Shape = new CylinderShape(Mm(160), Mm(900)),
            Sides = 1,
            Area = M2(0.4524),
            Rim = Mm(1005),
            Depth = Mm(160),
            DevelopedLength = Mm(900),
            DevelopedWidth = Mm(502.7),
            DoublyCurved = false,
            Flat = false,
        },
        Stack =
        [
            new StackPlan { Item = Part.Stack[0], Number = 1, CutMass = Known(G(394)), Pieces = [new PiecePlan(Mm(930), Mm(523), 4, 0, Mm(523), Mm(930), Length.FromMeters(1), 0, false)] },
        ],
        Laminate = new LaminatePlan
        {
            Fibre = Known(G(361.9)),
            Resin = Known(G(194.9)),
            Core = Known(Mass.Zero),
            Coats = Known(Mass.Zero),
            Inserts = Known(Mass.Zero),
            TrimmedMass = Known(new Banded<Mass>(G(556.8), G(517.8), G(595.8))),
            Thickness = Known(Mm(0.83)),
            ResinFraction = Known(0.35),
        },
        Resin = new ResinPlan
        {
            System = Infusion,
            Lines = [new(ResinUse.Laminate, "in the cut plies", Known(G(212))), new(ResinUse.Lines, "feed line, 400 mm x 8 mm", Known(G(22.4))), new(ResinUse.Spare, "20 % reserve", Known(G(46.9)))],
            Need = Known(G(234.4)),
            ToMix = Known(G(1281.3)),
            PotsStated = true,
        },
        Pots =
        [
            new PotPlan
            {
                Number = 1, Mass = Known(G(281.3)), Resin = Known(G(231.7)), Hardener = Known(G(49.6)), HardenerTolerance = G(1), MixedAt = Known(Min(0)), UsedUpAt = Known(Min(22)), PotLife = Known(Min(95)), StandingPeak = Known(C(187)), DeadAt = Known(Min(95)),
            },
        ],
        Vacuum = new VacuumLevels { BelowAmbient = Known(Mbar(940)), Absolute = Known(Mbar(43.6)), Ceiling = Known(Mbar(983.6)), LeakCheck = Known(Min(5)), RiseAtMost = Known(Mbar(34)) },
        Flow = new InfusionFlow
        {
            Path = Known(Mm(300)),
            FromALine = true,
            Drive = Known(Mbar(940)),
            Permeability = Known(Area.FromSquareMeters(1.3e-9)),
            Porosity = Known(0.45),
            Viscosity = Known(DynamicViscosity.FromMillipascalSeconds(310)),
            Fill = Known(Min(4.2)),
            FillAtBest = Known(Min(1.4)),
            Reach = Known(Mm(300)),
            Thickens = Known(Min(190)),
            Gel = Known(Min(620)),
            LongestPath = Known(Mm(1900)),
        },
        Cure = new CurePlan
        {
            Inside = Known(C(71.4)),
            InsideAt = Known(Min(400)),
            Steps =
            [
                Timed(Part.Cure!.Steps[0], 21, 21, 0, 24),
                Timed(Part.Cure.Steps[1], 21, 21, 24, 24, bagged: false),
                Timed(Part.Cure.Steps[2], 21, 21, 24, 24, bagged: false, inMould: false),
                Timed(Part.Cure.Steps[3], 21, 60, 24, 27.9, bagged: false, inMould: false),
                Timed(Part.Cure.Steps[4], 60, 60, 27.9, 35.9, bagged: false, inMould: false),
            ],
            Peak = Known(C(60)),
            Total = Known(H(35.9)),
            VacuumOff = Known(H(24)),
            Limits = [new HeatLimit("mandrel tube-mandrel", "tube-mandrel", Known(C(55)), C(60), 4, Here)],
        },
        Takeoff =
        [
            new TakeoffLine
            {
                Group = TakeoffGroup.Reinforcement, Material = Carbon, Label = Carbon.Label, Net = Known(new Amount(1.946, UnitTable.Get("m2"))), Waste = Known(0.1),
                Gross = Known(new Amount(2.14, UnitTable.Get("m2"))), InStock = new Amount(1.25, UnitTable.Get("m2")), ToBuy = new Amount(0.89, UnitTable.Get("m2")),
            },
        ],
    };

    public static Part Part => new()
    {
        Name = "tube",
        Where = Here,
        Title = "Telescope tube",
        Mould = new Mould { Name = "tube-mandrel", Where = Here, Title = "Tube mandrel", IsMandrel = true, MadeOf = new MouldMaterial { Name = "polypropylene", Keyword = "mould-material", Where = Here, SelfReleasing = true } },
        Process = Stated(Process.Infused, "infused"),
        Resin = Infusion,
        Use = Stated(PartUse.Flying, "flying"),
        Stack = [new PlyItem { Name = "wall", Where = Here, NameWhere = Here, Material = Carbon, MaterialWhere = Here, Count = 4, Orientation = Stated(new Orientation(OrientationKind.Pair, 0, 90), "0/90") }],
        WetOut = new WetOut { Where = Here, Start = Stated(new TimeOnly(22, 30), "22:30") },
        Bag = new Bag { Where = Here, Layers = [new BagLayer { Class = LayerClass.FlowMedium, Material = Mesh, Where = Here, Smaller = Stated(Mm(25), "25 mm") }], IsEnvelope = true },
        Infusion = new Infusion
        {
            Where = Here,
            FeedLine = Stated(Mm(400), "400 mm"),
            Path = Stated(Mm(300), "300 mm"),
            MouldTemperature = Stated(C(24), "24 degC"),
            ClampFeed = "at full wet",
            Vent = "at the far end",
            Reserve = Stated(0.2, "20 %"),
            DropTest = new LeakCheck(Stated(Min(5), "5 min"), Stated(Mbar(34), "34 mbar"), false, Here),
        },
        Cure = new Cure
        {
            Where = Here,
            Steps =
            [
                Cure(CureAction.Hold, hours: 24, vacuum: true, room: true), Cure(CureAction.Debag), Cure(CureAction.Demould),
                Cure(CureAction.Ramp, 60, rate: 0.1667, support: "a cradle"), Cure(CureAction.Hold, 60, 8, support: "a cradle"),
            ],
        },
        Join = new Join { Where = Here, Manner = Stated(JoinManner.CuredThenBonded, "cured-then-bonded"), Parts = ["tube", "collar"], BondLine = Stated(Mm(0.3), "0.3 mm"), Adhesive = Infusion with { Name = "paste", Title = "Epoxy paste", Mix = null } },
    };
}
