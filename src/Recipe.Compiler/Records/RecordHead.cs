using Recipe.Syntax;

namespace Recipe.Compiler.Records;

/// <summary>The heads of build records as they are written: <c>build hatch-lid no 3 on 2026-05-14</c>.</summary>
internal static class RecordHead
{
    /// <summary>The serial numbers of the records of a part that stand in a text; one whose number cannot be read is left out.</summary>
    public static IEnumerable<int> SerialsOf(SyntaxTree tree, string part) => tree.Root.Statements
        .OfType<EntrySyntax>()
        .Where(entry => entry.Head.Text == "build" && entry.Values is [WordSyntax name, ..] && name.Text == part)
        .Select(SerialOf)
        .OfType<double>()
        .Where(number => number is >= 0 and < int.MaxValue)
        .Select(number => (int)number);

    /// <summary>The number behind <c>no</c>, or null.</summary>
    public static double? SerialOf(EntrySyntax entry)
    {
        for (var i = 0; i + 1 < entry.Values.Length; i++)
        {
            if (entry.Values[i] is WordSyntax { Text: "no" } && entry.Values[i + 1] is QuantitySyntax number)
            {
                return number.Number;
            }
        }

        return null;
    }
}
