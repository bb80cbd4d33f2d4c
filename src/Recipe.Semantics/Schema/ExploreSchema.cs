using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Exploring: what may be chosen in a part, what it has to keep, what is wanted of it.</summary>
internal static class ExploreSchema
{
    private static readonly ClausePattern Steps = Clause("steps", new CountKind("a whole number", 2), "how many values of a range are tried, both ends among them");

    private static readonly WordSchema Choose = new("choose", "Something that may be one way or another.", LinePattern.Bare, "choose material body glass-twill-163 glass-twill-280")
    {
        IsRepeatable = true,
        IsRequired = true,
        Forms =
        [
            new("material", "what a line is made of", new LinePattern(Arg("ply", Kinds.Ply), Many(Kinds.StackMaterial)), "choose material body glass-twill-163 glass-twill-280"),
            new("orientation", "how a ply lies", new LinePattern(Arg("ply", Kinds.Ply), Many(new OrientationKind())), "choose orientation body 0/90 +/-45"),
            new("repeats", "how often a line is laid; 0 leaves it out", new LinePattern(Arg("ply", Kinds.Ply), Many(Kinds.CountFromZero)), "choose repeats veil 0 1 2"),
            new("thickness", "how thick a core is", new LinePattern(Arg("ply", Kinds.Ply), Many(Kinds.PositiveLength with { TakesRange = true }), Steps), "choose thickness stiff 3 mm 5 mm 8 mm"),
            new("insert", "whether there is one more line", PlySchema.InsertedLine, "choose insert stiffener glass-twill-163 0/90 after body"),
            new("resin", "the resin", new LinePattern(Many(Kinds.Resin)), "choose resin slow-laminating-epoxy laminating-epoxy"),
            new("hardener", "which of the resin's hardeners", new LinePattern(Many(new AnyWordKind("the name of a hardener"))), "choose hardener slow fast"),
            new("resin-content", "resin content as laid", new LinePattern(Arg(Define.Value, new ContentRangeKind()), Steps), "choose resin-content 38 to 46 % by weight steps 5"),
            new("laminators", "pairs of hands", new LinePattern(Many(Kinds.Count)), "choose laminators 1 2"),
            new("room", "room temperature", new LinePattern(Many(Kinds.TemperatureRange), Steps), "choose room 18 degC 22 degC"),
            new("part", "the part or variant that all other choices are made in", new LinePattern(Many(Kinds.Part)), "choose part hatch-lid hatch-lid-no-veil"),
        ],
    };

    private static readonly WordSchema Limit = new("limit", "What a figure of a candidate must keep.", LinePattern.Bare, "limit mass at-most 150 g")
    {
        IsRepeatable = true,
        Forms =
        [
            .. FigureWords.All.Select(figure => new LineForm(
                figure.Word, figure.Doc, new LinePattern(Clause("at-least", figure.Kind, "no less than this"), Clause("at-most", figure.Kind, "no more than this")), $"limit {figure.Word} {figure.Example}")),
        ],
    };

    private static readonly WordSchema Want = new("want", "A figure that there should be little or much of; what is best in one is seldom best in another.", LinePattern.Bare, "want least mass")
    {
        IsRepeatable = true,
        IsRequired = true,
        Forms =
        [
            new("least", "as little as can be", new LinePattern(Arg("figure", Figures)), "want least mass"),
            new("most", "as much as can be", new LinePattern(Arg("figure", Figures)), "want most bending-along"),
        ],
    };

    public static readonly WordSchema Explore = Word(
        "explore",
        "Tries every way to make some choices in a part, and shows those that no other beats in all that is wanted.",
        "explore lighter-lid of hatch-lid { choose repeats veil 0 1; want least mass }",
        Arg("name", Kinds.NewName(NameKind.Study)),
        Needs("of", Kinds.Part, "the part it starts from")) with
    {
        Block = new BlockSchema("explore", "The choices, the limits and what is wanted. Every way to make all choices is one candidate.", [MaterialWords.Title, Choose, Limit, Want, MaterialWords.Note])
        {
            IsOrdered = true,
        },
        NeedsBlock = true,
        IsRepeatable = true,
    };

    private static ChoiceKind Figures => new("a figure", [.. FigureWords.All.Select(figure => new Choice(figure.Word, figure.Doc))]);

    private static ArgumentPattern Many(ValueKind kind) => Arg(kind) with { IsRepeated = true };
}
