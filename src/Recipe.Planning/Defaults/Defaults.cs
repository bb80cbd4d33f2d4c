using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// The one table of the program's own figures: what is taken when the recipe, the shop and the material say nothing. Each one used
/// is listed in <see cref="Plan.Assumptions"/>. Where Recipe.Engineering holds the same rule of thumb, the value is read from there.
/// </summary>
/// <remarks>
/// Sources: TM = US Army TM 1-1500-204-23-11, AC = FAA AC 43.13-1B. "From memory of the trade" is a figure nobody looked up:
/// the maker's data sheet or the shop's own weighing wins.
/// </remarks>
public static partial class Defaults
{
    private const string Common = "common practice";
    private const string Memory = "from memory of the trade";

    // Properties, since the order in which the fields of two files are filled is nobody's promise.
    private static WorkPace Hands => WorkPace.Experienced;

    private static BagAllowances BagRule => new();

    // --- Conditions ---------------------------------------------------------------------------------------------------

    /// <summary>Room temperature.</summary>
    public static readonly TradeDefault<Temperature> Room = new(
        "default.room-temperature", "room temperature at lay-up", Temperature.FromDegreesCelsius(20), "20 degC",
        $"{Common}: 18 to 25 degC", "write `room 20 degC` in the shop or in `wet-out`");

    /// <summary>The resin is as warm as the room.</summary>
    public static readonly TradeDefault<string> ResinTemperature = new(
        "default.resin-temperature", "temperature of the resin when mixed", "room", "that of the room",
        $"{Common}: resin, mould and room within 3 degC", "write `resin-temperature 20 degC` in `wet-out`");

    /// <summary>Pairs of hands.</summary>
    public static readonly TradeDefault<int> Laminators = new(
        "default.laminators", "pairs of hands", 1, "1", $"{Common}: a small part is laid by one", "write `laminators 2` in the shop or in `wet-out`");

    /// <summary>Height above sea level.</summary>
    public static readonly TradeDefault<Length> Altitude = new(
        "default.altitude", "height of the shop above sea level", Length.Zero, "0 m",
        "ISO 2533 starts at sea level", "write `altitude 250 m` in the shop");

    // --- Shape and pieces ---------------------------------------------------------------------------------------------

    /// <summary>Proportions of a surface that is given by its area.</summary>
    public static readonly TradeDefault<string> GivenAreaShape = new(
        "default.given-area-shape", "sizes that go with a surface given by its area", "square", "a square, or the rectangle of the given length or width; 0 mm deep",
        "arithmetic", "write `surface area 0.4 m2 length 800 mm width 500 mm depth 60 mm`");

    /// <summary>Shape of a ply that covers only part of the surface.</summary>
    public static readonly TradeDefault<string> CoversShape = new(
        "default.covers-shape", "shape of a ply that covers part of the surface", "similar", "that of the whole surface, made smaller",
        "arithmetic", "give the ply a `size 300 mm x 200 mm`");

    /// <summary>How far plies run past the trim line.</summary>
    public static readonly TradeDefault<Length> Trim = new(
        "default.trim-allowance", "plies run past the trim line by", Length.FromMillimeters(15), "15 mm",
        $"{Common}: 10 to 25 mm", "write `trim 15 mm` in the part");

    /// <summary>Overlap where two pieces of one ply meet.</summary>
    public static readonly TradeDefault<Length> Overlap = new(
        "default.overlap", "overlap where two pieces of one ply meet", Length.FromMillimeters(20), "20 mm",
        $"{Common}: 13 to 25 mm for light woven cloth, 50 mm under load", "write `overlap 20 mm` in the part or on the ply");

    /// <summary>Distance of pieces on the roll.</summary>
    public static readonly TradeDefault<Length> NestGap = new(
        "default.nest-gap", "least distance of two pieces on the roll", Length.FromMillimeters(5), "5 mm",
        $"{Memory}: room for shears and for what frays", "the program has no word for it yet");

    /// <summary>Shear at which a woven cloth begins to wrinkle.</summary>
    public static readonly TradeDefault<Angle> LockingAngle = new(
        "default.locking-angle", "shear that wrinkles a woven cloth", Angle.FromDegrees(40), "40 deg",
        $"{Memory}: published 40 to 60 deg for plain and twill glass", "write `locking-angle 45 deg` in the cloth; pull a strip of it askew and measure");

    /// <summary>Where woven cloth is laid down first.</summary>
    public static readonly TradeDefault<string> DrapeStart = new(
        "default.drape-start", "where woven cloth is laid down first", "middle", "the middle of the surface, 0 degrees along x (along y on a surface that faces x)",
        $"{Common}: from the middle outwards", "write `drape at-x 0 mm at-y 0 mm along x` in the part");

    /// <summary>Angle between two faces that makes the edge between them sharp.</summary>
    public static readonly TradeDefault<Angle> SharpEdge = new(
        "default.sharp-edge", "angle of two faces that bounds a patch", Angle.FromDegrees(30), "30 deg",
        "our own choice: facets of a fine mesh meet at a few degrees", "write `edge 30 deg` behind `region patch`");

    /// <summary>How a ply lies that says nothing.</summary>
    public static readonly TradeDefault<Orientation> Orientation = new(
        "default.orientation", "orientation of a ply that gives none", new Orientation(OrientationKind.Pair, 0, 90), "0/90",
        $"{Common}: straight from the roll", "write the orientation behind the cloth: `0/90`, `+/-45`, `0`, `random`");

    // --- Resin in the laminate ----------------------------------------------------------------------------------------

    /// <summary>Resin that each face of a core drinks.</summary>
    public static readonly TradeDefault<AreaDensity> CoreUptake = new(
        "default.core-uptake", "resin that each face of a core drinks", AreaDensity.FromGramsPerSquareMeter(300), "300 g/m2",
        $"{Memory}: 200 to 400 g/m2 by hand, 100 to 250 g/m2 infused", "give the core a `resin-uptake 300 g/m2`");

    /// <summary>Poisson's ratio of a core in its plane.</summary>
    public static readonly TradeDefault<double> CorePoisson = new(
        "default.core-poisson", "Poisson's ratio of a core", 0.3, "0.3", $"{Memory}: foams 0.25 to 0.4; it hardly matters beside the faces",
        "the program has no word for it yet");

    /// <summary>Temperature at which a stack has no stress in it.</summary>
    public static readonly TradeDefault<string> StressFree = new(
        "default.stress-free-temperature", "temperature at which the stack is free of stress", "hottest hold in the mould", "that of the hottest hold in the mould",
        $"{Common}: what cures at one temperature is taken as flat there; shrinkage and creep shift it",
        "lay a flat offcut of the stack on a table and measure its rise; the program has no word for it yet");

    /// <summary>Gel coat on the mould.</summary>
    public static readonly TradeDefault<AreaDensity> GelCoatFilm = new(
        "default.gel-coat-film", "gel coat on the mould, wet", AreaDensity.FromGramsPerSquareMeter(500), "500 g/m2",
        $"{Common}: 400 to 600 g/m2", "write `coat my-gel-coat 500 g/m2` in the part");

    /// <summary>Surface coat on the mould.</summary>
    public static readonly TradeDefault<AreaDensity> SurfaceCoatFilm = new(
        "default.surface-coat-film", "surface coat on the mould, wet", AreaDensity.FromGramsPerSquareMeter(300), "300 g/m2",
        Memory, "write `coat my-coat 300 g/m2` in the part");

    // --- Working pace -------------------------------------------------------------------------------------------------

    /// <summary>Wetting out.</summary>
    public static readonly TradeDefault<Duration> WetOutPace = new(
        "default.wet-out-pace", "time to wet out a square metre of one ply", Hands.WetOutPerSquareMetrePly, "4 min",
        $"{Memory}: 3 to 5 min experienced, 8 to 15 min a beginner", "write `pace 4 min/m2` in the shop or in `wet-out`");

    /// <summary>How much slower a hollow or double curve is.</summary>
    public static readonly TradeDefault<double> CurvatureFactor = new(
        "default.curvature-factor", "how many times slower a double curve is to wet out", Hands.DoubleCurvatureFactor, "1.75",
        $"{Common}: 1.5 to 2 experienced, 2 to 3 a beginner", "write the part's own `pace 7 min/m2` in `wet-out`");

    /// <summary>Picking up and lining up one piece.</summary>
    public static readonly TradeDefault<Duration> PieceHandling = new(
        "default.piece-handling", "time to pick up, place and line up one piece", Hands.HandlingPerPly, "2 min",
        $"{Memory}: 2 min experienced, 5 min a beginner", "time it, and plan the difference into `pace`");

    /// <summary>Mixing one pot.</summary>
    public static readonly TradeDefault<Duration> Mixing = new(
        "default.mixing", "time to weigh out and mix one pot", Hands.MixingPerPot, "3 min",
        $"{Common}: 3 to 5 min", "write `mixing 3 min` in `wet-out`");

    /// <summary>Brushing a coat.</summary>
    public static readonly TradeDefault<Duration> CoatPace = new(
        "default.coat-pace", "time to brush a square metre of coat", Duration.FromMinutes(8), "8 min", Memory, "time it; the program has no word for it yet");

    /// <summary>Working along a seam.</summary>
    public static readonly TradeDefault<Duration> SeamPace = new(
        "default.seam-pace", "time to fill, tape and wet out a metre of seam", Duration.FromMinutes(10), "10 min", Memory, "time it; the program has no word for it yet");

    /// <summary>Placing peel ply.</summary>
    public static readonly TradeDefault<Duration> PeelPlyPace = new(
        "default.peel-ply-pace", "time to place and smooth a square metre of peel ply", Hands.PeelPlyPerSquareMetre, "2.5 min",
        $"{Common}: 2 to 3 min flat, 6 to 10 min shaped", "write `time 15 min` in the bag");

    /// <summary>Placing any other layer.</summary>
    public static readonly TradeDefault<Duration> LayerPace = new(
        "default.layer-pace", "time to place a square metre of film or felt", Hands.LayerPerSquareMetre, "2 min",
        Common, "write `time 15 min` in the bag");

    /// <summary>Closing the bag.</summary>
    public static readonly TradeDefault<Duration> ClosingPace = new(
        "default.closing-pace", "time to close a metre of bag on tape that is already down", Hands.ClosingPerMetre, "1.75 min",
        $"{Common}: 1.5 to 2 min experienced, 4 to 6 min a beginner", "write `time 15 min` in the bag");

    /// <summary>Finding leaks.</summary>
    public static readonly TradeDefault<Duration> LeakHunt = new(
        "default.leak-hunt", "time to find and close leaks", Hands.LeakHunt, "8 min",
        $"{Common}: 5 to 10 min experienced, 30 min and more a beginner", "write `draw ... within 10 min` in `vacuum`");

    // --- Losses and pots ----------------------------------------------------------------------------------------------

    /// <summary>Resin on brush and roller.</summary>
    public static readonly TradeDefault<Mass> ToolLoss = new(
        "default.tool-loss", "resin left on brush and roller for each pair of hands, but no more than the plies themselves hold",
        Mass.FromGrams(30), "30 g",
        $"{Memory}: 30 to 60 g with a roller; the bound is for small parts, done with a small brush", "write `loss 10 g` in the shop or in `wet-out`");

    /// <summary>What stays on the brush of a coat or a seam.</summary>
    public static readonly TradeDefault<Mass> BrushLoss = new(
        "default.brush-loss", "left on the brush of a coat or a seam, but no more than is laid", Mass.FromGrams(5), "5 g",
        $"{Memory}: 5 to 10 g", "weigh the brush; the program has no word for it yet");

    /// <summary>Resin left in the pots.</summary>
    public static readonly TradeDefault<double> PotLoss = new(
        "default.pot-loss", "share of what is mixed that stays in the pots", 0.03, "3 %", Memory, "write `loss 10 g` in the shop or in `wet-out`");

    /// <summary>Spare.</summary>
    public static readonly TradeDefault<double> Spare = new(
        "default.spare", "spare resin on top of the need", 0.10, "10 %", Common, "write `spare 10 %` in `wet-out`");

    /// <summary>Resin left in the feed pot of an infusion.</summary>
    public static readonly TradeDefault<double> FeedReserve = new(
        "default.feed-reserve", "share of the need kept in the feed pot so that no air is drawn in", 0.20, "20 %", Common, "write `reserve 20 %` in `infuse`");

    /// <summary>What an infusion loses besides its reserve.</summary>
    public static readonly TradeDefault<Mass> FeedLoss = new(
        "default.feed-loss", "left on pot and stick of an infusion over its reserve; the `loss` of a shop is one of brush and roller, and an infusion has neither",
        Mass.Zero, "0 g", $"{Common}: the reserve in the feed pot covers it", "write `loss 5 g` in `wet-out` of the part");

    /// <summary>Bore of the lines of an infusion.</summary>
    public static readonly TradeDefault<Length> LineBore = new(
        "default.line-bore", "inner diameter of the feed line, of which the bag names no hose", Length.FromMillimeters(12), "12 mm", Memory, "write `feed-line length 400 mm diameter 12 mm` in `infuse`, or name the hose in the bag");

    /// <summary>Length of the feed line.</summary>
    public static readonly TradeDefault<string> FeedLine = new(
        "default.feed-line", "length of the feed line", "part", "the length of the part", "arithmetic", "write `feed-line length 400 mm` in `infuse`");

    /// <summary>Feed lines of a half.</summary>
    public static readonly TradeDefault<int> FeedLines = new(
        "default.feed-lines", "feed lines of each half, which has a bag, port, vent and gauge of its own", 1, "1", Common,
        "write `feed-lines 2` in `infuse`: so many for each half");

    /// <summary>Largest pot in a cup.</summary>
    public static readonly TradeDefault<Mass> LargestPot = new(
        "default.largest-pot", "largest mass to mix at once in a cup", Mass.FromGrams(150), "150 g",
        $"{Common}: data sheets measure pot life in 100 to 150 g", "give the resin a `largest-pot 150 g`");

    /// <summary>Largest pot in a shallow tray.</summary>
    public static readonly TradeDefault<Mass> LargestTray = new(
        "default.largest-tray", "largest mass to mix at once in a shallow tray", Mass.FromGrams(500), "500 g", Memory, "give the resin a `largest-pot 500 g`");

    /// <summary>Largest feed pot of an infusion.</summary>
    public static readonly TradeDefault<Mass> LargestFeedPot = new(
        "default.largest-feed-pot", "largest feed pot of an infusion", Mass.FromKilograms(1), "1 kg",
        $"{Common}: no more than 1 kg with a pot life under an hour", "give the resin a `largest-pot 1 kg`");

    /// <summary>Mass in which a pot life was measured.</summary>
    public static readonly TradeDefault<Mass> PotLifeMass = new(
        "default.pot-life-mass", "mass in which the data sheet's pot life was measured", Mass.FromGrams(100), "100 g",
        $"{Common}; ASTM D2471 wants the amount stated", "write `pot-life 60 min at 23 degC in 100 g`");

    /// <summary>Share of the pot life that is planned.</summary>
    public static readonly TradeDefault<double> PotLifeShare = new(
        "default.pot-life-share", "share of the pot life that a planned pot may use", 0.75, "75 %", $"{Common}: the last quarter is thick", "plan the pots yourself: `pot 100 g`");

    /// <summary>How far the part may be from the room's temperature.</summary>
    public static readonly TradeDefault<TemperatureDelta> RoomBand = new(
        "default.room-band", "resin on the part may be warmer or colder than the room by", TemperatureDelta.FromKelvins(2), "2 degC", Common, "read the temperature of the mould beside the part");

    /// <summary>How far two tins of one resin may differ in their times.</summary>
    public static readonly TradeDefault<double> SheetTimeScatter = new(
        "default.sheet-time-scatter", "a tin may go off sooner or later than its sheet by", 0.15, "15 %", Memory, "time a cup of each new tin");

    // --- Infusion -----------------------------------------------------------------------------------------------------

    /// <summary>Permeability of woven cloth and of cloth with all fibres one way.</summary>
    public static readonly TradeDefault<Area> ClothPermeability = new(
        "default.permeability.cloth", "permeability of cloth under the bag", Area.FromSquareMeters(1e-10), "1e-10 m2",
        $"{Memory}: woven glass at half fibre by volume 2e-11 to 3e-10 m2", "time a strip of your own stack and give the cloth a `permeability 1e-10 m2`");

    /// <summary>Permeability of stitched cloth.</summary>
    public static readonly TradeDefault<Area> StitchedPermeability = new(
        "default.permeability.stitched", "permeability of stitched cloth under the bag", Area.FromSquareMeters(1e-10), "1e-10 m2",
        $"{Memory}: stitched biaxial glass at half fibre by volume about 1e-10 m2", "time a strip of your own stack and give the cloth a `permeability 1e-10 m2`");

    /// <summary>Permeability of mat and veil.</summary>
    public static readonly TradeDefault<Area> MatPermeability = new(
        "default.permeability.mat", "permeability of mat and veil under the bag", Area.FromSquareMeters(1.5e-9), "1.5e-9 m2",
        $"{Memory}: random mat 1e-9 to 2e-9 m2", "time a strip of your own stack and give the mat a `permeability 1.5e-9 m2`");

    /// <summary>Permeability of a flow medium.</summary>
    public static readonly TradeDefault<Area> FlowMediumPermeability = new(
        "default.permeability.flow-medium", "permeability of a flow medium", Area.FromSquareMeters(3e-9), "3e-9 m2",
        $"{Memory}: 1e-9 to 1e-8 m2", "give the flow medium a `permeability 5e-9 m2`");

    /// <summary>How much less permeable plies are through their thickness.</summary>
    public static readonly TradeDefault<double> ThroughThickness = new(
        "default.through-thickness", "how many times less permeable the plies are through their thickness than along it", 30, "30",
        $"{Memory}: 10 to 100 times", "time a strip of your own stack with its flow medium");

    /// <summary>Thickness of a flow medium.</summary>
    public static readonly TradeDefault<Length> FlowMediumThickness = new(
        "default.flow-medium-thickness", "thickness of a flow medium", Length.FromMillimeters(1), "1 mm", Memory, "give the flow medium a `thickness 1 mm`");

    /// <summary>How far a permeability that nobody measured may be off.</summary>
    public static readonly TradeDefault<double> PermeabilityScatter = new(
        "default.permeability-scatter", "how many times more or less permeable the stack may be", 3, "3",
        $"{Memory}: laboratories differed by ten times from end to end in the first international comparison (Arbter et al. 2011)", "give cloth and flow medium a `permeability` that you have timed yourself");

    /// <summary>How far a measured permeability may be off.</summary>
    public static readonly TradeDefault<double> OwnPermeabilityScatter = new(
        "default.permeability-scatter.own", "how many times more or less permeable the stack may be than measured", 1.2, "1.2",
        $"{Memory}: about a fifth with one agreed method (Vernet et al. 2014)", "write the fill time of each part down and compare");

    /// <summary>Change of temperature that halves a viscosity.</summary>
    public static readonly TradeDefault<TemperatureDelta> ViscosityHalves = new(
        "default.viscosity-halves", "the viscosity of mixed resin halves when it is warmer by", TemperatureDelta.FromKelvins(10), "10 degC", $"{Memory}: 8 to 12 degC near room temperature",
        "read the viscosity at the temperature of the mould from the data sheet: `viscosity 250 mPa.s at 22 degC`");

    /// <summary>When a viscosity has doubled.</summary>
    public static readonly TradeDefault<string> ViscosityDoubles = new(
        "default.viscosity-doubles", "the viscosity of resin that does not warm itself doubles within", "pot life", "its pot life",
        $"{Memory}: the common definition of pot life", "give the resin the `pot-life` of its data sheet");

    // --- Cure ---------------------------------------------------------------------------------------------------------

    /// <summary>Heating rate.</summary>
    public static readonly TradeDefault<double> RampRate = new(
        "default.ramp-rate", "heating rate of a ramp that gives none", 20.0 / 3600, "20 degC/h",
        $"{Common}: 10 degC/h free-standing, 20 to 30 degC/h in the mould", "write `ramp 0.5 degC/min to 50 degC`");

    /// <summary>Cooling rate.</summary>
    public static readonly TradeDefault<double> CoolRate = new(
        "default.cool-rate", "rate at which a part cools by itself", 0.5 / 60, "0.5 degC/min",
        $"{Memory}; never faster than 3 degC/min", "write `cool to 30 degC at 1 degC/min`");

    /// <summary>Cure of an epoxy whose kinetics nobody gives: 1/s and K, orders 1 and 2.</summary>
    public static readonly (double A1, double E1, double A2, double E2) CureShapeConstants = (7.24e5 / 60, 6014, 3.58e6 / 60, 5773);

    /// <summary>Cure of an epoxy whose kinetics nobody gives.</summary>
    public static readonly TradeDefault<string> CureShape = new(
        "default.cure-shape", "cure of an epoxy that gives no kinetics", "usual", "a usual amine epoxy's, as fast as the gel time says",
        "not measured: form of Kamal and Sourour 1973, orders and energies (50 and 48 kJ/mol) in the range of Barral et al., J. Appl. Polym. Sci. 56 (1995) 1029",
        "give the resin `kinetics kamal-sourour { ... }` from its maker");

    /// <summary>Thickness from which a laminate's own heat is worked out, m.</summary>
    public const double ThickFrom = 0.004;

    /// <summary>Heat of a thick laminate.</summary>
    public static readonly TradeDefault<string> LaminateHeat = new(
        "default.laminate-heat", "a thick laminate and its heat", "still air", "loses 8 W/m2 for each degC through mould and bag; conducts 0.3 W/m for each degC; fibre takes 0.8 J/g for each degC",
        $"{Memory}: still air 5 to 10 W/m2 for each degC; glass laminate", "put a thermocouple into the middle of the first part");

    /// <summary>Glass transition over the degree of cure.</summary>
    public static readonly TradeDefault<string> TransitionCurve = new(
        "default.glass-transition-curve", "glass transition while it cures", "DiBenedetto", "from -35 degC, with constant 0.5, slowed in the glass to meet the data sheet",
        $"DiBenedetto's equation in the form of Pascault and Williams 1990; constants {Memory}", "measure the glass transition of an offcut and write it beside the cure: `glass-transition 55 degC after 20 degC for 24 h`");

    /// <summary>How far the part may be from the temperature of the schedule.</summary>
    public static readonly TradeDefault<TemperatureDelta> PartTemperatureBand = new(
        "default.part-temperature-band", "the part may be warmer or colder than its schedule by", TemperatureDelta.FromKelvins(3), "3 degC", $"{Common}: with a probe on the part; air and mould differ by far more for an hour",
        "put a thermocouple on the part");

    /// <summary>Scatter of a glass transition.</summary>
    public static readonly TradeDefault<TemperatureDelta> TransitionScatter = new(
        "default.glass-transition-scatter", "a glass transition may be found higher or lower by", TemperatureDelta.FromKelvins(5), "5 degC", $"{Memory}: methods and laboratories differ by 5 to 10 degC", "name the method on the data sheet and keep to it");

    /// <summary>Lead of the glass transition that a ramp off the mould should keep, K.</summary>
    public const double LeadToKeep = 5;

    // --- The part's mass ----------------------------------------------------------------------------------------------

    /// <summary>Band of a first part.</summary>
    public static readonly TradeDefault<string> FirstOffBand = new(
        "default.mass-band.first-off", "how far a first part may be off its expected mass", "first-off", "15 % for a bagged laminate",
        $"{Memory}: 15 % first part, 7 % when practised; a practice panel of six plies is allowed 9 % ({Common})",
        "record three builds of the part with their mass");

    /// <summary>Band of a practised part.</summary>
    public static readonly TradeDefault<string> PractisedBand = new(
        "default.mass-band.practised", "how far a practised part may be off its expected mass", "practised", "7 % for a bagged laminate",
        $"{Memory}: 15 % first part, 7 % when practised; a practice panel of six plies is allowed 9 % ({Common})",
        "give the part a `target mass 140 g +/- 10 g` and hold it against that");

    // --- Join ---------------------------------------------------------------------------------------------------------

    /// <summary>Length of the seam of two halves.</summary>
    public static readonly TradeDefault<string> Seam = new(
        "default.seam", "length of the seam of two halves", "rim", "the whole rim of one half", "arithmetic", "write `seam 420 mm` in `join`");

    /// <summary>Bond line.</summary>
    public static readonly TradeDefault<Length> BondLine = new(
        "default.bond-line", "thickness of the bond line", Length.FromMillimeters(0.3), "0.3 mm", $"{Common}: 0.1 to 0.5 mm", "write `bond-line 0.3 mm` in `join`");

    /// <summary>Every default of the program, in order of key.</summary>
    public static ImmutableArray<TradeDefault> All => Everything.Value;
}
