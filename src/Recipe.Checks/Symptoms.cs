using System.Collections.Immutable;

namespace Recipe.Checks;

/// <summary>What somebody sees at the bench, and the findings that speak of what may have caused it. It leads a reader to a check; it is no diagnosis. Common practice.</summary>
public static class Symptoms
{
    /// <summary>Words that somebody would search for, and names of findings, the likeliest first.</summary>
    public static ImmutableArray<(string Seen, ImmutableArray<string> Findings)> All { get; } =
    [
        ("The part sticks in the mould; will not come off", ["no-release", "few-wax-coats", "wax-coats-too-close", "wax-still-soft", "film-without-wax", "releases-mixed", "first-pulls-unshielded", "too-many-pulls", "green-mould", "half-not-released", "release-too-hot", "locked-in", "no-draft", "no-way-to-pull"]),
        ("Sticky, soft, tacky, not cured", ["wrong-cure-agent", "mix-incomplete", "mixed-in-haste", "odd-hardener-share", "hardener-outweighs-resin", "ratio-without-basis", "scale-too-coarse", "too-cold-to-cure", "cold-night", "short-dwell", "accelerated-twice", "too-much-pigment", "thinned-resin", "expired-stock"]),
        ("A greasy or white film on the cured face (blush)", ["blush-left", "damp-fibre", "sweating-mould", "cold-night"]),
        ("White patches, dry spots, starved cloth", ["bleeds-dry", "drier-than-hands", "bag-after-film-life", "pot-dies-first", "batches-short", "cold-resin", "fill-slower-than-gel", "long-flow-path", "tight-weave-infused", "feed-out-of-reach", "content-out-of-reach", "wrong-sizing", "mesh-reaches-vacuum", "solid-film-blocks-bleed"]),
        ("Pinholes, bubbles, voids", ["pinholes-expected", "weak-vacuum", "no-leak-check", "leak-limit-too-loose", "air-under-core", "styrene-boils", "damp-core", "core-outgases", "no-debulk", "sealed-edges", "small-reserve", "vacuum-off-early", "mould-too-hot"]),
        ("The bag leaks; the gauge falls; no vacuum", ["leaky-mould", "released-tape-land", "flange-too-narrow", "no-pleats", "bag-film-too-narrow", "film-short-of-tape", "film-short-of-pleats", "dry-nylon", "old-tape", "leak-check-not-isolated", "leak-check-too-short", "no-settling", "gauge-at-pump", "gauge-unchecked", "pump-too-small", "more-vacuum-than-air", "vacuum-beyond-pump", "hose-collapses", "pump-may-stop"]),
        ("Cloth bridges a corner, wrinkles, will not lie down", ["corner-too-sharp", "bag-bridges-corner", "cloth-too-stiff", "cloth-locks", "no-pleats", "pulled-at-once"]),
        ("Too heavy, resin-rich, pools", ["left-too-wet", "mixed-too-much", "solid-film-blocks-bleed", "felt-soaks", "target-out-of-reach", "never-weighed", "weighed-before-trim"]),
        ("Too light, too thin", ["bleeds-dry", "target-out-of-reach", "thickness-disagrees"]),
        ("The pot gets hot, smokes, goes off early", ["pot-too-big", "runaway-pot", "pot-dies-first", "stirs-away-life", "odd-pot-life", "leftover-in-bin", "laminate-heats-itself"]),
        ("The bag is not on before the resin goes off; the day is too short", ["bag-after-film-life", "bag-closed-in-no-time", "shop-closes-first", "too-many-plies-wet", "seam-closed-late"]),
        ("Bag materials stuck to the part; peel ply will not come off", ["nothing-under-bag", "felt-on-laminate", "bare-flow-medium", "film-under-peel-ply", "bag-upside-down", "caul-sticks", "peel-ply-left-on", "polyethylene-in-oven", "bag-too-hot"]),
        ("Warped, twisted, bowed", ["unsymmetric-flat", "unbalanced-angles", "copied-not-mirrored", "cooled-too-fast", "heated-too-fast", "pulled-hot", "unsupported-post-cure", "oven-ahead-of-part"]),
        ("Weave, cells or core edges show through (print-through)", ["cell-print", "dark-paint-before-heat", "square-core-edge", "open-core-joints", "gel-coat-film", "softens-in-use"]),
        ("Sags or softens in the sun or beside a lamp", ["softens-in-use", "dark-skin-uncured", "dark-paint-before-heat", "transition-above-limit"]),
        ("Gel coat wrinkles, peels, comes off", ["gel-coat-film", "gel-coat-timed", "polyester-on-epoxy", "laminate-on-wax"]),
        ("Fisheyes; paint or glue does not hold", ["silicone-before-paint", "release-left-on-face", "blush-left", "no-key-for-bond", "coated-peel-ply-bonded", "joint-not-keyed"]),
        ("Plies, skin or core come apart (delaminated)", ["bare-core-face", "no-key-for-bond", "mat-with-epoxy", "wrong-sizing", "short-join-overlap", "vacuum-crushes-core", "damp-core", "core-too-hot"]),
        ("A joint opens; halves do not meet", ["short-lap", "seam-without-lap", "seam-closed-late", "seam-shorter-than-rim", "narrow-seam-tape", "tape-wider-than-roll", "thick-bond-line", "neat-seam", "no-alignment", "halves-unequal", "sealed-hollow-heated"]),
        ("Rust, white bloom or loose fasteners in carbon", ["carbon-on-metal", "bare-hole", "drilled-core"]),
        ("Itch, rash, headache, fumes, dust", ["no-gloves", "latex-gloves", "styrene-unvented", "dry-dust", "dust-in-the-air", "green-dust", "spray-without-air", "oil-mist-indoors"]),
        ("Fire, peroxide, ovens", ["peroxide-meets-accelerator", "peroxide-beside-accelerator", "runaway-pot", "leftover-in-bin", "spills-on-sawdust", "solvents-by-heat", "unattended-heat", "sun-as-oven"]),
        ("Ran out of something in the middle", ["not-enough-on-shelf", "batches-short", "small-reserve", "pieces-do-not-fit-roll", "wider-than-roll"]),
    ];
}
