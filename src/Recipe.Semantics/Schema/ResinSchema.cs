using System.Collections.Immutable;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Resins, gel coats, surface coats and adhesives with their hardeners.</summary>
internal static class ResinSchema
{
    private static readonly BlockSchema KineticsBlock = new(
        "kinetics",
        "Constants of the cure model, each by its name.",
        MaterialWords.Source)
    {
        NamesOnce = true,
        NameHead = new NewNameKind("the name of a constant", NameKind.Value),
        NameLine = Word("NAME", "A constant of the model with its unit.", "order 1.5", new AnyQuantityKind()),
    };

    /// <summary>What a hardener decides, and a resin that has one hardener only.</summary>
    private static readonly ImmutableArray<WordSchema> CureWords =
    [
        Word("mix", "Parts of resin to parts of hardener.", "mix 100:30 by weight", new MixKind()).Also("mix-ratio", "ratio"),
        Word(
            "density",
            "Density of the liquid resin, of the liquid hardener, of the cured resin.",
            "density resin 1.13 g/cm3",
            Optional("of", Kinds.OneOf(
                "resin, hardener or cured",
                ("resin", "the liquid resin"),
                ("hardener", "the liquid hardener"),
                ("cured", "the mix when cured"))),
            Arg(Kinds.Density)) with
        { OncePerFirstWord = true },
        Word("viscosity", "Viscosity of the mix, just mixed.", "viscosity 600 mPa.s at 25 degC", Arg(Kinds.Viscosity), Clause("at", Kinds.Temperature, "temperature it was measured at")),
        Word(
            "pot-life",
            "How long a mixed pot can be used.",
            "pot-life 60 min at 23 degC in 100 g",
            Arg(Kinds.LongTime),
            Needs("at", Kinds.Temperature, "temperature it holds at"),
            Clause("in", Kinds.PositiveMass, "mass mixed at once")).Also("working-life", "working-time"),
        Word("film-life", "How long a thin film on the part stays workable.", "film-life 150 min at 23 degC", Arg(Kinds.LongTime), Needs("at", Kinds.Temperature, "temperature it holds at"))
            .Also("open-time"),
        Word("gel-time", "When a thin laminate gels.", "gel-time 5 h at 23 degC", Arg(Kinds.LongTime), Needs("at", Kinds.Temperature, "temperature it holds at"), Clause("in", Kinds.PositiveMass, "mass mixed at once")),
        Word("minimum-temperature", "The coldest it still cures at.", "minimum-temperature 15 degC", Kinds.Temperature),
        Word("demould", "When the part may leave the mould.", "demould 24 h at 20 degC", Arg(Kinds.LongTime), Needs("at", Kinds.Temperature, "temperature it holds at")).Also("demold"),
        Word("full-cure", "When it has its full strength.", "full-cure 7 d at 20 degC", Arg(Kinds.LongTime), Needs("at", Kinds.Temperature, "temperature it holds at")),
        Word("post-cure", "Recommended post-cure.", "post-cure 50 degC for 16 h", Arg(Kinds.Temperature), Needs("for", Kinds.LongTime, "how long")).Also("postcure"),
        Word(
            "glass-transition",
            "Glass transition temperature after a named cure.",
            "glass-transition 55 degC after 20 degC for 24 h",
            Arg(Kinds.Temperature),
            Clause("after", Kinds.Temperature, "temperature of that cure"),
            Clause("for", Kinds.LongTime, "length of that cure")).Also("tg"),
        Word("glass-transition-limit", "The highest glass transition the system can reach.", "glass-transition-limit 85 degC", Kinds.Temperature),
        Word("largest-pot", "The largest mass to mix at once in a cup.", "largest-pot 150 g", Kinds.PositiveMass),
        Word("heat-of-reaction", "Heat set free by the cure.", "heat-of-reaction 450 J/g", Kinds.SpecificEnergy),
        Word("kinetics", "Constants of a cure model.", "kinetics kamal-sourour { order 1.5 }", new AnyWordKind("the name of the model")).WithBlock(KineticsBlock),
    ];

    private static readonly BlockSchema HardenerBlock = new(
        "hardener",
        "The lines that hold when the part says `resin X with NAME`.",
        [.. CureWords, MaterialWords.Title, MaterialWords.Note, Word("hazard", "A hazard line for the papers.", "hazard \"corrosive: gloves and goggles\"", Kinds.Text).Repeatable(), MaterialWords.Source]);

    private static readonly BlockSchema ResinBlock = MaterialWords.Block(
        "resin, gel-coat, surface-coat, adhesive",
        "A liquid that cures.",
        [
            Word("chemistry", "How it cures.", "chemistry epoxy", new ChoiceKind("a chemistry",
            [
                new("epoxy", "resin and amine hardener"),
                new("polyester", "styrenated, cured by peroxide"),
                new("vinylester", "styrenated, cured by peroxide") { Regional = ["vinyl-ester"] },
                new("phenolic", "cured on heating"),
            ])),
            Word("cures-with", "What makes it cure.", "cures-with amine", Kinds.OneOf("a cure agent", ("amine", "amine hardener"), ("anhydride", "anhydride hardener, on heating"), ("peroxide", "organic peroxide"), ("heat", "heat alone"))),
            Word("waxed", "Whether wax rises to its surface so that it cures hard in air.", "waxed no", Kinds.YesNo),
            Word("pre-accelerated", "Whether the accelerator is in it already.", "pre-accelerated yes", Kinds.YesNo),
            .. CureWords,
            Word("modulus", "Modulus when cured.", "modulus 3 GPa", Kinds.Modulus),
            Word("poisson", "Poisson's ratio when cured.", "poisson 0.35", Kinds.Poisson),
            Word("expansion", "Thermal expansion when cured.", "expansion 60 ppm/K", Kinds.Expansion),
            Word("shrinkage", "Shrinkage by volume on curing.", "shrinkage 5 %", Kinds.Share),
            Word("film", "Wet coat mass per area (coats).", "film 500 g/m2", Kinds.PositiveArealWeight),
            Word("thickness", "Bond line thickness (adhesives).", "thickness 0.3 mm", Kinds.PositiveLength),
            Word(
                "filler",
                "What thickens it at the bench, stirred in last and weighed.",
                "filler \"cotton flock and silica\" parts 8",
                Arg(Kinds.Text),
                Clause("parts", new NumberKind("a plain number", 0, 1000), "parts to 100 of resin, by weight")),
            Word("hardener", "A hardener of its own: its lines replace the resin's.", "hardener fast { mix 100:30 by weight }", Arg("name", Kinds.NewName(NameKind.Hardener)))
                .WithBlock(HardenerBlock)
                .Also("catalyst", "curing-agent", "activator") with
            { IsRepeatable = true, NameIsKey = true },
        ]);

    public static readonly WordSchema Resin = MaterialWords.Declaration(
        "resin", "A laminating resin.", ResinBlock, "resin my-epoxy like slow-laminating-epoxy { pot-life 45 min at 23 degC in 100 g }");

    public static readonly WordSchema GelCoat = MaterialWords.Declaration(
        "gel-coat", "A coat on the mould, usually polyester.", ResinBlock, "gel-coat white-gel-coat { film 500 g/m2 }") with
    { Regional = ["gelcoat"] };

    public static readonly WordSchema SurfaceCoat = MaterialWords.Declaration(
        "surface-coat", "A coat on the mould, usually epoxy.", ResinBlock, "surface-coat clear-coat { film 300 g/m2 }") with
    { Regional = ["surfacecoat"] };

    public static readonly WordSchema Adhesive = MaterialWords.Declaration(
        "adhesive", "Joins parts.", ResinBlock, "adhesive paste-epoxy { thickness 0.3 mm }") with
    { Regional = ["glue"] };
}
