using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Recipe.Syntax;

namespace Recipe.Compiler;

/// <summary>What a workspace asks of a text again and again, whichever of the files beside it is compiled: read off its tree once.</summary>
internal sealed class TreeFacts
{
    private static readonly ConditionalWeakTable<SyntaxTree, TreeFacts> Known = [];

    private TreeFacts(SyntaxTree tree)
    {
        Uses = [.. CodedFile.UseLines(tree).Select(path => path.Text).Where(path => !CodedFile.IsOne(path)).Select(path => PathNames.Resolve(tree.Source.Name, path))];
        Shapes = [.. ShapesUsed.In(tree)];
        HoldsBuilds = tree.Root.Statements.OfType<EntrySyntax>().Any(entry => entry.Head.Text == "build");
        AsUsed = new TextUsed(tree.Source.Name, tree.Source.Text);
    }

    /// <summary>The texts of recipes that it uses itself, as the workspace names them, in their order.</summary>
    public ImmutableArray<string> Uses { get; }

    /// <summary>The files of shapes that it names, as the workspace names them.</summary>
    public ImmutableArray<string> Shapes { get; }

    /// <summary>Whether a build record stands in it.</summary>
    public bool HoldsBuilds { get; }

    /// <summary>The text as one that others rest on.</summary>
    public TextUsed AsUsed { get; }

    /// <summary>The facts of a text; the same object for the same tree.</summary>
    public static TreeFacts Of(SyntaxTree tree) => Known.GetValue(tree, static key => new TreeFacts(key));
}
