using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Fibres, cloths, mats and veils.</summary>
internal static class ReinforcementSchema
{
    private static readonly BlockSchema FibreBlock = MaterialWords.Block(
        "fibre",
        "What cloths are made of.",
        Word("density", "Density of the fibre.", "density 2.55 g/cm3", Kinds.Density),
        Word("modulus", "Modulus along the fibre.", "modulus 72 GPa", Kinds.Modulus),
        Word("transverse-modulus", "Modulus across the fibre.", "transverse-modulus 72 GPa", Kinds.Modulus),
        Word("shear-modulus", "Shear modulus.", "shear-modulus 30 GPa", Kinds.Modulus),
        Word("poisson", "Poisson's ratio along the fibre.", "poisson 0.22", Kinds.Poisson),
        Word("expansion", "Thermal expansion along the fibre.", "expansion 5 ppm/K", Kinds.Expansion),
        Word("transverse-expansion", "Thermal expansion across the fibre.", "transverse-expansion 5 ppm/K", Kinds.Expansion));

    private static readonly BlockSchema ClothBlock = MaterialWords.Block(
        "fabric, ud, mat, veil",
        "What a ply is cut from.",
        Word("fibre", "What it is made of.", "fibre e-glass", Kinds.Fibre).Also("fiber"),
        Word("weave", "How it is woven: plain, twill, satin, stitched.", "weave twill", new AnyWordKind("a word for the weave")),
        Word("areal-weight", "Dry mass per area.", "areal-weight 163 g/m2", Kinds.PositiveArealWeight) with { IsRequired = true, Regional = ["faw", "gsm"] },
        Word("warp-share", "Share of the dry mass that runs along the roll.", "warp-share 50 %", Kinds.Share),
        Word("fibre-angles", "Directions of a stitched cloth, from the roll.", "fibre-angles +/-45", new OrientationKind()).Also("fiber-angles"),
        Word("locking-angle", "Shear of warp against weft at which the cloth begins to wrinkle.", "locking-angle 45 deg", Kinds.Angle with { AtLeast = null, MoreThan = 0, AtMost = Math.PI / 2 }).Otherwise("40 deg"),
        MaterialWords.Width,
        MaterialWords.RollLength,
        Word(
            "resin-content",
            "Resin content after each way of working.",
            "resin-content bagged 42 % by weight",
            Arg("way", Kinds.OneOf(
                "a way of working",
                ("hand", "laid by hand, no bag"),
                ("bagged", "under a vacuum bag"),
                ("infused", "infused"),
                ("prepreg", "as delivered"))),
            Arg(Kinds.ResinContent)) with
        { OncePerFirstWord = true },
        Word("binder", "What holds a mat together.", "binder powder", Kinds.OneOf(
            "a binder",
            ("powder", "dissolves slowly, also in epoxy"),
            ("emulsion", "dissolves in styrene only"),
            ("stitched", "no binder, stitched"))),
        Word("sizing", "The resin that the finish on its fibres suits.", "sizing epoxy", Kinds.OneOf("a sizing", ("epoxy", "epoxy only"), ("polyester", "polyester and vinylester only"), ("any", "all of them"))),
        Word("out-life", "How long a prepreg keeps out of the freezer.", "out-life 30 d", Kinds.ShelfTime),
        Word("pace", "Time to wet out one square metre of one ply by one pair of hands.", "pace 4 min/m2", Kinds.Pace),
        Word("permeability", "Permeability in its plane once compacted under a bag (infusion).", "permeability 1e-10 m2", Kinds.Permeability),
        Word("thickness", "Cured ply thickness as its maker states it, to compare.", "thickness 0.2 mm", Kinds.PositiveLength),
        MaterialWords.StrainLimit);

    public static readonly WordSchema Fibre = MaterialWords.Declaration(
        "fibre", "A fibre.", FibreBlock, "fibre e-glass { density 2.55 g/cm3 }") with
    { Regional = ["fiber"] };

    public static readonly WordSchema Fabric = MaterialWords.Declaration(
        "fabric", "A woven or stitched cloth.", ClothBlock, "fabric glass-twill-163 { areal-weight 163 g/m2 }") with
    { Regional = ["cloth", "fabrics"] };

    public static readonly WordSchema Unidirectional = MaterialWords.Declaration(
        "ud", "A cloth or tape with all fibres one way.", ClothBlock, "ud carbon-ud-200 { areal-weight 200 g/m2 }") with
    { Regional = ["uni", "unidirectional"] };

    public static readonly WordSchema Mat = MaterialWords.Declaration(
        "mat", "Chopped strands, no direction.", ClothBlock, "mat glass-mat-300 { areal-weight 300 g/m2 }") with
    { Regional = ["csm", "chopped-strand-mat"] };

    public static readonly WordSchema Veil = MaterialWords.Declaration(
        "veil", "A light tissue, mostly resin when wet.", ClothBlock, "veil carbon-veil-8 { areal-weight 8 g/m2 }") with
    { Regional = ["tissue", "surfacing-veil"] };
}
