using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Finishing and joining.</summary>
internal static class FinishSchema
{
    public static readonly BlockSchema Finish = new(
        "finish",
        "Finishing, in order; what follows the word is kept as written.",
        [
            Step("debag", "Takes the bag off.", "debag"),
            Step("demould", "Takes the part off the mould.", "demould").Also("demold"),
            Step("trim", "Cuts to the trim line.", "trim"),
            Step("wash", "Washes release and blush off.", "wash"),
            Step("peel", "Pulls the peel ply off.", "peel"),
            Step("scarf", "Tapers the edges of a repair: length to depth.", "scarf 20 to 1"),
            Step("abrade", "Sands.", "abrade 80 grit").Also("sand"),
            Step("seal", "Seals cut edges.", "seal edges"),
            Step("drill", "Drills.", "drill 4 mm"),
            Step("fill", "Fills.", "fill pinholes"),
            Step("prime", "Primes.", "prime"),
            Step("paint", "Paints.", "paint colour white"),
            Step("bond", "Bonds something on.", "bond hinge"),
            Step("weigh", "Weighs the part.", "weigh"),
            Step("inspect", "Looks, with limits.", "inspect \"no dry spot over 5 mm\""),
            Step("ship", "Sends it off.", "ship \"boxed, with its label\""),
            Step("step", "Anything else.", "step \"stamp the serial number\""),
            MaterialWords.Note,
            MaterialWords.Source,
        ])
    {
        IsOrdered = true,
    };

    public static readonly BlockSchema Join = new(
        "join",
        "The join of the two halves of the mould, or of parts.",
        [
            Word("manner", "How.", "manner wet-in-wet", Kinds.OneOf(
                "a manner of joining",
                ("wet-in-wet", "both halves wet, closed together"),
                ("cured-then-taped", "both cured, then wet cloth over the seam"),
                ("cured-then-bonded", "both cured, then adhesive"))),
            Word("parts", "The parts joined, when they are separate parts.", "parts rudder-left rudder-right", Arg("first", Kinds.Part), Arg("second", Kinds.Part)),
            Word("overlap", "Overlap of the joint.", "overlap 20 mm", Kinds.Length),
            Word("seam", "Length of the seam.", "seam 420 mm", Kinds.PositiveLength),
            Word("adhesive", "What glues.", "adhesive paste-epoxy", Kinds.Adhesive).Also("glue"),
            Word("bond-line", "Thickness of the bond line.", "bond-line 0.3 mm", Kinds.PositiveLength),
            Word("tape", "Cloth laid over the seam.", "tape glass-tape-200 width 40 mm x2", Arg("material", Kinds.Cloth), Clause("width", Kinds.PositiveLength, "its width"), Times("layers of it")),
            Word("within", "Longest time from the first mix to the closed mould.", "within 45 min", Kinds.Time),
            Word("prepare", "A step before the join.", "prepare \"dry fit and mark\"", new ArgumentPattern(Define.Value, Kinds.Free)).Repeatable(),
            Word("abrade", "Sanding before the join.", "abrade 80 grit", new ArgumentPattern(Define.Value, Kinds.Free)).Repeatable().Also("sand"),
            Word("align", "What aligns the halves.", "align dowels", Kinds.Free),
            Word("vent", "Diameter of the vent hole.", "vent 3 mm", Kinds.PositiveLength),
            Word("pot", "The least that is mixed at once for the seam, so that the scale can weigh it; what is over is left over.", "pot 25 g", Kinds.PositiveMass),
            Word("fillet", "Filler per length of seam.", "fillet 6 g/m", Kinds.LinearDensity),
            MaterialWords.Note,
            MaterialWords.Source,
        ]);

    private static WordSchema Step(string word, string doc, string example) =>
        Word(word, doc, example, Optional(Define.Value, Kinds.Free)).Repeatable();
}
