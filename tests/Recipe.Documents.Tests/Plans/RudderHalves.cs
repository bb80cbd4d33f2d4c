using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using Recipe.Text.Units;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests.Plans;

/// <summary>
/// A dinghy rudder in two halves, polyester by hand, in US units on letter paper, joined wet in wet; its job does not fit its
/// clock, a pot has no known life, an error is open. Invented figures.
/// </summary>
internal static class RudderHalves
{
    private static readonly ResinSystem Polyester = new()
    {
        Name = "laminating-polyester",
        Keyword = "resin",
        Where = Here,
        Title = "Laminating polyester",
        Role = ResinRole.Laminating,
        Chemistry = Chemistry.Polyester,
        Mix = Stated(new MixRatio(100, 1.5, MixBasis.Weight), "100:1.5 by weight"),
        Hazard = "styrene vapour; peroxide blinds",
    };

    private static readonly Reinforcement Mat = Cloth("chopped-mat-300", 300, "Chopped strand mat, 300 g", ReinforcementForm.Mat) with
    {
        ArealWeight = Stated(Gsm(305.15), "1 oz/ft2"),
    };

    private static readonly Reinforcement Ud = Cloth("glass-ud-200", 200, "Glass, one way, 200 g", ReinforcementForm.Unidirectional) with
    {
        ArealWeight = Stated(Gsm(200), "5.9 oz/yd2"),
    };

    private static readonly FindingDescriptor PotTooSlow = Descriptor(
        "RC5001", "pot-outlived", Severity.Error, "a pot is needed longer than it lives", "Plan smaller pots or a slower hardener.");

    private static readonly FindingDescriptor NoFilmLife = Descriptor(
        "RC5003", "film-outlived", Severity.Warning, "the film gels before the work is done", "Give the film life from the data sheet.");

    public static PaperInput Input => new(
        Nests.LaidOut(Plan),
        [new Finding(PotTooSlow, Severity.Error, Here, "Pot 1 is in use for 26 min and lives 18 min at 82 degF.")],
        [new NotChecked(NoFilmLife, Here, "no film life is given for laminating-polyester")],
        null,
        null,
        "rudder.recipe");

    public static Plan Plan => new()
    {
        Part = Part,
        Shop = new Shop
        {
            Name = "yard",
            Where = Here,
            Units = Model.UnitSystem.Us,
            Paper = PaperSize.Letter,
            ScaleResolution = Stated(Mass.FromOunces(0.05), "0.05 oz"),
            Currency = "USD",
        },
        Conditions = new ConditionsPlan
        {
            Room = Known(Temperature.FromDegreesFahrenheit(82)),
            Resin = On(Temperature.FromDegreesFahrenheit(82), "default.resin-temperature"),
            Laminators = Known(2),
            Altitude = On(Length.Zero, "default.altitude"),
            Ambient = On(Mbar(1013.25), "default.altitude"),
        },
        Geometry = new GeometryPlan
        {
            Shape = new GivenAreaShape(M2(0.165), Mm(710), Mm(240), Mm(22)),
            Sides = 2,
            Area = M2(0.165),
            Rim = Mm(1830),
            Depth = Mm(22),
            DevelopedLength = Mm(716),
            DevelopedWidth = Mm(246),
            DoublyCurved = true,
            Flat = false,
        },
        Stack =
        [
            Laid(Part.Stack[0], 1, 305.15, 0.70),
            Laid(Part.Stack[1], 2, 400, 0.45),
            Laid(Part.Stack[2], 4, 305.15, 0.70) with { CutResin = null, CutMass = null, Pieces = [] },
        ],
        Pots =
        [
            new PotPlan
            {
                Number = 1, Mass = Known(Mass.FromOunces(17.6)), Resin = Known(Mass.FromOunces(17.34)), Hardener = Known(Mass.FromOunces(0.26)), HardenerTolerance = Mass.FromOunces(0.05),
                For = ["skin", "spine"], MixedAt = Known(Min(0)), UsedUpAt = Known(Min(26)), PotLife = Known(Min(18)), DeadAt = Known(Min(18)),
            },
            new PotPlan { Number = 2, Mass = Known(Mass.FromOunces(9.2)), For = ["spine", "inside"], MixedAt = Known(Min(25)), UsedUpAt = Known(Min(43)) },
        ],
        Assumptions =
        [
            new("default.altitude", "height above sea level", "0 ft", "common practice", "write `altitude` in the shop"),
            new("default.resin-temperature", "resin is as warm as the room", "82 degF", "common practice", "write `resin-temperature` in `wet-out`"),
        ],
        Gaps =
        [
            new("expected mass", "no resin content is known for chopped-mat-300 by hand"),
            new("resin to mix", "no resin content is known for chopped-mat-300 by hand"),
        ],
        Takeoff =
        [
            Line(TakeoffGroup.Reinforcement, Mat, 0.74, "yd2", new Price(3.1m, "USD", UnitTable.Get("yd2"), null), 2.87m),
            Line(TakeoffGroup.Reinforcement, Ud, 0.78, "yd2", new Price(5.5m, "EUR", UnitTable.Get("m2"), new DateOnly(2025, 11, 30)), 5.0m),
        ],
    };

    public static Part Part => new()
    {
        Name = "rudder",
        Where = Here,
        Title = "Dinghy rudder",
        VariantOf = "rudder-epoxy",
        Quantity = 2,
        Mould = new Mould { Name = "rudder-mould", Where = Here, Title = "Rudder mould", Halves = ["port", "starboard"] },
        Process = Stated(Process.Hand, "hand"),
        Resin = Polyester,
        Use = Stated(PartUse.Structural, "structural"),
        Stack =
        [
            new PlyItem { Name = "skin", Where = Here, NameWhere = Here, Material = Mat, MaterialWhere = Here, Orientation = Stated(Orientation.Random, "random") },
            new PlyItem { Name = "spine", Where = Here, NameWhere = Here, Material = Ud, MaterialWhere = Here, Count = 2, Orientation = Stated(new Orientation(OrientationKind.Single, 30), "30"), Step = Stated(Length.FromInches(0.5), "0.5 in") },
            new PlyItem { Name = "inside", Where = Here, NameWhere = Here, Material = Mat, MaterialWhere = Here },
        ],
        Join = new Join
        {
            Where = Here,
            Manner = Stated(JoinManner.WetInWet, "wet-in-wet"),
            Overlap = Stated(Length.FromInches(0.75), "0.75 in"),
            Seam = Stated(Length.FromInches(72), "6 ft"),
            Fillet = Stated(LinearDensity.FromGramsPerMeter(6), "6 g/m"),
            Within = Stated(Min(45), "45 min"),
            Tape = Mat,
            TapeWidth = Stated(Length.FromInches(2), "2 in"),
            TapeLayers = 2,
            Align = "dowels",
            Vent = Stated(Mm(3), "3 mm"),
            Preparation = [new FinishStep("prepare", "wipe the flange", Here)],
        },
        Finish = [new FinishStep("step", "drill the pintle holes", Here)],
        Waivers = [new Waiver("pot-outlived", null, null, Here)],
    };

    private static StackPlan Laid(StackItem item, int number, double gsm, double share) => new()
    {
        Item = item,
        Number = number,
        CutArea = Known(M2(0.38)),
        CutMass = Known(G(gsm * 0.38)),
        CutResin = Known(G(gsm * 0.38 * share / (1 - share))),
        Pieces = [new PiecePlan(Mm(752), Mm(282), 2 * item.Count, 30, Mm(620), Mm(792), Mm(500), 1, true)],
    };

    private static TakeoffLine Line(TakeoffGroup group, Material material, double yards, string unit, Price price, decimal cost) => new()
    {
        Group = group,
        Material = material,
        Label = material.Label,
        Net = Known(new Amount(yards * 0.83612736, UnitTable.Get(unit))),
        Waste = Known(0.25),
        Gross = Known(new Amount(yards * 1.25 * 0.83612736, UnitTable.Get(unit))),
        Price = price,
        Cost = cost,
    };
}
