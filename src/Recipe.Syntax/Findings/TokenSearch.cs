using System.Collections.Immutable;

namespace Recipe.Syntax.Findings;

/// <summary>Finds tokens by their place.</summary>
internal static class TokenSearch
{
    /// <summary>Index of the token that starts at or holds this offset; of the last one when the offset is the end of the text.</summary>
    public static int At(ImmutableArray<Token> tokens, int offset)
    {
        var low = 0;
        var high = tokens.Length - 1;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (tokens[middle].Span.Start <= offset)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return low;
    }
}
