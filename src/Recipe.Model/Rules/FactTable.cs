using System.Collections.Immutable;
using Recipe.Text.Units;

namespace Recipe.Model;

/// <summary>
/// The facts that house rules may ask for, in the language and in C#. A fact that is not known of a part is unknown, never nought. What is
/// in here stays: rules of other shops rest on it.
/// </summary>
public static class FactTable
{
    /// <summary>The part as a whole, its mould and its resin.</summary>
    public static FactGroup Part { get; } = new(
        "part",
        "the part as a whole, its mould and its resin",
        [
            Word("name", "the part's name"),
            Text("title", "its title"),
            Word("variant-of", "the part that it is a variant of"),
            Word("process", "hand, bagged, infused or prepreg", "hand", "bagged", "infused", "prepreg"),
            Word("use", "cosmetic, structural or flying", "cosmetic", "structural", "flying"),
            YesNo("outdoors", "whether it lives outdoors"),
            Word("colour", "white, light or dark", "white", "light", "dark"),
            Number("quantity", "how many are made"),
            Quantity("trim", "mm", "how far plies run past the trim line"),
            Quantity("overlap", "mm", "overlap where two pieces of a ply meet"),
            Quantity("stagger", "mm", "distance of the join lines of one ply from those of the next"),
            Quantity("service", "degC", "the hottest it gets in use"),
            Quantity("target-mass", "g", "the mass it should have"),
            Word("mould-name", "the mould"),
            Name("mould-material", "what the mould is made of"),
            Word("mould-state", "new, seasoned or repaired", "new", "seasoned", "repaired"),
            Number("mould-pulls", "pulls so far"),
            Number("mould-pulls-since-release", "pulls since release was last put on"),
            Quantity("mould-heat-limit", "degC", "the hottest the mould can stand"),
            Quantity("flange", "mm", "flange round the part"),
            Quantity("inside-radius", "mm", "smallest inside radius of the mould, as stated"),
            Quantity("draft", "deg", "draft against the pull, as stated"),
            Number("halves", "sides that are laid: 2 for a mould in two halves, else 1"),
            Quantity("area", "m2", "area inside the trim line, all sides"),
            Quantity("rim", "mm", "length of the trim line of one side"),
            Quantity("depth", "mm", "depth of the mould"),
            YesNo("flat", "whether the surface is flat"),
            YesNo("doubly-curved", "whether it curves two ways"),
            Name("resin-name", "the resin"),
            Word("hardener-name", "its hardener, where it has several"),
            Word("chemistry", "epoxy, polyester, vinylester or phenolic", "epoxy", "polyester", "vinylester", "phenolic"),
            Quantity("room", "degC", "room temperature at lay-up; of a range, the upper end"),
            Quantity("night", "degC", "the coldest the room gets while the part cures in it"),
            Quantity("resin-temperature", "degC", "temperature of the resin when mixed"),
            Number("laminators", "pairs of hands"),
            Quantity("humidity", "%", "relative humidity of the room"),
            Quantity("altitude", "m", "height above the sea"),
            YesNo("tray", "whether the pot is a shallow tray"),
            Quantity("mixing", "min", "time to mix one pot, as stated"),
            Quantity("loss", "g", "resin lost in pot, brush and roller, as `wet-out` states it; of an infusion, that of the shop is not counted"),
            Quantity("spare", "%", "resin mixed on top of the need, as stated"),
            Quantity("mass", "g", "mass of the trimmed part"),
            Quantity("fibre-mass", "g", "dry fibre inside the trim line"),
            Quantity("resin-mass", "g", "resin inside the trim line"),
            Quantity("core-mass", "g", "cores inside the trim line"),
            Quantity("coat-mass", "g", "coats on the mould"),
            Quantity("insert-mass", "g", "inserts"),
            Quantity("thickness", "mm", "thickness of the full-cover stack"),
            Quantity("resin-content", "%", "resin in the cured plies, by weight"),
            Quantity("fibre-volume", "%", "fibre in the cured plies, by volume"),
            Quantity("resin", "g", "resin to mix, all pots"),
            Number("pots", "number of pots"),
            Quantity("wet-out-time", "min", "mixing and wetting out"),
            Quantity("bagging-time", "min", "laying and closing the bag"),
            Quantity("draw-down", "min", "drawing down to the level"),
            Quantity("to-vacuum", "min", "time from the first mix to full vacuum"),
            Quantity("film-life", "min", "what the resin on the part allows"),
            Quantity("clock-left", "min", "film life less the time to full vacuum"),
            Quantity("bending-along", "N.m", "bending stiffness of a strip along the part, for each metre of its width"),
            Quantity("bending-across", "N.m", "bending stiffness of a strip across the part, for each metre of its width"),
            Quantity("modulus-along", "GPa", "modulus for a pull along the part"),
            Quantity("modulus-across", "GPa", "modulus for a pull across the part"),
            Number("times-over", "how many times over the stack bears its stated loads"),
            Quantity("vacuum-below", "mbar", "vacuum, below ambient"),
            Quantity("vacuum-absolute", "mbar", "vacuum, absolute"),
            Quantity("leak-check", "min", "how long the bag is watched for a leak"),
            Quantity("rise-at-most", "mbar", "the rise in that time that is still accepted"),
            Quantity("pump-down", "min", "time that the shop's pump needs"),
            Quantity("fill", "min", "time that an infusion takes to fill"),
            Quantity("feed-path", "mm", "the way that the resin of an infusion flows"),
            Quantity("cure-end", "h", "time from the start of the cure to its end"),
            Quantity("hottest", "degC", "the hottest it gets in the cure"),
            Quantity("hottest-inside", "degC", "the hottest a thick laminate gets inside"),
            Quantity("softens-at", "degC", "glass transition at the end of the cure"),
            Quantity("degree-of-cure", "%", "degree of cure at its end"),
            Quantity("demould-at", "h", "when the recipe pulls the part, from the start of the cure"),
            Quantity("softens-at-demould", "degC", "glass transition when it is pulled"),
            Money("cost", "what the materials of all parts cost; unknown while a price is missing"),
            Quantity("seam", "mm", "length of the seam of a join"),
            Quantity("join-within", "min", "longest time from the first mix to the closed mould"),
        ]);

    /// <summary>The lines that cloth is cut for, mould side first.</summary>
    public static FactGroup Ply { get; } = new(
        "ply",
        "a line of the stack that is cloth, mat or veil, patches among them; the first lies on the mould",
        [
            Word("name", "the line's name"),
            Name("material", "what it is cut from"),
            Word("form", "fabric, ud, mat or veil", "fabric", "ud", "mat", "veil"),
            Name("fibre", "its fibre"),
            Word("weave", "its weave"),
            Number("position", "place in the stack, 1 on the mould; cores and inserts count"),
            Number("repeats", "how often it is laid, or how many pieces of a patch"),
            YesNo("patch", "whether it is a patch"),
            YesNo("random", "whether it has no direction"),
            Quantity("angle", "deg", "its direction, or its warp's"),
            Text("orientation", "its orientation as written: 0/90, +/-45"),
            Quantity("areal-weight", "g/m2", "dry mass for each area"),
            Quantity("overlap", "mm", "overlap where two pieces of it meet"),
            Quantity("trim", "mm", "how far it runs past the trim line"),
            Quantity("step", "mm", "how far inside the ply below it ends"),
            Quantity("resin-content", "%", "resin in it when cured, by weight"),
            Quantity("thickness", "mm", "its cured thickness, all repeats"),
            Quantity("area", "m2", "area that it covers, all sides and repeats"),
            Quantity("mass", "g", "its dry mass inside the trim line"),
            Quantity("wet-out-time", "min", "time to wet it out"),
            Number("joins", "most join lines in a piece of it"),
            Word("face", "up or down, which way its right side looks", "up", "down"),
        ]);

    /// <summary>The cores of the stack.</summary>
    public static FactGroup Core { get; } = new(
        "core",
        "a core of the stack",
        [
            Word("name", "the line's name"),
            Name("material", "the sheet"),
            Word("family", "pvc-foam, balsa, honeycomb, ..."),
            Number("position", "place in the stack, 1 on the mould"),
            Quantity("thickness", "mm", "its thickness"),
            Quantity("density", "kg/m3", "its density"),
            Quantity("heat-limit", "degC", "the hottest it can stand"),
            Quantity("chamfer", "deg", "slope of its edge against the face; 90 deg is a square edge"),
            Quantity("gap", "mm", "widest gap between two sheets"),
            Quantity("area", "m2", "area that it covers"),
            Quantity("mass", "g", "its mass"),
        ]);

    /// <summary>What is laid in.</summary>
    public static FactGroup Insert { get; } = new(
        "insert",
        "something laid in: a nut, a hard point",
        [
            Word("name", "the line's name"),
            Name("material", "the insert"),
            Word("stuff", "what it is made of"),
            Number("position", "place in the stack, 1 on the mould"),
            Number("pieces", "how many"),
            Quantity("mass", "g", "mass of all of them"),
        ]);

    /// <summary>The coats on the mould.</summary>
    public static FactGroup Coat { get; } = new(
        "coat",
        "a coat on the mould before the plies",
        [
            Name("material", "gel coat or surface coat"),
            Word("chemistry", "epoxy, polyester, vinylester or phenolic", "epoxy", "polyester", "vinylester", "phenolic"),
            Number("position", "1 for the first"),
            Quantity("areal-weight", "g/m2", "wet mass for each area"),
            Quantity("wait", "min", "time to what comes on it"),
        ]);

    /// <summary>The release lines of the mould.</summary>
    public static FactGroup Release { get; } = new(
        "release",
        "a line of the mould's release",
        [
            Name("agent", "the agent"),
            Word("kind", "wax, liquid-film, semi-permanent or sheet", "wax", "liquid-film", "semi-permanent", "sheet"),
            Number("position", "1 for the first"),
            Number("coats", "number of coats"),
            Quantity("wait", "min", "time between coats"),
            Quantity("dry", "min", "time from the last coat to the lay-up"),
        ]);

    /// <summary>The layers of the bag.</summary>
    public static FactGroup BagLayer { get; } = new(
        "bag-layer",
        "a layer of the bag, from the part outwards",
        [
            Word("class", "peel-ply, release-film, bleeder, breather, bag-film, flow-medium or caul", "peel-ply", "release-film", "bleeder", "breather", "bag-film", "flow-medium", "caul"),
            Name("material", "what it is"),
            Word("stuff", "what that is made of: nylon, polyester, ..."),
            Number("position", "1 for the one next to the part"),
            Number("sheets", "layers of it"),
            YesNo("reused", "whether it was used before"),
            YesNo("coated", "whether it carries a release coat"),
            Word("perforation", "none, pin-prick, medium or open", "none", "pin-prick", "medium", "open"),
            Quantity("heat-limit", "degC", "the hottest it can stand"),
            Quantity("pickup", "g", "resin that it carries away"),
            Quantity("area", "m2", "area of all its sheets"),
        ]);

    /// <summary>The pots.</summary>
    public static FactGroup Pot { get; } = new(
        "pot",
        "a pot that is mixed, of the plies, a coat or a join",
        [
            Word("use", "laminate, coat, seam or adhesive", "laminate", "coat", "seam", "adhesive"),
            Number("number", "1 for the first of its use"),
            Quantity("mass", "g", "mass mixed"),
            Quantity("resin", "g", "resin in it"),
            Quantity("hardener", "g", "hardener in it"),
            Quantity("mixed-at", "min", "when it is mixed, from the first mix"),
            Quantity("used-up-at", "min", "when it is used up, from the first mix"),
            Quantity("life", "min", "how long it can be used"),
            Quantity("time-left", "min", "how long before its end it is used up"),
            Quantity("standing-peak", "degC", "how hot it gets when it is left standing"),
        ]);

    /// <summary>The steps of the cure.</summary>
    public static FactGroup CureStep { get; } = new(
        "cure-step",
        "a step of the cure",
        [
            Word("action", "hold, ramp, cool, vent, debag or demould", "hold", "ramp", "cool", "vent", "debag", "demould"),
            Number("position", "1 for the first"),
            Quantity("from", "degC", "temperature at its start"),
            Quantity("to", "degC", "temperature at its end"),
            Quantity("lasts", "min", "how long it lasts"),
            Quantity("rate", "degC/min", "rate of change, up or down, always positive"),
            Quantity("start", "min", "its start, from the start of the cure"),
            Quantity("end", "min", "its end, from the start of the cure"),
            YesNo("bagged", "whether the bag is still on"),
            YesNo("in-mould", "whether the part is still in the mould"),
        ]);

    /// <summary>The lines of finishing.</summary>
    public static FactGroup FinishStep { get; } = new(
        "finish-step",
        "a line of finishing",
        [
            Word("step", "trim, wash, abrade, weigh, ...", "debag", "demould", "trim", "wash", "peel", "scarf", "abrade", "seal", "drill", "fill", "prime", "paint", "bond", "weigh", "inspect", "ship", "step"),
            Number("position", "1 for the first"),
            Text("text", "the rest of the line, as written"),
        ]);

    /// <summary>The stated loads.</summary>
    public static FactGroup Load { get; } = new(
        "load",
        "a load that the stack is compared with; it certifies nothing",
        [
            Word("name", "its name"),
            Word("way", "along or across", "along", "across"),
            Number("times-over", "how many times over the stack bears it"),
            Quantity("sag", "mm", "how far a strip goes down in the middle"),
        ]);

    /// <summary>The kinds of things in a part, in the order of the job.</summary>
    public static ImmutableArray<FactGroup> Elements { get; } = [Release, Coat, Ply, Core, Insert, Pot, BagLayer, CureStep, FinishStep, Load];

    /// <summary>The kind of this word, or null.</summary>
    public static FactGroup? Find(string word) => Elements.FirstOrDefault(group => group.Word == word);

    private static FactWord Quantity(string word, string unit, string doc) => new(word, FactKind.Quantity, UnitTable.Get(unit), doc);

    private static FactWord Number(string word, string doc) => new(word, FactKind.Number, null, doc);

    private static FactWord Money(string word, string doc) => new(word, FactKind.Money, null, doc);

    private static FactWord Word(string word, string doc, params ImmutableArray<string> choices) => new(word, FactKind.Word, null, doc) { Choices = choices };

    private static FactWord Name(string word, string doc) => new(word, FactKind.Word, null, doc) { NamesMaterial = true };

    private static FactWord Text(string word, string doc) => new(word, FactKind.Text, null, doc);

    private static FactWord YesNo(string word, string doc) => new(word, FactKind.YesNo, null, doc);
}
