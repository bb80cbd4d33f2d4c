using Recipe.Model;
using UnitsNet;

namespace Recipe.TestKit.Models;

/// <summary>Whole recipes made by hand, as the binder would make them. Invented parts of a small boat-and-instrument shop.</summary>
public static class Recipes
{
    /// <summary>A ply.</summary>
    public static PlyItem Ply(string name, Reinforcement cloth, Figure<Orientation>? orientation = null) => new()
    {
        Name = name,
        Where = Fig.Somewhere,
        NameWhere = Fig.Somewhere,
        Material = cloth,
        MaterialWhere = Fig.Somewhere,
        Orientation = orientation ?? Fig.Pair(0, 90),
    };

    /// <summary>Patches of one size.</summary>
    public static PlyItem Patch(string name, Reinforcement cloth, string length, string width, int count) =>
        Ply(name, cloth) with { IsPatch = true, SizeLength = Fig.Length(length), SizeWidth = Fig.Length(width), Count = count };

    /// <summary>A core.</summary>
    public static CoreItem Core(string name, Core sheet, string length, string width) => new()
    {
        Name = name,
        Where = Fig.Somewhere,
        NameWhere = Fig.Somewhere,
        Material = sheet,
        MaterialWhere = Fig.Somewhere,
        Thickness = sheet.Thickness,
        SizeLength = Fig.Length(length),
        SizeWidth = Fig.Length(width),
    };

    /// <summary>Inserts.</summary>
    public static InsertItem Insert(string name, Insert insert, int count) => new()
    {
        Name = name,
        Where = Fig.Somewhere,
        NameWhere = Fig.Somewhere,
        Material = insert,
        MaterialWhere = Fig.Somewhere,
        Count = count,
    };

    /// <summary>A mould of one piece, or in halves.</summary>
    public static Mould Mould(SurfaceShape surface, bool halves = false) => new()
    {
        Name = "the-mould",
        Where = Fig.Somewhere,
        Surface = Fig.Surface(surface),
        Halves = halves ? ["left", "right"] : [],
        Flange = Fig.Length("50 mm"),
        MadeOf = Stuffs.Tooling,
        HeatLimit = Stuffs.Tooling.HeatLimit,
        Release = [new ReleaseCoat(Stuffs.Wax, Fig.Somewhere) { Coats = Fig.Count(5) }],
    };

    /// <summary>Peel ply, perforated film, breather, bag film, tape.</summary>
    public static Bag Bag() => new()
    {
        Where = Fig.Somewhere,
        Layers = [Stuffs.Layer(Stuffs.PeelPly), Stuffs.Layer(Stuffs.PerforatedFilm), Stuffs.Layer(Stuffs.Breather), Stuffs.Layer(Stuffs.BagFilm)],
        SealantTape = Stuffs.Placed(Stuffs.SealantTape),
        Hose = Stuffs.Placed(Stuffs.Hose),
    };

    /// <summary>A part of a process, with the one-hour epoxy.</summary>
    public static Part Part(Process process, Mould? mould, params StackItem[] stack) => new()
    {
        Name = "the-part",
        Where = Fig.Somewhere,
        Mould = mould,
        Process = Fig.Stated(process, "as the blocks say"),
        Resin = Stuffs.Epoxy,
        Stack = [.. stack],
        Bag = process == Process.Hand ? null : Bag(),
    };

    /// <summary>The model around a part.</summary>
    public static RecipeModel Around(Part part, Shop? shop = null) => new()
    {
        Materials = new Dictionary<string, Material>(),
        Parts = [part],
        Shop = shop,
    };

    /// <summary>A shop that says all it can.</summary>
    public static Shop Shop() => new()
    {
        Name = "ours",
        Where = Fig.Somewhere,
        Altitude = Fig.Length("250 m"),
        Room = Fig.Celsius(18),
        RoomHigh = Fig.Celsius(22),
        Night = Fig.Celsius(14),
        Laminators = Fig.Count(1),
        Pump = Fig.Flow("2.5 cfm"),
        PumpUltimate = Fig.Pressure("20 mbar"),
        ScaleResolution = Fig.Mass("0.1 g"),
        Currency = "EUR",
    };

    /// <summary>The hatch lid of the language's manual: a shallow cap, five lines, a core, inserts, bagged, cured warm.</summary>
    public static RecipeModel HatchLid()
    {
        var stack = new StackItem[]
        {
            Ply("outer", Stuffs.BookCloth("glass-plain-25", "25 g/m2")),
            Ply("veil", Stuffs.Veil("carbon-veil-8", "8 g/m2"), Fig.Random()),
            Ply("body", Stuffs.BookCloth("glass-twill-163", "163 g/m2"), Fig.Pair(45, -45)) with { Overlap = Fig.Length("15 mm") },
            Core("stiff", Stuffs.Foam, "120 mm", "80 mm"),
            Ply("inner", Stuffs.BookCloth("glass-plain-105", "105 g/m2")),
            Patch("hinge", Stuffs.BookCloth("glass-tape-200", "200 g/m2"), "60 mm", "40 mm", 2),
            Insert("boss", Stuffs.Nut, 4),
        };
        var part = Part(Process.Bagged, Mould(new SphericalCapShape(Millimetres(300), Millimetres(40))), stack) with
        {
            Name = "hatch-lid",
            Title = "Kayak hatch lid",
            WetOut = new WetOut { Where = Fig.Somewhere, Room = Fig.Celsius(20), Laminators = Fig.Count(1), Content = Fig.Resin(45) },
            Vacuum = new VacuumPlan
            {
                Where = Fig.Somewhere,
                Draw = Fig.Vacuum("25 inHg", VacuumConvention.BelowAmbient),
                Within = Fig.Time("10 min"),
                LeakCheck = new LeakCheck(Fig.Time("5 min"), Fig.Pressure("30 mbar"), true, Fig.Somewhere),
            },
            Cure = WarmCure(),
        };
        return Around(part, Shop());
    }

    /// <summary>Overnight in the room under vacuum, then up to 50 degC, cooled, vented, demoulded.</summary>
    public static Cure WarmCure() => new()
    {
        Where = Fig.Somewhere,
        Steps =
        [
            Step(CureAction.Hold) with { AtRoom = true, Duration = Fig.Time("12 h"), UnderVacuum = true },
            Step(CureAction.Ramp) with { Temperature = Fig.Celsius(50), Rate = Fig.Rate("0.5 degC/min"), UnderVacuum = true },
            Step(CureAction.Hold) with { Temperature = Fig.Celsius(50), Duration = Fig.Time("6 h") },
            Step(CureAction.Cool) with { Temperature = Fig.Celsius(30) },
            Step(CureAction.Vent),
            Step(CureAction.Demould),
            Step(CureAction.Ramp) with { Temperature = Fig.Celsius(65), Rate = Fig.Rate("10 degC/h"), Support = "cradle" },
        ],
    };

    /// <summary>A step of a cure.</summary>
    public static CureStep Step(CureAction action) => new() { Action = action, Where = Fig.Somewhere };

    /// <summary>So many millimetres.</summary>
    public static Length Millimetres(double value) => Length.FromMillimeters(value);
}
