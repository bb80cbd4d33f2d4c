using System.Globalization;
using System.Text;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Syntax.Tests;

/// <summary>Writes a tree as text, one node on a line with its place, for people who look into the parser.</summary>
internal static class TreePrinter
{
    /// <summary>The tree, indented by two blanks a level; places are <c>line:column-line:column</c>, the second just past the end.</summary>
    public static string Print(SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var printer = new Printer(tree.Source);
        printer.Node(0, tree.Root);
        return printer.ToString();
    }

    private sealed class Printer(SourceText source)
    {
        private readonly StringBuilder _text = new();

        public override string ToString() => _text.ToString();

        public void Node(int depth, SyntaxNode node)
        {
            var (label, children) = Describe(node);
            _text.Append(' ', depth * 2).Append(label).Append("  ").Append(source.PositionOf(node.Span.Start)).Append('-')
                .Append(source.PositionOf(node.Span.End)).Append('\n');
            foreach (var child in children)
            {
                Node(depth + 1, child);
            }
        }

        private (string Label, IEnumerable<SyntaxNode> Children) Describe(SyntaxNode node) => node switch
        {
            FileSyntax file => ("File", file.Statements),
            EntrySyntax entry => ($"Entry {entry.Head.Text}", Children(entry.Values, entry.Block)),
            LetSyntax let => ($"Let {let.Name.Text}", [let.Value]),
            ErrorSyntax error => (Error(error), error.Entry is { } entry ? [entry] : Children([], error.Block)),
            BlockSyntax block => (block.CloseBrace is null ? "Block without its closing brace" : "Block", block.Statements),
            WordSyntax word => ($"Word {word.Text}", []),
            TextSyntax text => ($"Text \"{text.Text}\"", []),
            DateSyntax date => ("Date " + date.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), []),
            QuantitySyntax quantity => ("Quantity " + Number(quantity.Number) + Unit(quantity.Unit), []),
            CompoundSyntax compound => ("Compound", compound.Parts),
            SignedSyntax signed => (signed.Negative ? "Signed -" : "Signed +", [signed.Quantity]),
            PairSyntax pair => ($"Pair {Number(pair.Left)} / {Number(pair.Right)}{Unit(pair.Unit)}", []),
            PlusMinusSyntax plusMinus => ("PlusMinus", [plusMinus.Quantity]),
            RatioSyntax ratio => ("Ratio", ratio.Parts),
            RangeSyntax range => ("Range", [range.Low, range.High]),
            ToleranceSyntax tolerance => ("Tolerance", [tolerance.Value, tolerance.Tolerance]),
            ParenthesisSyntax parenthesis => ("Parenthesis" + Unit(parenthesis.Unit), [parenthesis.Inner]),
            BinarySyntax binary => ($"Binary {binary.Operator}", [binary.Left, binary.Right]),
            NegateSyntax negate => ("Negate", [negate.Operand]),
            _ => (node.GetType().Name, []),
        };

        private static IEnumerable<SyntaxNode> Children(IEnumerable<SyntaxNode> values, BlockSyntax? block) => block is null ? values : values.Append(block);

        private string Error(ErrorSyntax error) =>
            $"Error skipped {source.PositionOf(error.SkippedSpan.Start)}-{source.PositionOf(error.SkippedSpan.End)} at {source.PositionOf(error.Trouble.Start)}";

        private static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);

        private static string Unit(Unit? unit) => unit is null ? "" : " " + unit.Symbol;
    }
}
