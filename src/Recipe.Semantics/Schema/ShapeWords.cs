using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>What is said of surfaces that were drawn or scanned, and of the cloth on them.</summary>
internal static class ShapeWords
{
    /// <summary>What a 1 in a file means.</summary>
    public static readonly ChoiceKind Unit = Kinds.OneOf("a unit of length", ("mm", "millimetres"), ("cm", "centimetres"), ("m", "metres"), ("in", "inches"), ("ft", "feet"));

    /// <summary>The sides of a triangle.</summary>
    public static readonly ChoiceKind Side = Kinds.OneOf(
        "a side",
        ("front", "the side from which the corners of a triangle run counter-clockwise"),
        ("back", "the other side"));

    /// <summary>The axes with their sense.</summary>
    public static readonly ChoiceKind Direction = Kinds.OneOf(
        "a direction", ("x", "along x"), ("y", "along y"), ("z", "along z"), ("minus-x", "against x"), ("minus-y", "against y"), ("minus-z", "against z"));

    private static readonly ChoiceKind Axis = Kinds.OneOf("an axis", ("x", "the first"), ("y", "the second"), ("z", "the third"));

    /// <summary>The points of a profile.</summary>
    public static readonly BlockSchema Profile = new(
        "surface",
        "The points of a profile, of a section and of its path, in order.",
        [
            Word("point", "A point of a profile that is turned about an axis.", "point radius 80 mm height 30 mm", Needs("radius", Kinds.Length, "distance from the axis"), Needs("height", Kinds.Position, "height along the axis")).Repeatable(),
            Word("section", "A point of a section, seen along the path.", "section across 60 mm height 10 mm", Needs("across", Kinds.Position, "distance to the left"), Needs("height", Kinds.Position, "height")).Repeatable(),
            Word("path", "A point of the path, seen from the side.", "path along 900 mm height 40 mm", Needs("along", Kinds.Position, "distance along"), Needs("height", Kinds.Position, "height")).Repeatable(),
        ])
    {
        IsOrdered = true,
    };

    /// <summary>What is kept of a surface.</summary>
    public static readonly WordSchema Region = new("region", "What is kept of the surface; of several lines, what all of them keep.", LinePattern.Bare, "region above z 10 mm")
    {
        IsRepeatable = true,
        Default = "all of it",
        Forms =
        [
            new("above", "what lies beyond a plane across an axis", new LinePattern(Arg("axis", Axis), Arg(Kinds.Position)), "region above z 10 mm"),
            new("below", "what lies before a plane across an axis", new LinePattern(Arg("axis", Axis), Arg(Kinds.Position)), "region below z 80 mm"),
            new("between", "what lies between two planes across an axis", new LinePattern(Arg("axis", Axis), Arg(Kinds.Position with { TakesRange = true, NeedsRange = true })), "region between x 10 mm to 200 mm"),
            new("group", "a named group or solid of the file", new LinePattern(Arg(Kinds.Free)), "region group deck"),
            new(
                "patch",
                "what lies round a point, as far as the next sharp edge",
                new LinePattern(Needs("at-x", Kinds.Position, "the point"), Needs("at-y", Kinds.Position, "the point"), Needs("at-z", Kinds.Position, "the point"), Clause("edge", Kinds.Angle with { AtLeast = null, MoreThan = 0 }, "angle of two faces that makes an edge sharp")),
                "region patch at-x 10 mm at-y 20 mm at-z 0 mm edge 30 deg"),
        ],
    };

    /// <summary>How woven cloth is laid down on a shaped surface.</summary>
    public static readonly WordSchema Drape = Word(
        "drape",
        "Where cloth touches a shaped surface first, and which way 0 degrees runs there.",
        "drape at-x 150 mm at-y 0 mm along x",
        Clause("at-x", Kinds.Position, "the point that is touched first"),
        Clause("at-y", Kinds.Position, "the point that is touched first"),
        Clause("at-z", Kinds.Position, "the point that is touched first"),
        Clause("along", Direction, "the way 0 degrees runs"),
        Clause("step", Kinds.PositiveLength, "distance of two threads in the net it is worked out with")) with
    { Default = "the middle of the surface, along x" };
}
