using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Mixing a pot, and handling what comes mixed.</summary>
internal static class MixSchema
{
    public static readonly BlockSchema Block = new(
        "mix",
        "How a pot is mixed, in order.",
        [
            Word(
                "add",
                "What goes into the pot next.",
                "add pigment parts 3",
                Arg("what", Kinds.OneOf(
                    "a thing to add",
                    ("resin", "the resin"),
                    ("hardener", "the hardener, or the peroxide"),
                    ("accelerator", "what makes the peroxide work"),
                    ("filler", "powder that thickens"),
                    ("pigment", "colour"),
                    ("solvent", "thinner"))),
                Clause("parts", new NumberKind("a plain number", 0, 1000), "parts to 100 of resin, by weight")).Repeatable(),
            Word("stir", "How long it is stirred.", "stir 3 min", Kinds.Time).Repeatable(),
            Word("scrape", "Scrapes sides, corners and stick.", "scrape").Repeatable(),
            Word("second-cup", "Pours it into a clean second cup and stirs again.", "second-cup"),
            Word("cup", "What it is mixed in.", "cup clean", Kinds.OneOf("a cup", ("clean", "clean plastic or unwaxed paper"), ("waxed", "waxed paper"), ("foam", "plastic foam"))),
            Word("sample", "Keeps a blob of each pot in a labelled cup.", "sample"),
            MaterialWords.Note,
            MaterialWords.Source,
        ])
    {
        IsOrdered = true,
    };

    public static readonly BlockSchema Prepreg = new(
        "prepreg",
        "How the prepreg is handled.",
        [
            Word("freezer", "How cold it is stored.", "freezer -18 degC", Kinds.Temperature),
            Word("thaw", "How long it warms up, and whether in its sealed wrap.", "thaw 12 h sealed", Arg(Kinds.Time), Flag("sealed", "in its sealed wrap"), Flag("unwrapped", "out of its wrap")),
            Word("out-time", "Time out of the freezer so far, all times together.", "out-time 5 d", Kinds.Time),
            Word("debulk", "Vacuum on the stack while it is laid.", "debulk every 3 for 15 min", Needs("every", Kinds.Count, "after so many plies"), Clause("for", Kinds.Time, "how long each time")),
            Word("edges", "How air leaves at the edges.", "edges breathing", Kinds.OneOf("breathing or sealed", ("breathing", "dams that let air out"), ("sealed", "dams that let no air out"))),
            MaterialWords.Note,
            MaterialWords.Source,
        ]);
}
