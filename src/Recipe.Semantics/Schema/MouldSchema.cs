using System.Collections.Immutable;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Moulds, patterns, what they are made of and what keeps the part from sticking to them.</summary>
internal static class MouldSchema
{
    /// <summary>The shapes that a surface can have.</summary>
    public static readonly WordSchema Surface = new(
        "surface",
        "The surface to lay on (of one half, when there are halves).",
        LinePattern.Bare,
        "surface spherical-cap diameter 300 mm rise 40 mm")
    {
        Forms =
        [
            new("flat", "flat rectangle", new(Arg(Kinds.Rectangle)), "surface flat 400 mm x 300 mm"),
            new("disc", "flat disc", new(Needs("diameter", Kinds.PositiveLength, "diameter")), "surface disc diameter 200 mm"),
            new("cylinder", "curved face of a cylinder", new(Needs("diameter", Kinds.PositiveLength, "diameter"), Needs("length", Kinds.PositiveLength, "length")), "surface cylinder diameter 150 mm length 900 mm"),
            new("cone", "curved face of a cone or frustum", new(Needs("diameter", Kinds.Length with { TakesRange = true, NeedsRange = true, RangeRunsEitherWay = true }, "both diameters"), Needs("length", Kinds.PositiveLength, "length along the axis")), "surface cone diameter 120 mm to 0 mm length 200 mm"),
            new("spherical-cap", "cap of a sphere", new(Needs("diameter", Kinds.PositiveLength, "diameter of the rim"), Needs("rise", Kinds.PositiveLength, "height of the cap")), "surface spherical-cap diameter 300 mm rise 40 mm"),
            new("half-ellipsoid", "half an ellipsoid: footprint length x width, then depth", new(Arg(Kinds.Block)), "surface half-ellipsoid 400 mm x 200 mm x 60 mm"),
            new("paraboloid", "paraboloid of revolution", new(Needs("diameter", Kinds.PositiveLength, "diameter of the rim"), Needs("rise", Kinds.PositiveLength, "depth")), "surface paraboloid diameter 400 mm rise 60 mm"),
            new("box", "open box: floor and four walls", new(Arg(Kinds.Block)), "surface box 200 mm x 120 mm x 60 mm"),
            new("mesh", "a surface of triangles from a file of the drawing or the scan", new(Arg(Kinds.Text), Clause("unit", ShapeWords.Unit, "what a 1 in the file means"), Clause("laid-on", ShapeWords.Side, "the side of the triangles that cloth is laid on")), "surface mesh \"lid.stl\" unit mm"),
            new("revolved", "a profile turned about an axis", new(Clause("arc", Kinds.Angle with { AtLeast = null, MoreThan = 0, AtMost = 2 * Math.PI }, "how far it is turned; a whole turn when not said")), "surface revolved { point radius 0 mm height 0 mm; point radius 80 mm height 30 mm }"),
            new("swept", "a section drawn along a path", LinePattern.Bare, "surface swept { section across 0 mm height 0 mm; section across 60 mm height 10 mm; path along 0 mm height 0 mm; path along 900 mm height 40 mm }"),
            new("area", "any surface whose area was measured", new(Arg(Kinds.Area), Clause("length", Kinds.PositiveLength, "developed length"), Clause("width", Kinds.PositiveLength, "developed width"), Clause("depth", Kinds.PositiveLength, "depth")), "surface area 0.42 m2 length 900 mm width 500 mm"),
        ],
        Block = ShapeWords.Profile,
    };

    private static readonly BlockSchema ReleaseBlock = new("release", "What keeps the part from sticking, in the order of work.")
    {
        IsOrdered = true,
        NameHead = Kinds.ReleaseAgent,
        NameLine = Word(
            "NAME",
            "A release agent and how it is put on.",
            "carnauba-wax coats 5 wait 30 min",
            Clause("coats", Kinds.Count, "number of coats"),
            Clause("wait", Kinds.TimeRange, "time between coats"),
            Clause("dry", Kinds.TimeRange, "last coat to lay-up"),
            Clause("on", new AnyWordKind("the name of a half"), "the half it goes on, when not on both")),
    };

    private static readonly BlockSchema MouldBlock = new(
        "mould, pattern",
        "A mould, or the pattern that a mould is made on.",
        [
            MaterialWords.Title,
            Surface,
            ShapeWords.Region,
            Word("pull", "Which way the part comes off, in the axes of the surface.", "pull z", ShapeWords.Direction),
            Word("halves", "Names of the two halves; the second mirrors the first.", "halves left right", Arg("first", new AnyWordKind("a name for the half")), Arg("second", new AnyWordKind("a name for the half"))),
            Word("flange", "Flange round the part.", "flange 50 mm", Kinds.Length).Also("land"),
            Word("made-of", "What it is made of.", "made-of epoxy-glass-tooling", Kinds.MouldMaterial),
            Word("made-by", "The part (a lay-up on a pattern) that is this mould.", "made-by hatch-lid-mould-shell", Kinds.Part),
            MaterialWords.HeatLimit.Otherwise("that of what it is made of"),
            Word("radius", "Smallest inside radius.", "radius 6 mm", Kinds.Length),
            Word("draft", "Draft against the pull.", "draft 3 deg", Kinds.Angle),
            Word("flexible", "Whether it bends enough to be peeled off the part.", "flexible yes", Kinds.YesNo).Otherwise("no"),
            Word("undercut", "Whether the part is locked in against the pull.", "undercut no", Kinds.YesNo),
            Word("pull-aid", "What helps the part off.", "pull-aid \"air port in the floor\"", Kinds.Free),
            Word("pulls", "Pulls so far.", "pulls 12", Kinds.CountFromZero),
            Word("pulls-since-release", "Pulls since the release was last put on.", "pulls-since-release 3", Kinds.CountFromZero),
            Word("state", "How worn it is.", "state seasoned", Kinds.OneOf("a state", ("new", "never pulled from"), ("seasoned", "several good pulls behind it"), ("repaired", "repaired on its face"))),
            Word("made-on", "The day it was made.", "made-on 2026-02-01", Kinds.Date),
            Word("post-cured", "Whether it was post-cured.", "post-cured yes", Kinds.YesNo),
            Word("coating", "What its face is painted or coated with.", "coating \"two-pack primer\"", Kinds.Free),
            Word("stick-test", "Whether coating and release were tried together on a test patch.", "stick-test yes", Kinds.YesNo),
            Word("seal-coats", "Coats that seal a porous face.", "seal-coats 2", Kinds.CountFromZero),
            Word("tested", "The day the bare mould last held a vacuum.", "tested 2026-02-03", Kinds.Date),
            Word("tape-land", "Whether the land for the sealant tape is kept clear of release.", "tape-land bare", Kinds.OneOf("bare or released", ("bare", "clear of release"), ("released", "released like the face"))),
            Word("mandrel", "Whether the part is wrapped round it.", "mandrel yes", Kinds.YesNo).Otherwise("no"),
            Word("stays-in-part", "Whether it stays in the part, so that nothing has to come off it.", "stays-in-part yes", Kinds.YesNo).Otherwise("no"),
            Word("release", "What keeps the part from sticking.", "release { carnauba-wax coats 5 wait 30 min }").WithBlock(ReleaseBlock).Also("parting", "release-system"),
            MaterialWords.Note,
            MaterialWords.Source,
        ]);

    private static readonly BlockSchema MouldMaterialBlock = MaterialWords.Block(
        "mould-material",
        "What a mould is made of.",
        Word("family", "What kind of stuff.", "family polystyrene-foam", new AnyWordKind("a word for the family")),
        Word("chemistry", "Resin it is laid with, when it is laid up.", "chemistry polyester", Kinds.OneOf("a chemistry", ("epoxy", "laid with epoxy"), ("polyester", "laid with polyester"), ("vinylester", "laid with vinylester"))),
        Word("expansion", "Thermal expansion.", "expansion 15 ppm/K", Kinds.Expansion),
        Word("porous", "Whether air comes through it.", "porous no", Kinds.YesNo),
        Word("self-releasing", "Whether resin does not stick to it.", "self-releasing no", Kinds.YesNo));

    private static readonly BlockSchema ReleaseAgentBlock = MaterialWords.Block(
        "release-agent",
        "Keeps the part from sticking.",
        Word("kind", "How it works.", "kind wax", Kinds.OneOf(
            "a kind of release",
            ("wax", "paste or liquid wax, buffed"),
            ("liquid-film", "a liquid that dries to a film"),
            ("semi-permanent", "bonded, stands several pulls"),
            ("sheet", "a sheet, film or tape"))),
        Word("silicone", "Whether it holds silicone.", "silicone no", Kinds.YesNo),
        Word("lasts", "Pulls it usually stands before it is put on again.", "lasts 5", Kinds.Count),
        Word("coats", "Usual number of coats on a new mould.", "coats 5", Kinds.Count),
        Word("wait", "Time between coats.", "wait 30 min", Kinds.TimeRange),
        Word("dry", "Last coat to lay-up.", "dry 60 min", Kinds.TimeRange),
        Word("coverage", "Area that a litre covers.", "coverage 15 m2/L", Kinds.Coverage));

    public static readonly WordSchema Mould = Declaration("mould", "A mould.", "mould lid-mould { surface disc diameter 200 mm }", ["mold", "tool", "tooling"]);

    public static readonly WordSchema Pattern = Declaration("pattern", "The shape a mould is made on.", "pattern lid-pattern { surface disc diameter 200 mm }", ["plug", "buck"]);

    public static readonly WordSchema MouldMaterial = MaterialWords.Declaration(
        "mould-material", "What a mould is made of.", MouldMaterialBlock, "mould-material epoxy-glass-tooling { heat-limit 80 degC }") with
    { Regional = ["mold-material"] };

    public static readonly WordSchema ReleaseAgent = MaterialWords.Declaration(
        "release-agent", "Keeps the part from sticking.", ReleaseAgentBlock, "release-agent carnauba-wax { kind wax }") with
    { Regional = ["parting-agent", "mould-release", "mold-release"] };

    private static WordSchema Declaration(string word, string doc, string example, ImmutableArray<string> regional) =>
        Word(
            word,
            doc,
            example,
            Arg("name", Kinds.NewName(NameKind.Mould)),
            Clause("like", Kinds.Mould, "another declaration whose lines are copied")) with
        {
            Block = MouldBlock,
            NeedsBlock = true,
            IsRepeatable = true,
            Regional = regional,
        };
}
