using System.Collections.Immutable;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>The ply list, and how a variant edits it.</summary>
internal static class PlySchema
{
    private static readonly ChoiceKind Roles = new("a role",
    [
        new("patch", "a piece of its own size") { Regional = ["doubler", "pad"] },
        new("core", "a core sheet"),
        new("insert", "a thing laid in") { Regional = ["hard-point"] },
    ]);

    private static readonly ImmutableArray<LinePart> AfterName =
    [
        Optional("role", Roles),
        Arg("material", Kinds.StackMaterial),
        Optional("orientation", new OrientationKind()),
        Times("pieces of a patch or insert, repeats of the ply otherwise"),
        Clause("overlap", Kinds.Length, "where two pieces of the ply meet"),
        Clause("trim", Kinds.Length, "how far it runs past the trim line"),
        Clause("size", Kinds.Rectangle, "a piece of this size"),
        Clause("covers", new CoverKind(), "the part of the surface it covers"),
        Clause("after", Kinds.Ply, "the line it lies on"),
        Clause("at", Kinds.Free, "its place, kept as written"),
        Clause("step", Kinds.Length, "how far inside the ply below it ends"),
        Clause("resin-content", Kinds.ResinContent, "resin content of this ply alone"),
        Clause("thickness", Kinds.PositiveLength, "thickness of the core"),
        Clause("gap", Kinds.Length, "widest gap between two core sheets"),
        Clause("chamfer", Kinds.Angle, "slope of the core's edge against its face"),
        Clause("join-lines", Kinds.CountFromZero, "join lines allowed in the ply"),
        Flag("darts", "the darts that the shear of a woven cloth asks for are cut"),
        Clause("face", Kinds.OneOf("up or down", ("up", "right side away from the mould"), ("down", "right side on the mould")), "which side lies on the mould"),
    ];

    /// <summary>A whole line under a name of its own, where another word begins it.</summary>
    public static readonly LinePattern InsertedLine = new([Arg("name", Kinds.NewPly), .. AfterName]);

    /// <summary>The ply list of a part.</summary>
    public static readonly BlockSchema Plies = new("plies", "The ply list; the first line lies on the mould.")
    {
        IsOrdered = true,
        NameHead = Kinds.NewPly,
        NameLine = new("NAME", "A ply, patch, core or insert.", new LinePattern(AfterName.AsSpan()), "body glass-twill-163 +/-45 overlap 15 mm"),
    };

    /// <summary>The edits of a variant.</summary>
    public static readonly BlockSchema Edits = new(
        "plies of a variant",
        "Edits of the ply list by name.",
        [
            Word("remove", "Takes lines out.", "remove veil", new ArgumentPattern("name", Kinds.Ply) { IsRepeated = true }).Repeatable(),
            new("replace", "Puts another line in place of one, under the same name.", new LinePattern([Arg("name", Kinds.Ply), .. AfterName]), "replace body glass-twill-280 +/-45") { IsRepeatable = true },
            new("insert", "Adds a line.", InsertedLine, "insert stiffener glass-tape-200 0/90 after body") { IsRepeatable = true },
        ])
    {
        IsOrdered = true,
    };
}
