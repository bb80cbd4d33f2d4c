using System.Collections.Immutable;

namespace Recipe.Model;

/// <summary>Things of one kind in a part, and what a house rule may ask of each: the plies, the layers of the bag, the pots.</summary>
/// <param name="Word">What rules call one of them: <c>ply</c>.</param>
/// <param name="Doc">What they are, in a few words.</param>
/// <param name="Facts">What may be asked of each.</param>
public sealed record FactGroup(string Word, string Doc, ImmutableArray<FactWord> Facts)
{
    /// <summary>The fact of this word, or null.</summary>
    public FactWord? Find(string word)
    {
        foreach (var fact in Facts)
        {
            if (fact.Word == word)
            {
                return fact;
            }
        }

        return null;
    }
}
