using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a part: what was written, and what the plan computed from it. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
public sealed class PartFacts(FactSheet sheet) : Facts(sheet)
{
    /// <summary>The plies, from the mould outwards.</summary>
    public IReadOnlyList<PlyFacts> Plies { get; } = List(sheet, "ply", static (element, index) => new PlyFacts(element, index));

    /// <summary>The cores.</summary>
    public IReadOnlyList<CoreFacts> Cores { get; } = List(sheet, "core", static (element, index) => new CoreFacts(element, index));

    /// <summary>The inserts.</summary>
    public IReadOnlyList<InsertFacts> Inserts { get; } = List(sheet, "insert", static (element, index) => new InsertFacts(element, index));

    /// <summary>The coats in the mould, in order.</summary>
    public IReadOnlyList<CoatFacts> Coats { get; } = List(sheet, "coat", static (element, index) => new CoatFacts(element, index));

    /// <summary>The release system, in order.</summary>
    public IReadOnlyList<ReleaseFacts> Releases { get; } = List(sheet, "release", static (element, index) => new ReleaseFacts(element, index));

    /// <summary>The layers of the bag, from the part outwards.</summary>
    public IReadOnlyList<BagLayerFacts> BagLayers { get; } = List(sheet, "bag-layer", static (element, index) => new BagLayerFacts(element, index));

    /// <summary>The pots of resin, in order.</summary>
    public IReadOnlyList<PotFacts> MixedPots { get; } = List(sheet, "pot", static (element, index) => new PotFacts(element, index));

    /// <summary>The steps of the cure, in order.</summary>
    public IReadOnlyList<CureStepFacts> CureSteps { get; } = List(sheet, "cure-step", static (element, index) => new CureStepFacts(element, index));

    /// <summary>The lines of finishing, in order.</summary>
    public IReadOnlyList<FinishStepFacts> FinishSteps { get; } = List(sheet, "finish-step", static (element, index) => new FinishStepFacts(element, index));

    /// <summary>The loads that the part is to bear.</summary>
    public IReadOnlyList<LoadFacts> Loads { get; } = List(sheet, "load", static (element, index) => new LoadFacts(element, index));

    /// <summary>The name of the part.</summary>
    public string? Name => ReadWord("name");

    /// <summary>What the part is called on papers.</summary>
    public string? Title => ReadText("title");

    /// <summary>The part that it is a variant of.</summary>
    public string? VariantOf => ReadWord("variant-of");

    /// <summary>How it is made: hand, bagged, infused or prepreg.</summary>
    public string? Process => ReadWord("process");

    /// <summary>What it is used for: cosmetic, structural or flying.</summary>
    public string? Use => ReadWord("use");

    /// <summary>Whether it is used outdoors.</summary>
    public bool? Outdoors => ReadYesNo("outdoors");

    /// <summary>How dark its surface is: white, light or dark.</summary>
    public string? Colour => ReadWord("colour");

    /// <summary>How many are made.</summary>
    public double? Quantity => ReadNumber("quantity");

    /// <summary>How far plies run past the trim line.</summary>
    public Length? Trim => ReadLength("trim");

    /// <summary>How far neighbouring pieces of a ply overlap.</summary>
    public Length? Overlap => ReadLength("overlap");

    /// <summary>How far joins of neighbouring plies are apart.</summary>
    public Length? Stagger => ReadLength("stagger");

    /// <summary>The highest temperature in use.</summary>
    public Temperature? Service => ReadTemperature("service");

    /// <summary>The mass that is aimed at.</summary>
    public Mass? TargetMass => ReadMass("target-mass");

    /// <summary>The name of the mould.</summary>
    public string? MouldName => ReadWord("mould-name");

    /// <summary>What the mould is made of.</summary>
    public string? MouldMaterial => ReadWord("mould-material");

    /// <summary>The state of the mould: new, seasoned or repaired.</summary>
    public string? MouldState => ReadWord("mould-state");

    /// <summary>How many parts the mould has made.</summary>
    public double? MouldPulls => ReadNumber("mould-pulls");

    /// <summary>How many parts the mould has made since it was last released.</summary>
    public double? MouldPullsSinceRelease => ReadNumber("mould-pulls-since-release");

    /// <summary>The highest temperature that the mould stands.</summary>
    public Temperature? MouldHeatLimit => ReadTemperature("mould-heat-limit");

    /// <summary>The width of the mould's flange.</summary>
    public Length? Flange => ReadLength("flange");

    /// <summary>The smallest inside radius of the mould, as stated.</summary>
    public Length? InsideRadius => ReadLength("inside-radius");

    /// <summary>The draft against the pull, as stated.</summary>
    public Angle? Draft => ReadAngle("draft");

    /// <summary>The sides that are laid: 2 for a mould in two halves, else 1.</summary>
    public double? Halves => ReadNumber("halves");

    /// <summary>The area inside the trim line, all sides.</summary>
    public Area? Area => ReadArea("area");

    /// <summary>The length of the trim line of one side.</summary>
    public Length? Rim => ReadLength("rim");

    /// <summary>The depth of the mould.</summary>
    public Length? Depth => ReadLength("depth");

    /// <summary>Whether the surface is flat.</summary>
    public bool? Flat => ReadYesNo("flat");

    /// <summary>Whether the surface curves two ways.</summary>
    public bool? DoublyCurved => ReadYesNo("doubly-curved");

    /// <summary>The name of the resin.</summary>
    public string? ResinName => ReadWord("resin-name");

    /// <summary>The name of the hardener.</summary>
    public string? HardenerName => ReadWord("hardener-name");

    /// <summary>The chemistry of the resin.</summary>
    public string? Chemistry => ReadWord("chemistry");

    /// <summary>The temperature of the room at lay-up; of a range, the upper end.</summary>
    public Temperature? Room => ReadTemperature("room");

    /// <summary>The coldest the room gets while the part cures in it.</summary>
    public Temperature? Night => ReadTemperature("night");

    /// <summary>The temperature of the resin when it is mixed.</summary>
    public Temperature? ResinTemperature => ReadTemperature("resin-temperature");

    /// <summary>How many people wet out.</summary>
    public double? Laminators => ReadNumber("laminators");

    /// <summary>The relative humidity of the room, from 0 to 1.</summary>
    public double? Humidity => ReadNumber("humidity");

    /// <summary>The altitude of the shop.</summary>
    public Length? Altitude => ReadLength("altitude");

    /// <summary>Whether the mixed resin is spread in a tray.</summary>
    public bool? Tray => ReadYesNo("tray");

    /// <summary>How long mixing a pot takes, as stated.</summary>
    public Duration? Mixing => ReadDuration("mixing");

    /// <summary>The resin lost in pot, brush and roller, as stated.</summary>
    public Mass? Loss => ReadMass("loss");

    /// <summary>The share of resin that is mixed beyond the need, from 0.</summary>
    public double? Spare => ReadNumber("spare");

    /// <summary>The computed mass of the trimmed part.</summary>
    public Mass? Mass => ReadMass("mass");

    /// <summary>The mass of dry fibre inside the trim line.</summary>
    public Mass? FibreMass => ReadMass("fibre-mass");

    /// <summary>The mass of resin inside the trim line.</summary>
    public Mass? ResinMass => ReadMass("resin-mass");

    /// <summary>The mass of cores inside the trim line.</summary>
    public Mass? CoreMass => ReadMass("core-mass");

    /// <summary>The mass of coats on it.</summary>
    public Mass? CoatMass => ReadMass("coat-mass");

    /// <summary>The mass of inserts in it.</summary>
    public Mass? InsertMass => ReadMass("insert-mass");

    /// <summary>The thickness of the full-cover stack.</summary>
    public Length? Thickness => ReadLength("thickness");

    /// <summary>The resin in the cured plies by weight, from 0 to 1.</summary>
    public double? ResinContent => ReadNumber("resin-content");

    /// <summary>The fibre volume fraction, from 0 to 1.</summary>
    public double? FibreVolume => ReadNumber("fibre-volume");

    /// <summary>The resin to mix, with its hardener.</summary>
    public Mass? Resin => ReadMass("resin");

    /// <summary>How many pots are mixed.</summary>
    public double? Pots => ReadNumber("pots");

    /// <summary>How long mixing and wetting out take.</summary>
    public Duration? WetOutTime => ReadDuration("wet-out-time");

    /// <summary>How long laying and closing the bag takes.</summary>
    public Duration? BaggingTime => ReadDuration("bagging-time");

    /// <summary>How long the bag takes to draw down.</summary>
    public Duration? DrawDown => ReadDuration("draw-down");

    /// <summary>The time from the first mix to full vacuum.</summary>
    public Duration? ToVacuum => ReadDuration("to-vacuum");

    /// <summary>How long the resin stays workable as a film.</summary>
    public Duration? FilmLife => ReadDuration("film-life");

    /// <summary>What is left of the working time when vacuum is on; below zero when it was not enough.</summary>
    public Duration? ClockLeft => ReadDuration("clock-left");

    /// <summary>The bending stiffness along the part, for each metre of width.</summary>
    public Torque? BendingAlong => ReadTorque("bending-along");

    /// <summary>The bending stiffness across the part, for each metre of width.</summary>
    public Torque? BendingAcross => ReadTorque("bending-across");

    /// <summary>The modulus in tension along the part.</summary>
    public Pressure? ModulusAlong => ReadPressure("modulus-along");

    /// <summary>The modulus in tension across the part.</summary>
    public Pressure? ModulusAcross => ReadPressure("modulus-across");

    /// <summary>How many times over the part bears the worst of its loads.</summary>
    public double? TimesOver => ReadNumber("times-over");

    /// <summary>The vacuum, as a pressure below that of the air.</summary>
    public Pressure? VacuumBelow => ReadPressure("vacuum-below");

    /// <summary>The vacuum, as an absolute pressure.</summary>
    public Pressure? VacuumAbsolute => ReadPressure("vacuum-absolute");

    /// <summary>How long the leak check lasts.</summary>
    public Duration? LeakCheck => ReadDuration("leak-check");

    /// <summary>The rise of pressure that the leak check allows.</summary>
    public Pressure? RiseAtMost => ReadPressure("rise-at-most");

    /// <summary>How long the pump takes.</summary>
    public Duration? PumpDown => ReadDuration("pump-down");

    /// <summary>How long the infusion takes to fill.</summary>
    public Duration? Fill => ReadDuration("fill");

    /// <summary>The longest way of the resin from its feed.</summary>
    public Length? FeedPath => ReadLength("feed-path");

    /// <summary>When the cure ends, from the start of the cure.</summary>
    public Duration? CureEnd => ReadDuration("cure-end");

    /// <summary>The highest temperature of the cure.</summary>
    public Temperature? Hottest => ReadTemperature("hottest");

    /// <summary>The highest temperature inside the laminate.</summary>
    public Temperature? HottestInside => ReadTemperature("hottest-inside");

    /// <summary>The glass transition temperature after the cure.</summary>
    public Temperature? SoftensAt => ReadTemperature("softens-at");

    /// <summary>The degree of cure at the end, from 0 to 1.</summary>
    public double? DegreeOfCure => ReadNumber("degree-of-cure");

    /// <summary>When the recipe pulls the part, from the start of the cure.</summary>
    public Duration? DemouldAt => ReadDuration("demould-at");

    /// <summary>The glass transition temperature when the recipe pulls the part.</summary>
    public Temperature? SoftensAtDemould => ReadTemperature("softens-at-demould");

    /// <summary>What the materials of all parts cost, in the shop's currency; null while a price is missing.</summary>
    public double? Cost => ReadNumber("cost");

    /// <summary>The length of the seam between two halves.</summary>
    public Length? Seam => ReadLength("seam");

    /// <summary>The longest time from the first mix to the closed mould.</summary>
    public Duration? JoinWithin => ReadDuration("join-within");
}
