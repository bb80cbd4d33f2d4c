using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <content>Figures that stand in for a material's own.</content>
public static partial class Defaults
{
    private const string OwnContent = "write `resin-content 45 % by weight` in `wet-out`, or give the material a `resin-content`";

    /// <summary>Density of cured epoxy.</summary>
    public static readonly TradeDefault<Density> CuredEpoxy = Cured("epoxy", 1.15, "1.08 to 1.22");

    /// <summary>Density of cured polyester.</summary>
    public static readonly TradeDefault<Density> CuredPolyester = Cured("polyester", 1.20, "1.12 to 1.35");

    /// <summary>Density of cured vinylester.</summary>
    public static readonly TradeDefault<Density> CuredVinylester = Cured("vinylester", 1.14, "1.10 to 1.20");

    /// <summary>Density of cured phenolic.</summary>
    public static readonly TradeDefault<Density> CuredPhenolic = Cured("phenolic", 1.25, "1.2 to 1.3");

    /// <summary>Density of a fibre that is not named, for thickness only: resin and mass never rest on it.</summary>
    public static readonly TradeDefault<Density> FibreDensity = new(
        "default.fibre-density", "density of a fibre that is not named, for thickness", Density.FromGramsPerCubicCentimeter(2.55), "2.55 g/cm3",
        "E-glass, 2.54 to 2.60 g/cm3 (Jang, Advanced Polymer Composites, ASM 1994); carbon is 1.78, aramid 1.44", "give the cloth a `fibre e-glass`");

    private static readonly ImmutableArray<TradeDefault<double>> ClothContents =
    [
        Content("hand", "cloth", MassBand.UsualResin(LayUpProcess.Hand).Usual.DecimalFractions, "50 %", "FAA AC 43.13-1B p. 3-3: equal weights of cloth and resin"),
        Content("bagged", "cloth", MassBand.UsualResin(LayUpProcess.Bagged).Usual.DecimalFractions, "42 %", $"{Memory}: 36 to 48 %"),
        Content("infused", "cloth", MassBand.UsualResin(LayUpProcess.Infused).Usual.DecimalFractions, "33 %", $"{Memory}: 28 to 38 %"),
        Content("prepreg", "cloth", MassBand.UsualResin(LayUpProcess.Prepreg).Usual.DecimalFractions, "35 %", $"{Memory}: 32 to 38 %"),
    ];

    private static readonly ImmutableArray<TradeDefault<double>> MatContents =
    [
        Content("hand", "mat", 0.70, "70 %", $"{Common}: 65 to 75 %, resin two and a half times the mat"),
        Content("bagged", "mat", 0.60, "60 %", Memory),
        Content("infused", "mat", 0.55, "55 %", Memory),
        Content("prepreg", "mat", 0.55, "55 %", Memory),
    ];

    private static readonly ImmutableArray<TradeDefault<double>> VeilContents =
    [
        Content("hand", "veil", 0.85, "85 %", $"{Memory}: 80 to 90 %"),
        Content("bagged", "veil", 0.85, "85 %", $"{Memory}: 80 to 90 %"),
        Content("infused", "veil", 0.85, "85 %", $"{Memory}: 80 to 90 %"),
        Content("prepreg", "veil", 0.85, "85 %", $"{Memory}: 80 to 90 %"),
    ];

    private static readonly ImmutableArray<TradeDefault<double>> DriestContents =
    [
        Driest("cloth", 0.32, "32 %", $"{Memory}: open bleed under full vacuum leaves 32 to 42 %"),
        Driest("mat", 0.50, "50 %", Memory),
        Driest("veil", 0.75, "75 %", Memory),
    ];

    // --- What the bag takes -------------------------------------------------------------------------------------------

    /// <summary>Pick-up of peel ply.</summary>
    public static readonly TradeDefault<AreaDensity> PeelPlyPickup = Pickup("peel-ply", "peel ply", 40, $"{Common}: 30 to 60 g/m2");

    /// <summary>Pick-up of a bleeder.</summary>
    public static readonly TradeDefault<AreaDensity> BleederPickup = Pickup("bleeder", "a bleeder", 150, $"{Memory}: 120 to 200 g/m2 soaked");

    /// <summary>Pick-up of a breather.</summary>
    public static readonly TradeDefault<AreaDensity> BreatherPickup = Pickup("breather", "a breather that resin can reach", 100, $"{Memory}: 50 to 200 g/m2");

    /// <summary>Pick-up of a flow medium.</summary>
    public static readonly TradeDefault<AreaDensity> FlowMediumPickup = Pickup("flow-medium", "a flow medium", 350, $"{Memory}: 250 to 500 g/m2 with its peel ply");

    /// <summary>How open a release film is that does not say.</summary>
    public static readonly TradeDefault<Perforation> FilmPerforation = new(
        "default.film-perforation", "how open a release film is", Perforation.PinPrick, "pin-prick", Memory, "write `release-film perforated` or `release-film solid`, or name the film");

    private static readonly ImmutableArray<TradeDefault<AreaDensity>> FilmBleeds =
    [
        Bleed("pin-prick", 25, "10 to 40"),
        Bleed("medium", 80, "40 to 120"),
        Bleed("open", 200, "120 to 300"),
    ];

    /// <summary>What a bag takes from a prepreg.</summary>
    public static readonly TradeDefault<string> PrepregBleed = new(
        "default.prepreg-bleed", "resin that the bag takes from a prepreg", "none", "none",
        $"{Common}: out-of-autoclave prepregs are made to keep their resin", "give the ply its own `resin-content 36 % by weight`, as it is after the cure");

    // --- Sizes of the bag ---------------------------------------------------------------------------------------------

    /// <summary>How far a layer runs past the plies, and laps over itself round a tube.</summary>
    public static readonly TradeDefault<Length> LayerBeyond = new(
        "default.layer-beyond", "peel ply, film and felt run past the plies, and lap round a tube, by", Length.FromMillimeters(25), "25 mm", Common, "write `beyond 15 mm` on the layer");

    /// <summary>Film beyond the part.</summary>
    public static readonly TradeDefault<Length> FilmEdge = new(
        "default.film-edge", "bag film runs past the trim line on each side by", BagRule.FilmEdge, "75 mm", Common, "write `beyond 60 mm` on the bag film, which is counted from the edge of the plies");

    /// <summary>Film for a shaped part.</summary>
    public static readonly TradeDefault<double> FilmFactor = new(
        "default.film-factor", "bag film for a shaped part over its string length", BagRule.ShapedFactor, "1.2", $"{Common}: 1.15 to 1.25 in each direction; TM: never stretched to bursting",
        "measure with a string and cut the film by that");

    /// <summary>Distance of the tape line.</summary>
    public static readonly TradeDefault<Length> TapeOffset = new(
        "default.tape-offset", "the tape lies outside the rim by", BagRule.TapeOffset, "50 mm", Common, "measure the tape line on the mould");

    /// <summary>Pleats.</summary>
    public static readonly TradeDefault<int> Pleats = new(
        "default.pleats", "pleats in the bag of a shaped part, each as high as the mould is deep", BagRule.Pleats, "4", $"{Common}: one at each inside corner and end", "write `pleats 4` in the bag");

    /// <summary>Spare tape.</summary>
    public static readonly TradeDefault<double> TapeSpare = new(
        "default.tape-spare", "tape over and above its line and pleats", BagRule.TapeSpare.DecimalFractions, "5 %", Common, "measure the tape line on the mould");

    /// <summary>Gap under the film before pumping.</summary>
    public static readonly TradeDefault<Length> BagGap = new(
        "default.bag-gap", "mean gap under the film before pumping", Length.FromMillimeters(10), "10 mm", Memory, "time the pump on your bag");

    /// <summary>Length of the hose.</summary>
    public static readonly TradeDefault<Length> HoseLength = new(
        "default.hose-length", "length of the vacuum hose of each bag", Length.FromMeters(3), "3 m", Memory, "give the hose a `length 2 m`");

    /// <summary>Bore of the hose.</summary>
    public static readonly TradeDefault<Length> HoseBore = new(
        "default.hose-bore", "inner diameter of the vacuum hose", Length.FromMillimeters(8), "8 mm", Memory, "give the hose an `inner-diameter 8 mm`");

    /// <summary>Volume of the catch pot.</summary>
    public static readonly TradeDefault<Volume> CatchPot = new(
        "default.catch-pot-volume", "volume of the catch pot", Volume.FromLiters(2), "2 L", Memory, "give the catch pot a `volume 2 L`");

    /// <summary>Ultimate pressure of the pump.</summary>
    public static readonly TradeDefault<Pressure> PumpUltimate = new(
        "default.pump-ultimate", "lowest absolute pressure of the pump", Pressure.FromMillibars(20), "20 mbar", Memory, "write `pump 2.5 cfm ultimate 20 mbar absolute` in the shop");

    // --- Waste --------------------------------------------------------------------------------------------------------

    /// <summary>Waste of straight rectangles.</summary>
    public static readonly TradeDefault<double> WasteStraight = Waste("straight", "cloth cut straight into rectangles", 0.10, Common);

    /// <summary>Waste of shaped pieces.</summary>
    public static readonly TradeDefault<double> WasteShaped = Waste("shaped", "cloth cut into shaped pieces", 0.18, $"{Common}: 15 to 20 %");

    /// <summary>Waste of pieces cut askew.</summary>
    public static readonly TradeDefault<double> WasteBias = Waste("bias", "cloth cut at an angle to the roll", 0.30, $"{Common}: 25 to 35 %");

    /// <summary>Waste of mat and veil.</summary>
    public static readonly TradeDefault<double> WasteMat = Waste("mat", "mat and veil", 0.12, $"{Common}: 10 to 15 %");

    /// <summary>Waste of cores.</summary>
    public static readonly TradeDefault<double> WasteCore = Waste("core", "core sheets", 0.10, Common);

    /// <summary>Waste of consumables.</summary>
    public static readonly TradeDefault<double> WasteConsumable = Waste("consumables", "bag and release materials, coats and adhesives", 0.10, Common);

    /// <summary>Resin content by mass where neither part nor material gives one.</summary>
    public static TradeDefault<double> ResinContent(Process process, ReinforcementForm form) => form switch
    {
        ReinforcementForm.Mat => MatContents[(int)process],
        ReinforcementForm.Veil => VeilContents[(int)process],
        _ => ClothContents[(int)process],
    };

    /// <summary>Resin content by mass below which a bag squeezes no more out.</summary>
    public static TradeDefault<double> DriestContent(ReinforcementForm form) => form switch
    {
        ReinforcementForm.Mat => DriestContents[1],
        ReinforcementForm.Veil => DriestContents[2],
        _ => DriestContents[0],
    };

    /// <summary>Density of cured resin where the system gives none; epoxy where the chemistry is not said.</summary>
    public static TradeDefault<Density> CuredDensity(Chemistry chemistry) => chemistry switch
    {
        Chemistry.Polyester => CuredPolyester,
        Chemistry.Vinylester => CuredVinylester,
        Chemistry.Phenolic => CuredPhenolic,
        _ => CuredEpoxy,
    };

    /// <summary>Resin that a release film lets through where it gives no figure; null for a solid film, which lets none through.</summary>
    public static TradeDefault<AreaDensity>? FilmBleed(Perforation perforation) =>
        perforation == Perforation.None ? null : FilmBleeds[(int)perforation - 1];

    private static TradeDefault<Density> Cured(string chemistry, double value, string range) => new(
        $"default.cured-density.{chemistry}", $"density of cured {chemistry}", Density.FromGramsPerCubicCentimeter(value),
        FormattableString.Invariant($"{value} g/cm3"), $"{Memory}: {range} g/cm3", "give the resin a `density cured 1.15 g/cm3`");

    private static TradeDefault<double> Content(string process, string form, double value, string written, string source) => new(
        $"default.resin-content.{process}.{form}", $"resin in {process} {form}, by weight", value, written, source, OwnContent);

    private static TradeDefault<double> Driest(string form, double value, string written, string source) => new(
        $"default.driest-content.{form}", $"resin by weight below which a bag squeezes no more out of {form}", value, written, source,
        "lay it wetter, or let the bag take less: `release-film solid`, a film with a smaller `bleed`");

    private static TradeDefault<AreaDensity> Pickup(string word, string what, double grams, string source) => new(
        $"default.pickup.{word}", $"resin that {what} carries away", AreaDensity.FromGramsPerSquareMeter(grams),
        FormattableString.Invariant($"{grams} g/m2"), source, "weigh it before and after, and give the material a `resin-pickup 40 g/m2`");

    private static TradeDefault<AreaDensity> Bleed(string word, double grams, string range) => new(
        $"default.film-bleed.{word}", $"resin that a release film with {word} holes lets through", AreaDensity.FromGramsPerSquareMeter(grams),
        FormattableString.Invariant($"{grams} g/m2"), $"{Memory}: {range} g/m2", "give the film a `bleed 40 g/m2`");

    private static TradeDefault<double> Waste(string word, string what, double value, string source) => new(
        $"default.waste.{word}", $"waste of {what}", value, FormattableString.Invariant($"{value * 100:0.###} %"), source,
        "count what is left over; the program has no word for it yet");
}
