using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>What the shop does so that nobody is hurt. Data sheets and local codes come first; the papers carry their cautions in any case.</summary>
internal static class SafetySchema
{
    public static readonly BlockSchema Block = new(
        "safety",
        "Who is protected from what, and how. The maker's data sheets and local codes come first.",
        [
            Word("gloves", "Which gloves, and when they are changed.", "gloves \"nitrile, changed on every splash\"", Kinds.Free),
            Word("respirator", "Which mask, and for what.", "respirator \"A2P3 for styrene and dust\"", Kinds.Free),
            Word("ventilation", "How vapour leaves the room.", "ventilation \"extraction at the bench\"", Kinds.Free),
            Word("dust", "How cured laminate is cut and sanded.", "dust wet", Kinds.OneOf("a way with dust", ("wet", "wet"), ("extracted", "with extraction at the tool"), ("dry", "dry, without extraction"))),
            Word("leftover", "Where mixed resin that is left over goes.", "leftover tray", Kinds.OneOf("a place", ("tray", "spread thin in a tray"), ("outdoors", "outdoors, on stone or in sand"), ("water", "into a steel bucket of water"), ("bin", "into the bin"))),
            Word("spills", "What spills are taken up with.", "spills mineral", Kinds.OneOf("a binder for spills", ("mineral", "sand or clay granules"), ("rags", "rags or paper"), ("sawdust", "sawdust"))),
            Word("peroxide", "Where peroxide is kept.", "peroxide apart", Kinds.OneOf("a place", ("apart", "cool, alone, in its own vented bottle"), ("with-accelerator", "on one shelf with the accelerator"), ("warm", "in the sun or beside a heater"))),
            Word("solvents", "Where solvents are used.", "solvents apart", Kinds.OneOf("a place", ("apart", "away from heat and sparks"), ("by-heat", "beside a heater, an oven or a grinder"))),
            Word("tools", "How power tools are built.", "tools enclosed", Kinds.OneOf("a build", ("enclosed", "enclosed motors, or air"), ("open", "open motors"))),
            MaterialWords.Note,
            MaterialWords.Source,
        ]);
}
