using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Vacuum and infusion.</summary>
internal static class VacuumSchema
{
    private static readonly LinePart[] Check =
    [
        Arg(Kinds.Time),
        Clause("rise at-most", Kinds.Pressure, "the rise of absolute pressure that is still accepted"),
        Flag("isolated", "the bag is shut off from the pump"),
    ];

    public static readonly BlockSchema Vacuum = new(
        "vacuum",
        "Vacuum: level, test, hold.",
        [
            Word("draw", "The level to draw.", "draw 25 inHg below ambient within 10 min", Arg(new VacuumKind()), Clause("within", Kinds.Time, "time to reach it")),
            Word("settle", "Time to let it settle before the test.", "settle 3 min", Kinds.Time),
            Word("leak-check", "Shut off, wait, read.", "leak-check 5 min rise at-most 30 mbar isolated", Check).Also("drop-test", "leak-test", "leak-down"),
            Word("hold", "How long the vacuum is held.", "hold 12 h", Kinds.Time),
            Word("off", "When it comes off, in words.", "off after gel", Kinds.Free),
            MaterialWords.Note,
            MaterialWords.Source,
        ]);

    public static readonly BlockSchema Infuse = new(
        "infuse",
        "Infusion: feed, path, clamp, test.",
        [
            Word("feed-line", "Length and bore of one feed line.", "feed-line length 400 mm", Clause("length", Kinds.PositiveLength, "its length"), Clause("diameter", Kinds.PositiveLength, "its inner diameter")),
            Word("feed-lines", "Number of feed lines; of each half where the mould has halves.", "feed-lines 2", Kinds.Count),
            Word("degas", "How long the mixed resin stands under vacuum first.", "degas 8 min", Kinds.Time),
            Word("vent", "Where the vent is, in words.", "vent ring at rim", Kinds.Free),
            Word("path", "The longest way the resin flows.", "path 300 mm", Kinds.PositiveLength),
            Word("resin-temperature", "Temperature of the resin.", "resin-temperature 25 degC", Kinds.Temperature),
            Word("mould-temperature", "Temperature of the mould.", "mould-temperature 25 degC", Kinds.Temperature).Also("mold-temperature"),
            Word("clamp-feed", "When to clamp the feed, in words.", "clamp-feed \"at full wet\"", Kinds.Free),
            Word("reserve", "Resin kept in reserve in the feed pot.", "reserve 20 %", Kinds.Spare),
            Word("drop-test", "The test before the feed opens.", "drop-test 5 min rise at-most 34 mbar", Check).Also("leak-test"),
            MaterialWords.Note,
            MaterialWords.Source,
        ]);
}
