using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What can be folded away.</summary>
public static class Folding
{
    /// <summary>Blocks and runs of comment lines of more than one line, in the order of the text.</summary>
    public static ImmutableArray<Fold> Of(CompiledFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var folds = new List<Fold>();
        foreach (var place in Places.All(file.Tree))
        {
            if (place.Entry.Block is { CloseBrace: { } close } block && Line(file, block.OpenBrace.Start) < Line(file, close.Start))
            {
                folds.Add(new Fold(TextSpan.FromBounds(block.OpenBrace.End, close.Start), FoldKind.Block));
            }
        }

        AddComments(file, folds);
        return [.. folds.OrderBy(fold => fold.Span.Start)];
    }

    private static void AddComments(CompiledFile file, List<Fold> folds)
    {
        TextSpan? run = null;
        var lastLine = -1;
        var onlyComment = true;
        foreach (var token in file.Tree.Tokens)
        {
            switch (token.Kind)
            {
                case TokenKind.LineEnd:
                    onlyComment = true;
                    break;
                case TokenKind.Blank:
                    break;
                case TokenKind.Comment when onlyComment:
                    var line = Line(file, token.Span.Start);
                    if (run is { } open && line == lastLine + 1)
                    {
                        run = open.Union(token.Span);
                    }
                    else
                    {
                        Close();
                        run = token.Span;
                    }

                    lastLine = line;
                    break;
                default:
                    onlyComment = false;
                    break;
            }
        }

        Close();

        void Close()
        {
            if (run is { } whole && Line(file, whole.Start) < Line(file, whole.End))
            {
                folds.Add(new Fold(whole, FoldKind.Comment));
            }

            run = null;
        }
    }

    private static int Line(CompiledFile file, int offset) => file.Source.PositionOf(offset).Line;
}
