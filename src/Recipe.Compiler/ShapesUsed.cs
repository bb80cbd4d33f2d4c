using System.IO.Hashing;
using System.Runtime.CompilerServices;
using Recipe.Model;
using Recipe.Syntax;

namespace Recipe.Compiler;

/// <summary>The files of shapes that texts name.</summary>
internal static class ShapesUsed
{
    private static readonly ConditionalWeakTable<ShapeFile, string> Digests = [];
    private static readonly ConditionalWeakTable<ShapeBytes, ShapeFile> Files = [];

    /// <summary>The file of a shape as recipes know it; the same object for the same bytes of a store.</summary>
    public static ShapeFile? FileOf(ShapeBytes? read) => read is null ? null : Files.GetValue(read, static bytes => new ShapeFile(bytes.Name, bytes.Bytes));

    /// <summary>Tells the bytes of a file from others.</summary>
    public static string? DigestOf(ShapeFile? file) =>
        file is null ? null : Digests.GetValue(file, static shape => Convert.ToHexStringLower(XxHash128.Hash(shape.Bytes.Span)));

    /// <summary>Names of the files, as the workspace calls them: each <c>surface mesh "file"</c> of a mould or a part.</summary>
    public static IEnumerable<string> In(SyntaxTree tree) => tree.Root.Statements
        .OfType<EntrySyntax>()
        .Where(entry => entry.Block is not null)
        .SelectMany(entry => entry.Block!.Statements.OfType<EntrySyntax>())
        .Where(line => line.Head.Text == "surface" && line.Values is [WordSyntax { Text: "mesh" }, TextSyntax, ..])
        .Select(line => PathNames.Resolve(tree.Source.Name, ((TextSyntax)line.Values[1]).Text));
}
