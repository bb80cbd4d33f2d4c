using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Recipe.Semantics.Schema;

/// <summary>
/// What the trade calls things for which the language has other words. A plain other word for one word of the language (<c>mold</c>) is no
/// matter of this table: that is a <see cref="WordSchema.Regional"/> word and is understood. Here stands what takes another line, or none.
/// </summary>
/// <remarks>The words are common practice. Each is looked up only where the language does not know it.</remarks>
public static class BenchWords
{
    private const string Stuff = "`made-of` names the stuff alone, and its shape stands in `surface`, as in ";

    /// <summary>The table, in the order of a day's work.</summary>
    public static ImmutableArray<BenchWord> All { get; } =
    [
        // The mould.
        .. On("mould, pattern", "made-of", Stuff + "`surface cylinder diameter 104 mm length 500 mm`", "", "tube", "tubing", "pipe", "rod", "bar"),
        .. On("mould, pattern", "made-of", Stuff + "`surface flat 400 mm x 300 mm`", "", "plate", "sheet", "board", "slab"),
        .. On("mould, pattern", "surface", "a tube is a `cylinder`; where the part is wrapped round it, the mould says `mandrel yes` too", "cylinder", "tube", "tubing", "pipe", "rod"),
        .. On("mould, pattern", "surface", "a plate is `flat`", "flat", "plate", "sheet", "rectangle", "panel"),
        .. On("mould, pattern", "surface", "a round plate is a `disc`", "disc", "circle", "round"),
        .. On("mould, pattern", "surface", "a dish that is part of a ball is a `spherical-cap`", "spherical-cap", "dome", "dish", "bowl"),

        // The plies.
        .. In(["plies", "plies of a variant"], "cloth laid on the bias is written `+/-45`", "+/-45", "bias", "on-bias", "on-the-bias", "diagonal"),
        .. In(["plies", "plies of a variant"], "how cloth lies is written as an angle: `0` along the part's axis", "0", "lengthwise", "lengthways"),
        .. In(["plies", "plies of a variant"], "how cloth lies is written as an angle: `90` across the part's axis", "90", "crosswise", "crossways"),
        .. In(["plies", "plies of a variant"], Cut("slit"), null, "kerfed", "kerf", "kerfs", "slit", "slits", "scored"),
        .. In(["plies", "plies of a variant"], Cut("perforated"), null, "drilled", "perforated"),
        .. In(["plies", "plies of a variant"], Cut("grooved"), null, "grooved"),
        .. In(["part", "variant"], "what is laid on the mould before the plies is a `coat`, as in `coat white-gel-coat 500 g/m2 wait 90 min`", null, "gel-coat", "gelcoat", "surface-coat"),

        // The bag.
        .. In(["bag"], "the film over all is `bag-film`", "bag-film", "vac-bag", "vacuum-film", "bag"),
        .. In(["bag"], "what the resin runs along is `flow-medium`", "flow-medium", "mesh", "flow-media", "resin-mesh", "distribution-medium", "distribution-media", "transfer-medium"),
        .. In(["bag"], "the line that feeds the resin stands in `infuse`: `feed-line length 420 mm`", null, "spiral", "spiral-tube", "spiral-hose", "feed", "feed-line", "feed-hose", "inlet"),
        .. In(["bag"], "the tape that seals the bag is `sealant-tape`", "sealant-tape", "sticky-tape", "seal-tape", "putty", "bag-putty", "mastic"),
        .. In(
            [],
            "the language has no word for a tape, tube or film that shrinks, and counts no pressure of it; say a bag, or lay the part by `hand` and write the tape into a `note`, as its maker's sheet has it",
            null,
            "shrink-tape", "heat-shrink-tape", "shrink-tube", "shrink-wrap", "shrink-film", "heat-shrink"),

        // The infusion and the vacuum.
        .. In(
            ["infuse"],
            "what feeds the resin, of whatever shape, is a `feed-line`, as in `feed-line length 420 mm diameter 8 mm`",
            null,
            "spiral", "spiral-tube", "spiral-hose", "omega", "omega-profile", "omega-tube", "feed", "feed-tube", "feed-hose", "feed-channel", "inlet", "resin-inlet", "resin-line", "runner"),
        .. In(["infuse"], "where the air leaves is `vent`, in words, as in `vent \"along the far edge\"`", null, "outlet", "vacuum-line", "vent-line", "air-outlet", "port"),
        .. In(["infuse"], "when the feed is shut is `clamp-feed`, in words, as in `clamp-feed \"at full wet\"`", null, "clamp", "clamp-off", "close-feed", "shut-feed"),
        .. In(["infuse"], "what the resin runs along is a layer of the bag: `flow-medium smaller 40 mm`", null, "mesh", "infusion-mesh", "flow-mesh", "flow-medium", "flow-media"),
        .. In(["vacuum"], "how fast it is to be drawn stands behind the level, as in `draw 40 mbar absolute within 15 min`", null, "within"),
        .. In(["vacuum"], "the level is `draw`, as in `draw 800 mbar below ambient`", null, "level", "pull", "pressure", "suck"),

        // The cure.
        .. Heats("lamp", "lamps", "heat-lamp", "heat-lamps", "heater", "fan-heater", "heat-mat", "heating-mat", "heat-blanket", "heating-blanket", "heated-blanket", "heat-gun", "hot-air-gun", "hot-box", "heat-box", "heat-tent"),
        .. In(["cure"], "getting warm is a `ramp`, staying warm a `hold`, and what heats is written `oven \"heat lamp\"`", null, "heat", "heat-up", "warm", "warm-up"),
        .. In(["cure"], "a wait is a `hold`, as in `hold room for 12 h`", null, "wait", "rest", "leave", "stand", "overnight"),
        .. In(["cure"], "the vacuum goes with `vent`", "vent", "vacuum-off", "pump-off"),
        .. In(["cure"], "the bag comes off with `debag`", "debag", "unbag", "de-bag", "bag-off"),
        .. In(["cure"], "the part comes off the mould with `demould`", "demould", "de-mould", "de-mold", "pull", "strip", "pop"),
        .. In(["cure"], "a post-cure is a `ramp` and a `hold`, behind `demould` when the part has left its mould by then", null, "post-cure", "postcure"),
        .. In(["part", "variant"], "a post-cure stands in `cure`: a `ramp` and a `hold`, behind `demould` when the part has left its mould by then", null, "post-cure", "postcure"),
        .. In(["cure", "part", "variant"], "the language knows the pressure of a vacuum only, and no autoclave", null, "autoclave"),
    ];

    private static readonly FrozenDictionary<string, ImmutableArray<BenchWord>> BySaid =
        All.GroupBy(word => word.Said, StringComparer.Ordinal).ToFrozenDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal);

    /// <summary>What is meant by a word in a block, or null when the table has nothing for it.</summary>
    /// <param name="said">The word as written; of several words, joined by hyphens.</param>
    /// <param name="block">The block, or null where none is known: then only what is meant so everywhere is found.</param>
    /// <param name="line">How the line begins; null when the word begins it.</param>
    public static BenchWord? Find(string said, BlockSchema? block, string? line)
    {
        ArgumentNullException.ThrowIfNull(said);
        return BySaid.TryGetValue(said.ToLowerInvariant(), out var known) ? known.FirstOrDefault(word => word.IsMeantIn(block, line)) : null;
    }

    private static string Cut(string cut) =>
        $"how a core is cut is said where it is declared, as in `core my-core like pvc-foam-75 {{ cut {cut} }}`; the ply list then says `core my-core`";

    private static IEnumerable<BenchWord> In(ImmutableArray<string> blocks, string answer, string? write, params ImmutableArray<string> said) =>
        said.Select(word => new BenchWord(word, answer) { Blocks = blocks, Write = write });

    private static IEnumerable<BenchWord> On(string block, string line, string answer, string write, params ImmutableArray<string> said) =>
        said.Select(word => new BenchWord(word, answer) { Blocks = [block], Line = line, Write = write });

    private static IEnumerable<BenchWord> Heats(params ImmutableArray<string> said) => said.Select(word =>
    {
        var written = $"oven \"{(word is "lamp" or "lamps" ? "heat " : "")}{word.Replace('-', ' ')}\"";
        return new BenchWord(word, $"what heats is written `{written}`, and how warm it makes the part stands in `ramp` and `hold`") { Blocks = ["cure"], Write = written };
    });
}
