using System.Collections.Immutable;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Parts and variants.</summary>
internal static class PartSchema
{
    /// <summary>A waiver, in a part or at the top level.</summary>
    public static readonly WordSchema Accept = Word(
        "accept",
        "Accepts a finding, with the reason and the day the waiver lapses.",
        "accept RC6004 because \"small bag, gauge on the far side\" until 2027-01-01",
        Arg("code", new AnyWordKind("the code or name of a finding")),
        Clause("because", Kinds.Text, "the reason"),
        Clause("until", Kinds.Date, "the day it lapses")).Repeatable();

    /// <summary>A load that the stack is compared with.</summary>
    public static readonly WordSchema Load = Word(
        "load",
        "A load that the stack is compared with: a pull for each width, or a strip on two supports with a weight in its middle.",
        "load bench along   strip 25 mm   span 200 mm   carries 2 kg",
        Arg("name", new AnyWordKind("a name for the load")),
        Arg("direction", Kinds.OneOf("a direction", ("along", "the part's 0 degrees"), ("across", "90 degrees to that"))),
        Clause("pull", Kinds.Pull, "pull for each unit of width"),
        Clause("strip", Kinds.PositiveLength, "width of the strip"),
        Clause("span", Kinds.PositiveLength, "distance of its supports"),
        Clause("carries", Kinds.Weight, "what hangs in its middle")) with
    { IsRepeatable = true, NameIsKey = true };

    /// <summary>The processes.</summary>
    public static readonly ChoiceKind Processes = new(
        "a process",
        [
            new("hand", "brush and roller, no bag") { Regional = ["wet-lay-up", "hand-lay-up", "hand-laminated"] },
            new("bagged", "wet lay-up under a vacuum bag") { Regional = ["bag", "vacuum-bag", "vacuum-bagged", "vacuum-bagging"] },
            new("infused", "dry lay-up, resin drawn in by vacuum") { Regional = ["infusion", "vacuum-infusion", "resin-infusion"] },
            new("prepreg", "pre-impregnated cloth under vacuum") { Regional = ["pre-preg"] },
        ]);

    private static readonly ImmutableArray<WordSchema> Head =
    [
        MaterialWords.Title,
        Word("mould", "The mould.", "mould hatch-lid-mould", Kinds.Mould).Also("mold", "tool", "tooling"),
        Word("process", "How it is made.", "process bagged", Processes).Otherwise("computed from the blocks"),
        Word("resin", "The resin, and which of its hardeners.", "resin slow-laminating-epoxy", Arg(Kinds.Resin), Clause("with", new AnyWordKind("the name of a hardener"), "which of its hardeners")),
        Word("target", "Target mass of the trimmed part.", "target mass 140 g +/- 10 g", Needs("mass", Kinds.MassAndTolerance, "the mass")),
        Word("quantity", "How many are made.", "quantity 4", Kinds.Count).Otherwise("1"),
        Word("trim", "How far plies run past the trim line.", "trim 15 mm", Kinds.Length),
        Word("overlap", "Where two pieces of one ply meet.", "overlap 20 mm", Kinds.Length),
        Word("service", "The hottest the part gets in use.", "service 55 degC", Kinds.Temperature),
        Word("use", "What it is for.", "use cosmetic", Kinds.OneOf(
            "a use",
            ("cosmetic", "looks only"),
            ("structural", "carries load"),
            ("flying", "flies: defer to licensed practice"))),
        Word("outdoors", "Whether it lives outdoors.", "outdoors yes", Kinds.YesNo),
        Word("colour", "How dark it is in use.", "colour dark", Kinds.OneOf("white, light or dark", ("white", "white or nearly"), ("light", "light"), ("dark", "black, deep blue or red, bare carbon"))).Also("color"),
        Word("stagger", "How far the join lines of one ply lie from those of the next.", "stagger 40 mm", Kinds.Length),
        Word("coat", "A coat on the mould before the plies.", "coat white-gel-coat 500 g/m2", Arg("material", Kinds.CoatMaterial), Optional(Define.Value, Kinds.PositiveArealWeight), Clause("wait", Kinds.Time, "from this coat to what comes on it")).Repeatable(),
        Word("axis", "Which way 0 degrees runs, in words.", "axis \"0 degrees runs along the hinge line\"", Kinds.Text),
        Load,
        MouldSchema.Surface with { Doc = "A surface of its own, when it is not the mould's.", Default = "the mould's" },
        ShapeWords.Region with { Doc = "What the part covers of its surface or its mould's; of several lines, what all of them keep." },
        ShapeWords.Drape,
    ];

    private static readonly ImmutableArray<WordSchema> Blocks =
    [
        Word("wet-out", "Wetting out.", "wet-out { room 20 degC }").WithBlock(WetOutSchema.Block).Also("wetout"),
        Word("mix", "How a pot is mixed, in order.", "mix { add resin }").WithBlock(MixSchema.Block),
        Word("prepreg", "How the prepreg is handled.", "prepreg { thaw 12 h sealed }").WithBlock(MixSchema.Prepreg),
        Word("bag", "The bag, from the part outwards.", "bag { peel-ply }").WithBlock(BagSchema.Block).Also("bagging"),
        Word("infuse", "Infusion.", "infuse { path 300 mm }").WithBlock(VacuumSchema.Infuse).Also("infusion"),
        Word("vacuum", "Vacuum.", "vacuum { draw 25 inHg below ambient }").WithBlock(VacuumSchema.Vacuum),
        Word("cure", "The cure, down the page.", "cure { hold 20 degC for 12 h }").WithBlock(CureSchema.Block),
        Word("finish", "Finishing, in order.", "finish { trim }").WithBlock(FinishSchema.Finish),
        Word("join", "The join of halves or parts.", "join { manner wet-in-wet }").WithBlock(FinishSchema.Join),
        Accept,
        MaterialWords.Note,
        MaterialWords.Source,
    ];

    private static readonly ImmutableArray<string> StackWords = ["layup", "lay-up", "schedule", "stack", "layers", "laminate", "lamina"];

    public static readonly WordSchema Part = Word("part", "A part: what is laid, wetted, bagged, cured and finished.", "part hatch-lid { mould hatch-lid-mould }", Arg("name", Kinds.NewName(NameKind.Part))) with
    {
        Block = new BlockSchema(
            "part",
            "A part.",
            [.. Head, Word("plies", "The ply list; the first line lies on the mould.", "plies { body glass-twill-163 +/-45 }").WithBlock(PlySchema.Plies) with { Regional = StackWords }, .. Blocks]),
        NeedsBlock = true,
        IsRepeatable = true,
        Regional = ["component"],
    };

    public static readonly WordSchema Variant = Word(
        "variant",
        "The same part with some lines changed.",
        "variant hatch-lid-no-veil of hatch-lid { plies { remove veil } }",
        Arg("name", Kinds.NewName(NameKind.Part)),
        Needs("of", Kinds.Part, "the part it comes from")) with
    {
        Block = new BlockSchema(
            "variant",
            "Lines that differ: an entry replaces the entry of the same word.",
            [.. Head, Word("plies", "Edits of the ply list by name.", "plies { remove veil }").WithBlock(PlySchema.Edits) with { Regional = StackWords }, .. Blocks]),
        NeedsBlock = true,
        IsRepeatable = true,
    };
}
