using Recipe.Text;

namespace Recipe.Editing;

/// <summary>The part that a token plays.</summary>
public enum TokenRole
{
    /// <summary>A word that begins a line.</summary>
    Keyword,

    /// <summary>A word inside a line.</summary>
    Clause,

    /// <summary>A name: a part, a mould, a ply, a value.</summary>
    Name,

    /// <summary>A material.</summary>
    Material,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>A number, an orientation, a ratio, a date.</summary>
    Number,

    /// <summary>A unit.</summary>
    Unit,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A comment.</summary>
    Comment,

    /// <summary>A sign.</summary>
    Operator,
}

/// <summary>A token and the part it plays.</summary>
/// <param name="Where">The token; it lies on one line.</param>
/// <param name="Role">Its part.</param>
/// <param name="IsDeclaration">Whether a name is declared here.</param>
/// <param name="FromBook">Whether it names something of the shipped book.</param>
public readonly record struct ColouredSpan(TextSpan Where, TokenRole Role, bool IsDeclaration, bool FromBook);
