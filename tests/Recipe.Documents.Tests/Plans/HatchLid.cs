using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using Recipe.Text.Units;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests.Plans;

/// <summary>A kayak hatch lid, bagged, with everything a plan can hold: coat, patch, core, inserts, two pots, post-cure. Invented figures.</summary>
internal static class HatchLid
{
    private const double Net = 0.0757;
    private const double Cut = 0.0908;
    private const double CoatMixed = 0.02271 * 1.2 * 1000;

    private static readonly ResinSystem Epoxy = new()
    {
        Name = "slow-laminating-epoxy",
        Keyword = "resin",
        Where = Here,
        Title = "Slow laminating epoxy",
        Role = ResinRole.Laminating,
        Chemistry = Chemistry.Epoxy,
        Mix = Stated(new MixRatio(100, 30, MixBasis.Weight), "100:30 by weight"),
        PotLife = Stated(new TimeAt(Min(60), C(23), G(100)), "60 min at 23 degC in 100 g"),
        Hazard = "hardener burns skin and eyes; see its data sheet",
    };

    private static readonly ResinSystem White = Epoxy with
    {
        Name = "white-surface-coat",
        Title = "White surface coat",
        Role = ResinRole.SurfaceCoat,
        Mix = Stated(new MixRatio(100, 25, MixBasis.Weight), "100:25 by weight"),
        Hazard = null,
    };

    private static readonly Reinforcement Outer = Cloth("glass-plain-25", 25, "Glass, plain, 25 g");
    private static readonly Reinforcement Veil = Cloth("carbon-veil-8", 8, "Carbon veil, 8 g", ReinforcementForm.Veil, "carbon");
    private static readonly Reinforcement Body = Cloth("glass-twill-163", 163, "Glass, twill, 163 g");
    private static readonly Reinforcement Inner = Cloth("glass-plain-105", 105, "Glass, plain, 105 g");
    private static readonly Reinforcement TapeCloth = Cloth("glass-tape-200", 200, "Glass tape, 200 g");
    private static readonly Consumable PeelPly = Sheet("nylon-peel-ply", LayerClass.PeelPly, "Nylon peel ply", 64);
    private static readonly Consumable Film = Sheet("perforated-film", LayerClass.ReleaseFilm, "Perforated release film");
    private static readonly Consumable Breather = Sheet("breather-150", LayerClass.Breather, "Breather felt, 150 g", 150);
    private static readonly Consumable BagFilm = Sheet("nylon-bag-film", LayerClass.BagFilm, "Nylon bag film", 60);

    private static readonly ReleaseAgent Wax = new() { Name = "carnauba-wax", Keyword = "release-agent", Where = Here, Title = "Carnauba wax", Kind = ReleaseKind.Wax };
    private static readonly ReleaseAgent Pva = new() { Name = "pva-film", Keyword = "release-agent", Where = Here, Title = "PVA film", Kind = ReleaseKind.LiquidFilm };

    private static readonly Core Foam = new()
    {
        Name = "pvc-foam-75",
        Keyword = "core",
        Where = Here,
        Title = "PVC foam, 75 kg/m³",
        Density = Stated(Density.FromKilogramsPerCubicMeter(75), "75 kg/m3"),
        Thickness = Stated(Mm(5), "5 mm"),
    };

    private static readonly Insert Nut = new() { Name = "m5-nut", Keyword = "insert", Where = Here, Title = "M5 nut, stainless", Mass = Stated(G(2.1), "2.1 g") };

    private static readonly Tape SealantTape = new() { Name = "general-sealant-tape", Keyword = "sealant-tape", Where = Here, Title = "General sealant tape", Seals = true };

    public static readonly ImmutableArray<Assumption> Assumptions =
    [
        new("book.e-glass.modulus", "modulus of E-glass", "72 GPa", "from memory of the fibre standards", "write `modulus` in a `fibre` of your own"),
        new("book.nylon-bag-film.heat-limit", "nylon bag film stands", "120 degC", "from memory of the trade", "write `heat-limit` in a `bag-film` of your own"),
        new("default.bag-loss", "resin that stays in pot, brush and roller", "15 g", "common practice", "write `loss 15 g` in `wet-out`"),
        new("default.film-life", "a thin film stays workable longer than the pot by", "2.5 times", "from memory of the trade", "write `film-life` in the resin"),
        new("default.mass-band", "the trimmed mass lies within", "+/-7 %", "common practice", "write `target mass` with a tolerance"),
        new("default.pot-life-slope", "pot life halves for every", "10 degC-diff", "TM 1-1500-204-23-11, p. 0169", "write a second `pot-life` line"),
        new("default.stress-free-temperature", "temperature at which the stack is free of stress", "that of the hottest hold in the mould", "common practice", "the program has no word for it yet"),
        new("default.waste-bias", "waste when +/-45 is cut from straight cloth", "30 %", "common practice", "write `waste` in the shop"),
    ];

    private static readonly FindingDescriptor GaugeNearPump = Descriptor("RC6004", "gauge-near-pump", Severity.Warning, "the gauge reads next to the pump", "Read the gauge on the far side.");
    private static readonly FindingDescriptor TwoLots = Descriptor("RC7010", "two-lots", Severity.Advice, "two lots in one part", "Write both lots down.");
    private static readonly FindingDescriptor Humid = Descriptor("RC5007", "humid-room", Severity.Warning, "the room is too humid for the hardener", "Heat or dry the room.");

    public static PaperInput Input => new(
        Nests.LaidOut(Plan),
        [
            new Finding(GaugeNearPump, Severity.Warning, Here, "The gauge sits 20 mm from the port.") { AcceptedBecause = "small bag, gauge on the far side" },
            new Finding(TwoLots, Severity.Advice, Here, "Lots G7 and G8 of glass-twill-163 are both open.")
            {
                Labels = [new FindingLabel(Here, "first lot here")],
                Fixes = [new Fix("Use lot G7 only", FixSafety.NeedsALook, new TextEdit(Here, "hatch-lid"))],
            },
        ],
        [new NotChecked(Humid, Here, "no humidity is given for the shop")],
        "3f2a91c",
        new DateOnly(2026, 5, 14),
        "hatch.recipe")
    {
        Earlier = new EarlierVersion(
            new PaperInput(
                Plan with { Stack = Plan.Stack.RemoveAt(1), Laminate = Plan.Laminate! with { Thickness = new(Plan.Laminate.Thickness.Value * 0.9, []) } }, [], [], "11aa22b", null, "hatch.recipe"),
            "the first lid",
            [
                new WrittenChange("part hatch-lid", "wet-out", "resin-content", "48 % by weight", "45 % by weight"),
                new WrittenChange("part hatch-lid", "cure", "hold", null, "50 degC for 6 h"),
                new WrittenChange("part another", "wet-out", "room", "18 degC", "19 degC"),
                new WrittenChange("shop ours", "", "pump", "2 cfm", null),
            ]),
    };

    public static Plan Plan => new()
    {
        Part = Part,
        Shop = new Shop
        {
            Name = "ours",
            Where = Here,
            ScaleResolution = Stated(G(0.1), "0.1 g"),
            Currency = "EUR",
        },
        Conditions = new ConditionsPlan
        {
            Room = Known(C(20)),
            Night = Known(C(14)),
            Resin = Known(C(20)),
            Laminators = Known(1),
            Altitude = Known(Length.FromMeters(250)),
            Ambient = Known(Mbar(983.6)),
        },
        Geometry = new GeometryPlan
        {
            Shape = new SphericalCapShape(Mm(300), Mm(40)),
            Sides = 1,
            Area = M2(Net),
            Rim = Mm(942.5),
            Depth = Mm(40),
            DevelopedLength = Mm(314.1),
            DevelopedWidth = Mm(314.1),
            DoublyCurved = true,
            Flat = false,
        },
        Stack = Stack,
        Laminate = new LaminatePlan
        {
            Fibre = Known(G(23.75)),
            Resin = Known(G(25.87)),
            Core = Known(G(3.6)),
            Coats = Known(G(22.71)),
            Inserts = Known(G(8.4)),
            TrimmedMass = On(new Banded<Mass>(G(84.33), G(78.43), G(90.23)), "default.mass-band"),
            Thickness = Known(Mm(0.4213)),
            ResinFraction = Known(0.4583),
            FibreVolumeFraction = Known(0.3462),
        },
        Stiffness = new StiffnessPlan
        {
            Along = On(UnitsNet.Pressure.FromGigapascals(15.2), "book.e-glass.modulus"),
            Across = On(UnitsNet.Pressure.FromGigapascals(14.1), "book.e-glass.modulus"),
            Shear = On(UnitsNet.Pressure.FromGigapascals(4.07), "book.e-glass.modulus"),
            StripAlong = On(UnitsNet.Torque.FromNewtonMeters(0.0722), "book.e-glass.modulus"),
            StripAcross = On(UnitsNet.Torque.FromNewtonMeters(0.0701), "book.e-glass.modulus"),
            Lines = [new PlyShare("outer", 0.1, 0.104, 0.13, 0.42, 0), new PlyShare("veil", 0.042, 0.05, 0.036, 0.17, 0.081), new PlyShare("body", 0.36, 0.358, 0.229, 0.7, 0.54)],
            Loads = Loads,
            Curl = new CurlPlan
            {
                IsSymmetric = false,
                StressFree = On(C(50), "default.stress-free-temperature"),
                Room = Known(C(20)),
                Along = On(ReciprocalLength.FromInverseMeters(-0.0812), "book.e-glass.modulus", "default.stress-free-temperature"),
                Across = On(ReciprocalLength.FromInverseMeters(0.0794), "book.e-glass.modulus", "default.stress-free-temperature"),
                Twist = On(ReciprocalLength.FromInverseMeters(0.0103), "book.e-glass.modulus", "default.stress-free-temperature"),
                Length = Mm(314.1),
                Width = Mm(314.1),
                RiseAlong = On(Mm(1.0014), "book.e-glass.modulus", "default.stress-free-temperature"),
                RiseAcross = On(Mm(0.9792), "book.e-glass.modulus", "default.stress-free-temperature"),
                CornerRise = On(Mm(0.5081), "book.e-glass.modulus", "default.stress-free-temperature"),
            },
        },
        Resin = new ResinPlan
        {
            System = Epoxy,
            Lines =
            [
                new(ResinUse.Laminate, "in the cut plies", Known(G(24.21))),
                new(ResinUse.CoreFaces, "pvc-foam-75, both faces of 0.0096 m2 at 300 g/m2", Known(G(5.76))),
                new(ResinUse.Pickup, "peel ply, 0.0991 m2 at 40 g/m2", Known(G(3.96))),
                new(ResinUse.Pickup, "through the release film, 0.0991 m2 at 40 g/m2", Known(G(3.96))),
                new(ResinUse.Loss, "pot, brush and roller", On(G(15), "default.bag-loss")),
                new(ResinUse.Spare, "10 % on top", On(G(5.29), "default.bag-loss")),
            ],
            Need = On(G(52.89), "default.bag-loss"),
            ToMix = On(G(58.18), "default.bag-loss"),
            PotsStated = false,
        },
        Pots =
        [
            Pot(1, 29.09, 0, 14, ["outer", "veil", "body"]),
            Pot(2, 29.09, 13, 31, ["stiff", "inner", "hinge"]),
        ],
        OwnMixes =
        [
            // What the takeoff takes of it for one part.
            new OwnMixPlan
            {
                Use = OwnMixUse.Coat,
                System = White,
                Laid = Known(G(CoatMixed - 5)),
                Loss = Known(G(5)),
                Spare = Known(Mass.Zero),
                ToMix = Known(G(CoatMixed)),
                Pots = [new PotPlan { Number = 1, Mass = Known(G(CoatMixed)), Resin = Known(G(CoatMixed * 0.8)), Hardener = Known(G(CoatMixed * 0.2)), MixedAt = Known(Min(0)), UsedUpAt = Known(Min(9)) }],
            },
        ],
        Clock = new ClockPlan
        {
            WetOut = Known(Min(30.6)),
            Bagging = Known(Min(15)),
            DrawDown = Known(Min(10)),
            Need = Known(Min(55.6)),
            FilmLife = On(Min(184.7), "default.film-life", "default.pot-life-slope"),
            FilmLifeBand = On(new Banded<Duration>(Min(184.7), Min(151.3), Min(225.6)), "default.film-life"),
        },
        Bag = new BagPlan
        {
            Layers =
            [
                Layer(Part.Bag!.Layers[0], 355, 355, 1, 3.96),
                Layer(Part.Bag.Layers[1], 365, 365, 1, 3.96),
                Layer(Part.Bag.Layers[2], 385, 385, 2, null),
                Layer(Part.Bag.Layers[3], 505, 505, 1, null),
            ],
            SealantTape = Known(Length.FromMeters(2.14)),
            Pickup = Known(G(7.92)),
        },
        Vacuum = new VacuumLevels
        {
            LeakOfAir = Known(VolumeFlow.FromMillilitersPerMinute(31.4)),
            Hole = Known(Mm(0.06)),
            BelowAmbient = Known(Mbar(846.6)),
            Absolute = Known(Mbar(137)),
            Ceiling = Known(Mbar(983.6)),
            LeakCheck = Known(Min(5)),
            RiseAtMost = Known(Mbar(30)),
        },
        Cure = new CurePlan
        {
            Steps =
            [
                Timed(Part.Cure!.Steps[0], 20, 20, 0, 12),
                Timed(Part.Cure.Steps[1], 20, 50, 12, 13),
                Timed(Part.Cure.Steps[2], 50, 50, 13, 19),
                Timed(Part.Cure.Steps[3], 50, 30, 19, 20.5),
                Timed(Part.Cure.Steps[4], 30, 30, 20.5, 20.5),
                Timed(Part.Cure.Steps[5], 30, 30, 20.5, 20.5, bagged: false),
                Timed(Part.Cure.Steps[6], 30, 30, 20.5, 20.5, bagged: false, inMould: false),
            ],
            Peak = Known(C(50)),
            Total = Known(H(20.5)),
            VacuumOff = Known(H(20.5)),
            Limits =
            [
                new HeatLimit("mould hatch-lid-mould", "hatch-lid-mould", Known(C(70)), C(50), 2, Here),
                new HeatLimit("bag film nylon-bag-film", "nylon-bag-film", On(C(120), "book.nylon-bag-film.heat-limit"), C(50), 2, Here),
            ],
            Progress = new CureProgress
            {
                Gel = On(H(5.1), "default.film-life"),
                VacuumOff = On(H(7.65), "default.film-life"),
                PlannedDemould = Known(H(20.5)),
                Demould = On(H(21.2), "default.film-life"),
                DegreeAtDemould = On(0.951, "default.film-life"),
                TransitionAtDemould = On(C(72.6), "default.film-life"),
                Degree = On(0.951, "default.film-life"),
                Transition = On(new Banded<Temperature>(C(72.6), C(66.4), C(78.8)), "default.film-life"),
                StepDegrees = [],
                Curve = [.. Enumerable.Range(0, 42).Select(i => new CureMoment(H(i * 0.5), 0.951 * i / 41, C(-20 + (92.6 * i / 41))))],
                OwnKinetics = true,
            },
        },
        Takeoff = Takeoff,
        Cost = new CostPlan(Takeoff.Sum(line => line.Cost ?? 0), "EUR", Takeoff.Count(line => line.Cost is null)),
        Assumptions = Assumptions,
        ModelAssumptions = ["book.e-glass.modulus", "default.stress-free-temperature"],
    };

    private static ImmutableArray<LoadPlan> Loads =>
    [
        new LoadPlan
        {
            Load = new PullLoad { Name = "strap", Where = Here, Direction = LoadDirection.Across, Pull = Stated(ForcePerLength.FromNewtonsPerMillimeter(10), "10 N/mm") },
            First = new FirstLimit(On(4.569, "book.e-glass.modulus"), "body", Recipe.Engineering.StrainMode.Shear, null),
            WithoutLimits = ["veil"],
            PartlyJudged = ["outer"],
            Lines = Stresses(21.3e6, 4.1e6, 30.6e6),
        },
        new LoadPlan
        {
            Load = new StripLoad
            {
                Name = "bench",
                Where = Here,
                Direction = LoadDirection.Along,
                Width = Stated(Mm(25), "25 mm"),
                Span = Stated(Mm(100), "100 mm"),
                Load = Stated(Force.FromNewtons(0.980665), "100 g"),
            },
            First = new FirstLimit(On(0.812, "book.e-glass.modulus"), "outer", Recipe.Engineering.StrainMode.PressAlong, true),
            WithoutLimits = [],
            PartlyJudged = [],
            Sag = On(Mm(1.132), "book.e-glass.modulus"),
            Lines = Stresses(61.2e6, 9.4e6, 2.2e6),
        },
        new LoadPlan
        {
            Load = new PullLoad { Name = "eye", Where = Here, Direction = LoadDirection.Along, Pull = Stated(ForcePerLength.FromPoundsForcePerInch(50), "50 lbf/in") },
            WithoutLimits = ["outer", "veil", "body"],
            PartlyJudged = [],
            Lines = Stresses(18.9e6, 3.3e6, 27.1e6),
        },
    ];

    private static ImmutableArray<LineStress> Stresses(double outer, double veil, double body)
    {
        return [Line("outer", outer), Line("veil", veil), Line("body", body)];

        static LineStress Line(string name, double along) => new(name, Stress(along), Stress(along / 4), Stress(along / 8));

        static Computed<UnitsNet.Pressure> Stress(double pascals) => On(UnitsNet.Pressure.FromPascals(pascals), "book.e-glass.modulus");
    }

    public static Part Part => new()
    {
        Name = "hatch-lid",
        Where = Here,
        Title = "Kayak hatch lid",
        Mould = new Mould
        {
            Name = "hatch-lid-mould",
            Where = Here,
            Title = "Hatch lid mould",
            Pulls = Stated(12, "12"),
            HeatLimit = Stated(C(70), "70 degC"),
            Release =
            [
                new ReleaseCoat(Wax, Here) { Coats = Stated(3, "3"), Wait = Stated(Min(30), "30 min"), Dry = Stated(Min(60), "60 min") },
                new ReleaseCoat(Pva, Here) { Coats = Stated(1, "1"), Wait = Stated(Min(45), "45 min"), Dry = Stated(Min(45), "45 min") },
            ],
        },
        Process = Stated(Process.Bagged, "bagged"),
        Resin = Epoxy,
        TargetMass = Stated(G(85), "85 g"),
        TargetTolerance = Stated(G(6), "6 g"),
        Trim = Stated(Mm(15), "15 mm"),
        Overlap = Stated(Mm(20), "20 mm"),
        Use = Stated(PartUse.Cosmetic, "cosmetic"),
        Coats = [new Coat(White, Stated(Gsm(300), "300 g/m2"), Here)],
        Stack = [.. Items],
        WetOut = new WetOut { Where = Here, Mixing = Stated(Min(3), "3 min"), Start = Stated(new TimeOnly(9, 0), "09:00") },
        Bag = new Bag
        {
            Where = Here,
            Layers =
            [
                new BagLayer { Class = LayerClass.PeelPly, Material = PeelPly, Where = Here, ChosenByDefault = true, Beyond = Stated(Mm(5), "5 mm") },
                new BagLayer { Class = LayerClass.ReleaseFilm, Material = Film, Where = Here, Perforation = Stated(Perforation.PinPrick, "pin-prick"), Beyond = Stated(Mm(10), "10 mm") },
                new BagLayer { Class = LayerClass.Breather, Material = Breather, Where = Here, Count = 2, Beyond = Stated(Mm(20), "20 mm") },
                new BagLayer { Class = LayerClass.BagFilm, Material = BagFilm, Where = Here },
            ],
            SealantTape = new Placed<Tape>(SealantTape, false, null, Here),
            Ports = [new Placed<Fitting>(new Fitting { Name = "brass-port", Keyword = "port", Where = Here, Title = "Brass port", Kind = FittingKind.Port }, false, "40 mm from rim", Here)],
            Pleats = Stated(4, "4"),
        },
        Vacuum = new VacuumPlan
        {
            Where = Here,
            Draw = Stated(new VacuumLevel(Mbar(846.6), VacuumConvention.BelowAmbient), "25 inHg below ambient"),
            Within = Stated(Min(10), "10 min"),
            Settle = Stated(Min(3), "3 min"),
            LeakCheck = new LeakCheck(Stated(Min(5), "5 min"), Stated(Mbar(30), "30 mbar"), true, Here),
            Hold = Stated(H(12), "12 h"),
        },
        Cure = new Cure
        {
            Where = Here,
            Oven = "lamp box",
            Steps =
            [
                Cure(CureAction.Hold, 20, 12, vacuum: true), Cure(CureAction.Ramp, 50, rate: 0.5), Cure(CureAction.Hold, 50, 6), Cure(CureAction.Cool, 30),
                Cure(CureAction.Vent), Cure(CureAction.Debag), Cure(CureAction.Demould),
            ],
        },
        Finish =
        [
            new FinishStep("wash", "warm water, PVA off", Here), new FinishStep("trim", "to the line", Here), new FinishStep("abrade", "80 grit", Here),
            new FinishStep("seal", "edges", Here), new FinishStep("weigh", "", Here), new FinishStep("inspect", "pinholes along the rim", Here),
        ],
        Waivers = [new Waiver("RC6004", "small bag, gauge on the far side", new DateOnly(2027, 1, 1), Here)],
    };

    private static IEnumerable<StackItem> Items =>
    [
        Ply("outer", Outer, new(OrientationKind.Pair, 0, 90)),
        Ply("veil", Veil, Orientation.Random),
        Ply("body", Body, new(OrientationKind.Pair, 45, -45)),
        new CoreItem { Name = "stiff", Where = Here, NameWhere = Here, Material = Foam, MaterialWhere = Here, Thickness = Stated(Mm(5), "5 mm"), SizeLength = Stated(Mm(120), "120 mm"), SizeWidth = Stated(Mm(80), "80 mm") },
        Ply("inner", Inner, new(OrientationKind.Pair, 0, 90)),
        Ply("hinge", TapeCloth, new(OrientationKind.Pair, 0, 90)) with { IsPatch = true, Count = 2, At = "30 mm from rim", SizeLength = Stated(Mm(60), "60 mm"), SizeWidth = Stated(Mm(40), "40 mm") },
        new InsertItem { Name = "boss", Where = Here, NameWhere = Here, Material = Nut, MaterialWhere = Here, Count = 4 },
    ];

    private static ImmutableArray<StackPlan> Stack
    {
        get
        {
            var items = Items.ToArray();
            return
            [
                Laid(items[0], 1, 25, 0.45), Laid(items[1], 2, 8, 0.80), Laid(items[2], 3, 163, 0.42) with { Pieces = [Piece(344, 344, 45, 1, 0)] },
                new StackPlan
                {
                    Item = items[3], Number = 0, NetArea = Known(M2(0.0096)), CutArea = Known(M2(0.0096)), NetMass = Known(G(3.6)), CutMass = Known(G(3.6)),
                    NetResin = Known(G(5.76)), CutResin = Known(G(5.76)), Pieces = [Piece(120, 80, 0, 1, 0)],
                },
                Laid(items[4], 4, 105, 0.42),
                new StackPlan
                {
                    Item = items[5], Number = 5, NetArea = Known(M2(0.0048)), CutArea = Known(M2(0.0048)), NetMass = Known(G(0.96)), CutMass = Known(G(0.96)),
                    NetResin = Known(G(0.79)), CutResin = Known(G(0.79)), Content = Known(new Content(ContentBasis.ResinByWeight, 0.45)), Thickness = Known(Mm(0.2)), WetOut = Known(Min(1)), Pieces = [Piece(60, 40, 0, 2, 0)],
                },
                new StackPlan { Item = items[6], Number = 0, NetMass = Known(G(8.4)), CutMass = Known(G(8.4)) },
            ];
        }
    }

    private static ImmutableArray<TakeoffLine> Takeoff
    {
        get
        {
            var m2 = UnitTable.Get("m2");
            var kg = UnitTable.Get("kg");
            var g = UnitTable.Get("g");
            var m = UnitTable.Get("m");
            return
            [
                Line(TakeoffGroup.Reinforcement, Outer, Outer.Label, Cut, 0.15, m2, 3.20m),
                Line(TakeoffGroup.Reinforcement, Veil, Veil.Label, Cut, 0.15, m2, 4.10m),
                Line(TakeoffGroup.Reinforcement, Body, Body.Label, Cut, 0.30, m2, 6.40m, 12, "default.waste-bias"),
                Line(TakeoffGroup.Reinforcement, Inner, Inner.Label, Cut, 0.15, m2, 5.10m),
                Line(TakeoffGroup.Reinforcement, TapeCloth, TapeCloth.Label, 0.0048, 0.10, m2, null),
                Line(TakeoffGroup.Core, Foam, Foam.Label, 0.0096, 0.10, m2, 21m),
                Line(TakeoffGroup.Resin, Epoxy, "Slow laminating epoxy, resin", 0.04475, 0, kg, 28m, 1.8, "default.bag-loss"),
                Line(TakeoffGroup.Resin, Epoxy, "Slow laminating epoxy, hardener", 0.01343, 0, kg, 41m, 0.6, "default.bag-loss"),
                Line(TakeoffGroup.Coat, White, White.Label, 0.02271, 0.2, g, null),
                Line(TakeoffGroup.Insert, Nut, Nut.Label, 4, 0, null, 0.22m, 3),
                Line(TakeoffGroup.Bag, PeelPly, PeelPly.Label, 0.126, 0.1, m2, 3.9m),
                Line(TakeoffGroup.Bag, Film, Film.Label, 0.133, 0.1, m2, 2.2m),
                Line(TakeoffGroup.Bag, Breather, Breather.Label, 0.296, 0.1, m2, 2.6m),
                Line(TakeoffGroup.Bag, BagFilm, BagFilm.Label, 0.255, 0.1, m2, 1.7m),
                Line(TakeoffGroup.Bag, SealantTape, SealantTape.Label, 2.14, 0.1, m, 0.55m),
                Line(TakeoffGroup.Release, Wax, Wax.Label, 0, 0, g, null),
            ];
        }
    }

    private static PlyItem Ply(string name, Reinforcement cloth, Orientation orientation) =>
        new() { Name = name, Where = Here, NameWhere = Here, Material = cloth, MaterialWhere = Here, Orientation = Stated(orientation, orientation.ToString()) };

    private static StackPlan Laid(StackItem item, int number, double gsm, double share) => new()
    {
        Item = item,
        Number = number,
        NetArea = Known(M2(Net)),
        CutArea = Known(M2(Cut)),
        NetMass = Known(G(gsm * Net)),
        CutMass = Known(G(gsm * Cut)),
        Content = Known(new Content(ContentBasis.ResinByWeight, share)),
        NetResin = Known(G(gsm * Net * share / (1 - share))),
        CutResin = Known(G(gsm * Cut * share / (1 - share))),
        Thickness = Known(Mm(0.0012 * gsm)),
        WetOut = Known(Min(4)),
        Pieces = [Piece(344, 344, 0, 1, 0)],
    };

    private static PiecePlan Piece(double length, double width, double angle, int count, int joins) =>
        new(Mm(length), Mm(width), count, angle, Mm(width), Mm(length), Length.FromMeters(1), joins, false);

    private static PotPlan Pot(int number, double grams, double from, double to, ImmutableArray<string> plies) => new()
    {
        Number = number,
        Mass = On(G(grams), "default.bag-loss"),
        Resin = On(G(grams * 100 / 130), "default.bag-loss"),
        Hardener = On(G(grams * 30 / 130), "default.bag-loss"),
        HardenerTolerance = G(0.13),
        For = plies,
        MixedAt = Known(Min(from)),
        UsedUpAt = Known(Min(to)),
        PotLife = On(Min(73.9), "default.pot-life-slope"),
        DeadAt = On(Min(from + 73.9), "default.pot-life-slope"),
    };

    private static BagLayerPlan Layer(BagLayer layer, double length, double width, int sheets, double? pickup) => new(
        layer,
        Known(Mm(length)),
        Known(Mm(width)),
        sheets,
        Known(M2(length * width * sheets / 1e6)),
        pickup is { } grams ? Known(G(grams)) : null)
    {
        WetArea = M2(length * width * sheets / 1e6),
    };

    private static TakeoffLine Line(TakeoffGroup group, Material material, string label, double net, double waste, Unit? unit, decimal? price, double? stock = null, params ImmutableArray<string> rests)
    {
        var gross = net * (1 + waste);
        var per = unit is null ? null : unit.Symbol == "g" ? UnitTable.Get("kg") : unit;
        return new TakeoffLine
        {
            Group = group,
            Material = material,
            Label = label,
            Net = On(new Amount(net, unit), rests),
            Waste = On(waste, rests),
            Gross = On(new Amount(gross, unit), rests),
            InStock = stock is { } shelf ? new Amount(shelf, unit) : null,
            ToBuy = stock is { } have ? new Amount(Math.Max(0, gross - have), unit) : null,
            Price = price is { } amount ? new Price(amount, "EUR", per, new DateOnly(2026, 4, 1)) : null,
            Cost = price is { } each ? decimal.Round((decimal)gross * each, 2) : null,
        };
    }
}
