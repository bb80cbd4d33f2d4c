using Recipe.Model;

namespace Recipe.TestKit.Models;

/// <summary>Materials made by hand, after the generic entries of the shipped book. Figures invented for tests unless they name a source.</summary>
public static class Stuffs
{
    public static Fibre Glass { get; } = new() { Name = "e-glass", Keyword = "fibre", Where = Fig.Somewhere, FromBook = true, Density = Fig.Density("2550 kg/m3").FromBook() };

    public static Fibre Carbon { get; } = new()
    {
        Name = "standard-carbon",
        Keyword = "fibre",
        Where = Fig.Somewhere,
        FromBook = true,
        Density = Fig.Density("1780 kg/m3").FromBook(),
    };

    /// <summary>A woven cloth; no content of its own, so defaults show.</summary>
    public static Reinforcement Cloth(string name, string weight, Fibre? fibre = null, string? width = "100 cm") => new()
    {
        Name = name,
        Keyword = "fabric",
        Where = Fig.Somewhere,
        Form = ReinforcementForm.Fabric,
        Fibre = fibre ?? Glass,
        ArealWeight = Fig.ArealWeight(weight),
        Width = width is null ? null : Fig.Length(width),
    };

    /// <summary>A cloth as the book has it: contents marked as from memory.</summary>
    public static Reinforcement BookCloth(string name, string weight) => Cloth(name, weight) with
    {
        FromBook = true,
        HandContent = Fig.Resin(50).FromBook("FAA AC 43.13-1B p. 3-3"),
        BaggedContent = Fig.Resin(42).Assumed(),
        InfusedContent = Fig.Resin(33).Assumed(),
        WetOutPace = Fig.Pace("5 min/m2").Assumed(),
    };

    /// <summary>Strands stitched at +/-45 to the roll.</summary>
    public static Reinforcement Biax(string name, string weight) =>
        Cloth(name, weight) with { Weave = "stitched", FibreAngles = Fig.Pair(45, -45) };

    public static Reinforcement Veil(string name, string weight) =>
        Cloth(name, weight, Carbon) with { Keyword = "veil", Form = ReinforcementForm.Veil };

    public static Reinforcement Mat(string name, string weight) => Cloth(name, weight) with { Keyword = "mat", Form = ReinforcementForm.Mat };

    /// <summary>A one-hour epoxy: an hour in 100 g at 23 degC.</summary>
    public static ResinSystem Epoxy { get; } = new()
    {
        Name = "slow-laminating-epoxy",
        Keyword = "resin",
        Where = Fig.Somewhere,
        Role = ResinRole.Laminating,
        Chemistry = Chemistry.Epoxy,
        Mix = Fig.Stated(new MixRatio(100, 30, MixBasis.Weight), "100:30 by weight"),
        ResinDensity = Fig.Density("1130 kg/m3"),
        HardenerDensity = Fig.Density("980 kg/m3"),
        CuredDensity = Fig.Density("1150 kg/m3"),
        PotLife = Fig.TimeAt("60 min", 23, "100 g"),
    };

    public static Core Foam { get; } = new()
    {
        Name = "pvc-foam-75",
        Keyword = "core",
        Where = Fig.Somewhere,
        FromBook = true,
        Density = Fig.Density("75 kg/m3").FromBook(),
        Thickness = Fig.Length("5 mm").FromBook(),
        SheetLength = Fig.Length("1200 mm").FromBook(),
        SheetWidth = Fig.Length("800 mm").FromBook(),
        ResinUptake = Fig.ArealWeight("250 g/m2").Assumed(),
        HeatLimit = Fig.Celsius(70).Assumed(),
    };

    public static Insert Nut { get; } = new() { Name = "m5-nut", Keyword = "insert", Where = Fig.Somewhere, Mass = Fig.Mass("1.2 g"), HeatLimit = Fig.Celsius(200) };

    public static ReleaseAgent Wax { get; } = new()
    {
        Name = "carnauba-wax",
        Keyword = "release-agent",
        Where = Fig.Somewhere,
        FromBook = true,
        Kind = ReleaseKind.Wax,
        HeatLimit = Fig.Celsius(120).Assumed(),
        CoveragePerLitre = Fig.Stated(40.0, "40 m2/L"),
    };

    public static MouldMaterial Tooling { get; } = new()
    {
        Name = "epoxy-glass-tooling",
        Keyword = "mould-material",
        Where = Fig.Somewhere,
        FromBook = true,
        HeatLimit = Fig.Celsius(60).Assumed(),
    };

    public static Consumable PeelPly { get; } = Sheet("nylon-peel-ply-85", "peel-ply", LayerClass.PeelPly, 150) with
    {
        ResinPickup = Fig.ArealWeight("40 g/m2").FromBook("common practice: 30 to 60 g/m2"),
    };

    public static Consumable PerforatedFilm { get; } = Sheet("perforated-film", "release-film", LayerClass.ReleaseFilm, 110) with
    {
        Perforation = Fig.Stated(Perforation.PinPrick, "pin-prick").FromBook(),
        Bleed = Fig.ArealWeight("25 g/m2").Assumed(),
    };

    public static Consumable SolidFilm { get; } = Sheet("solid-film", "release-film", LayerClass.ReleaseFilm, 110) with
    {
        Perforation = Fig.Stated(Perforation.None, "none").FromBook(),
    };

    public static Consumable Breather { get; } = Sheet("breather-150", "breather", LayerClass.Breather, 180) with
    {
        ResinPickup = Fig.ArealWeight("100 g/m2").Assumed(),
        Capacity = Fig.ArealWeight("500 g/m2").Assumed(),
    };

    public static Consumable BagFilm { get; } = Sheet("nylon-bag-film", "bag-film", LayerClass.BagFilm, 120);

    public static Consumable Mesh { get; } = Sheet("flow-mesh", "flow-medium", LayerClass.FlowMedium, 90) with { ResinPickup = Fig.ArealWeight("350 g/m2").Assumed() };

    public static Tape SealantTape { get; } = new()
    {
        Name = "general-sealant-tape",
        Keyword = "sealant-tape",
        Where = Fig.Somewhere,
        FromBook = true,
        Seals = true,
        HeatLimit = Fig.Celsius(120).Assumed(),
        Width = Fig.Length("12 mm").FromBook(),
        RollLength = Fig.Length("15 m").FromBook(),
    };

    public static Fitting Hose { get; } = new()
    {
        Name = "pvc-hose-8",
        Keyword = "hose",
        Where = Fig.Somewhere,
        FromBook = true,
        Kind = FittingKind.Hose,
        HeatLimit = Fig.Celsius(60).Assumed(),
        InnerDiameter = Fig.Length("8 mm").FromBook(),
    };

    /// <summary>A layer that the author named.</summary>
    public static BagLayer Layer(Consumable material, int count = 1) => new()
    {
        Class = material.Class,
        Material = material,
        Where = Fig.Somewhere,
        Count = count,
        Perforation = material.Perforation,
    };

    /// <summary>A layer of which the author named only the class.</summary>
    public static BagLayer ByDefault(Consumable material) => Layer(material) with { ChosenByDefault = true };

    /// <summary>A thing of the bag that is no layer.</summary>
    public static Placed<T> Placed<T>(T material, bool byDefault = false)
        where T : Material => new(material, byDefault, null, Fig.Somewhere);

    private static Consumable Sheet(string name, string keyword, LayerClass layer, double limit) => new()
    {
        Name = name,
        Keyword = keyword,
        Where = Fig.Somewhere,
        FromBook = true,
        Class = layer,
        HeatLimit = Fig.Celsius(limit).Assumed(),
    };
}
