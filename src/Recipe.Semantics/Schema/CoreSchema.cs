using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Cores and inserts.</summary>
internal static class CoreSchema
{
    private static readonly BlockSchema CoreBlock = MaterialWords.Block(
        "core",
        "A sheet between two skins.",
        Word("family", "What kind of core: pvc-foam, balsa, honeycomb.", "family pvc-foam", new AnyWordKind("a word for the family")),
        Word("density", "Density of the sheet.", "density 75 kg/m3", Kinds.Density),
        Word("thickness", "Thickness of the sheet.", "thickness 5 mm", Kinds.PositiveLength),
        Word("sheet", "Size of a sheet.", "sheet 1200 mm x 800 mm", Kinds.Rectangle),
        Word("compressive-strength", "Compressive strength at room temperature.", "compressive-strength 1.3 MPa", Kinds.Strength),
        Word("resin-uptake", "Resin that each face drinks.", "resin-uptake 300 g/m2", Kinds.ArealWeight),
        Word("modulus", "Compressive or flexural modulus.", "modulus 90 MPa", Kinds.Modulus),
        Word("shear-modulus", "Shear modulus.", "shear-modulus 28 MPa", Kinds.Modulus),
        Word("expansion", "Thermal expansion.", "expansion 35 ppm/K", Kinds.Expansion),
        Word("cut", "How the sheet is cut or drilled.", "cut perforated", Kinds.OneOf("a cut", ("plain", "as it comes"), ("perforated", "holes through it"), ("grooved", "grooves for resin"), ("slit", "slit to bend"))),
        Word("cell", "Width of a honeycomb cell.", "cell 6 mm", Kinds.PositiveLength),
        Word("heat-stabilised", "Whether it was heated so that it gives off no more gas.", "heat-stabilised yes", Kinds.YesNo).Also("heat-stabilized"),
        Word("moisture", "Share of water, by weight (wood, paper).", "moisture 9 %", Kinds.Share),
        MaterialWords.StrainLimit);

    private static readonly BlockSchema InsertBlock = MaterialWords.Block(
        "insert",
        "Something laid in: a nut, a hard point.",
        Word("mass", "Mass of one.", "mass 12 g", Kinds.Mass),
        Word("stuff", "What it is made of.", "stuff aluminium", new AnyWordKind("a word for what it is made of")));

    public static readonly WordSchema Core = MaterialWords.Declaration(
        "core", "A core sheet.", CoreBlock, "core pvc-foam-75 { thickness 5 mm }");

    public static readonly WordSchema Insert = MaterialWords.Declaration(
        "insert", "A thing laid in.", InsertBlock, "insert m5-nut { mass 12 g }") with
    { Regional = ["hard-point"] };
}
