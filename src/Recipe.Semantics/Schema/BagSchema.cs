using System.Collections.Immutable;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>The bag, from the part outwards.</summary>
internal static class BagSchema
{
    /// <summary>The words of the layers, which are also the words that declare their materials.</summary>
    public static readonly ImmutableArray<string> LayerWords =
        ["peel-ply", "release-film", "bleeder", "breather", "bag-film", "flow-medium", "caul"];

    /// <summary>The words of the things that are not layers.</summary>
    public static readonly ImmutableArray<string> PlacedWords = ["sealant-tape", "hose", "port", "catch-pot"];

    private static readonly ImmutableArray<LinePart> LayerOptions =
    [
        Times("layers of it"),
        Flag("perforated", "a release film with holes"),
        Flag("solid", "a release film without holes"),
        Flag("reused", "it was used before"),
        Clause("smaller", Kinds.Length, "how much smaller than the layer below, all round; of a flow medium, how far inside the ply edge it ends"),
        Clause("beyond", Kinds.Length, "how far past the ply edge"),
    ];

    public static readonly BlockSchema Block = new(
        "bag",
        "The bag, from the part outwards.",
        [
            Layer("peel-ply", "The ply that comes off.", "peel-ply", "tear-ply"),
            Layer("release-film", "The film that keeps what is above it from sticking.", "release-film perforated", "parting-film", "separator"),
            Layer("bleeder", "The layer that takes resin.", "bleeder x2", "blotter", "bleeder-ply"),
            Layer("breather", "The layer that takes air.", "breather x2", "breather-felt", "wadding"),
            Layer("bag-film", "The film that closes the bag.", "bag-film", "bagging-film", "vacuum-bag"),
            Layer("flow-medium", "The layer that carries resin.", "flow-medium smaller 25 mm", "flow-mesh", "infusion-mesh"),
            Layer("caul", "A pressure plate or sheet.", "caul", "caul-plate", "caul-sheet"),
            Placed("sealant-tape", "The tape that seals the bag.", "sealant-tape", "tacky-tape", "gum-tape", "bag-tape"),
            Word(
                "port",
                "A fitting through the bag.",
                "port sits breather at flange",
                Optional("material", Kinds.Material("a port", ["port"])),
                Clause("sits", Kinds.OneOf("what it sits on", ("breather", "a pad or strip of breather"), ("part", "the part, inside the trim line"), ("flange", "the bare flange"), ("feed", "the feed or vacuum line of an infusion")), "what it sits on"),
                Clause("at", Kinds.Free, "its place, kept as written")).Repeatable() with
            { Regional = ["vacuum-connector"], Default = "the book's" },
            Placed("hose", "The vacuum hose.", "hose", "tube", "pipe"),
            Placed("catch-pot", "The pot that keeps resin out of the pump.", "catch-pot", "resin-trap", "resin-pot"),
            Word("gauge", "Where the gauge reads.", "gauge at far side", Clause("at", Kinds.Free, "the place")).Also("gage"),
            Word("pleats", "Number of pleats.", "pleats 4", Kinds.CountFromZero).Also("tucks"),
            Word("envelope", "Whether the bag goes round the whole mould.", "envelope yes", Kinds.YesNo).Otherwise("no"),
            Word("time", "Time to close the bag.", "time 15 min", Kinds.Time),
            MaterialWords.Note,
            MaterialWords.Source,
        ])
    {
        IsOrdered = true,
        NameHead = Kinds.Material("a material of the bag", [.. LayerWords, .. PlacedWords]),
        NameLine = new("NAME", "A layer named by its material.", new LinePattern([.. LayerOptions, Clause("at", Kinds.Free, "its place, kept as written")]), "breather-150 x2"),
    };

    private static WordSchema Layer(string word, string doc, string example, params ReadOnlySpan<string> regional) =>
        new(word, doc, new LinePattern([Optional("material", Kinds.Material($"a {word}", [word])), .. LayerOptions]), example)
        {
            IsRepeatable = true,
            Regional = [.. regional],
            Default = "the book's",
        };

    private static WordSchema Placed(string word, string doc, string example, params ReadOnlySpan<string> regional) =>
        Word(word, doc, example, Optional("material", Kinds.Material($"a {word}", [word])), Clause("at", Kinds.Free, "its place, kept as written")) with
        {
            Regional = [.. regional],
            Default = "the book's",
        };
}
