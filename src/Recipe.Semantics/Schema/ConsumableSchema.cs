using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Sheets, tapes and fittings of the bag.</summary>
internal static class ConsumableSchema
{
    private static readonly BlockSchema SheetBlock = MaterialWords.Block(
        "peel-ply, release-film, bleeder, breather, bag-film, flow-medium, caul",
        "A sheet that is laid over the part.",
        Word("areal-weight", "Dry mass per area.", "areal-weight 85 g/m2", Kinds.PositiveArealWeight),
        MaterialWords.Width,
        MaterialWords.RollLength,
        Word("thickness", "Thickness.", "thickness 50 um", Kinds.PositiveLength),
        Word("resin-pickup", "Resin it usually carries away.", "resin-pickup 40 g/m2", Kinds.ArealWeight),
        Word("capacity", "Resin it holds when soaked (felts).", "capacity 500 g/m2", Kinds.ArealWeight),
        Word("perforation", "How open it is (release films).", "perforation medium", Kinds.OneOf(
            "a perforation",
            ("none", "solid"),
            ("pin-prick", "pin pricks, wide pitch"),
            ("medium", "medium"),
            ("open", "open"))),
        Word("bleed", "Resin its holes let through.", "bleed 40 g/m2", Kinds.ArealWeight),
        Word("permeability", "In-plane permeability (flow media).", "permeability 5e-9 m2", Kinds.Permeability),
        Word("stuff", "What it is made of.", "stuff nylon", new AnyWordKind("a word for what it is made of")),
        Word("coated", "Whether it carries a release coat (peel plies).", "coated yes", Kinds.YesNo),
        MaterialWords.Default);

    private static readonly BlockSchema TapeBlock = MaterialWords.Block(
        "sealant-tape, flash-tape",
        "A tape of the bag.",
        MaterialWords.Width,
        MaterialWords.RollLength,
        MaterialWords.Default);

    private static readonly BlockSchema FittingBlock = MaterialWords.Block(
        "hose, port, catch-pot",
        "A fitting of the vacuum line.",
        Word("inner-diameter", "Inner diameter.", "inner-diameter 8 mm", Kinds.PositiveLength),
        Word("length", "Length of a hose from bag to pump.", "length 3 m", Kinds.PositiveLength),
        Word("volume", "Volume of a pot.", "volume 2 L", Kinds.Volume),
        Word("reinforced", "Whether a hose holds its shape under full vacuum and heat.", "reinforced yes", Kinds.YesNo),
        MaterialWords.Default);

    public static readonly WordSchema PeelPly = Sheet("peel-ply", "Comes off and leaves a texture to bond to.", "tear-ply");
    public static readonly WordSchema ReleaseFilm = Sheet("release-film", "Keeps what is above it from sticking.", "parting-film", "separator");
    public static readonly WordSchema Bleeder = Sheet("bleeder", "Takes resin.", "blotter", "bleeder-ply");
    public static readonly WordSchema Breather = Sheet("breather", "Takes air.", "breather-felt", "wadding");
    public static readonly WordSchema BagFilm = Sheet("bag-film", "Closes the bag.", "bagging-film", "vacuum-bag");
    public static readonly WordSchema FlowMedium = Sheet("flow-medium", "Carries resin in an infusion.", "flow-mesh", "infusion-mesh");
    public static readonly WordSchema Caul = Sheet("caul", "A pressure plate or sheet.", "caul-plate", "caul-sheet");

    public static readonly WordSchema SealantTape = MaterialWords.Declaration(
        "sealant-tape", "Seals the bag to the mould.", TapeBlock, "sealant-tape sealant-12 { width 12 mm }") with
    { Regional = ["tacky-tape", "gum-tape", "bag-tape"] };

    public static readonly WordSchema FlashTape = MaterialWords.Declaration(
        "flash-tape", "Holds things in place inside the bag.", TapeBlock, "flash-tape flash-25 { width 25 mm }") with
    { Regional = ["flashbreaker-tape"] };

    public static readonly WordSchema Hose = MaterialWords.Declaration(
        "hose", "A vacuum hose.", FittingBlock, "hose hose-8 { inner-diameter 8 mm }") with
    { Regional = ["tube", "pipe"] };

    public static readonly WordSchema Port = MaterialWords.Declaration(
        "port", "A fitting through the bag.", FittingBlock, "port port-quarter { heat-limit 120 degC }") with
    { Regional = ["vacuum-connector"] };

    public static readonly WordSchema CatchPot = MaterialWords.Declaration(
        "catch-pot", "Keeps resin out of the pump.", FittingBlock, "catch-pot pot-2 { volume 2 L }") with
    { Regional = ["resin-trap", "resin-pot"] };

    private static WordSchema Sheet(string word, string doc, params ReadOnlySpan<string> regional) =>
        MaterialWords.Declaration(word, doc, SheetBlock, $"{word} my-{word} {{ heat-limit 120 degC }}") with { Regional = [.. regional] };
}
