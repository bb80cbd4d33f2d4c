using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What a symbol of the outline is.</summary>
public enum SymbolKind
{
    /// <summary>A part.</summary>
    Part,

    /// <summary>A variant of a part.</summary>
    Variant,

    /// <summary>A mould or pattern.</summary>
    Mould,

    /// <summary>A material.</summary>
    Material,

    /// <summary>The shop, its shelf, its prices.</summary>
    Shop,

    /// <summary>A block of a part or mould.</summary>
    Block,

    /// <summary>A line of a ply list.</summary>
    Ply,

    /// <summary>A line of a bag, a cure or finishing.</summary>
    Step,

    /// <summary>A named value.</summary>
    Value,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>A thing of the outline.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Detail">A few words about it; may be empty.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Span">All of it.</param>
/// <param name="NameSpan">What is selected when it is chosen.</param>
/// <param name="Children">What stands in it.</param>
public sealed record Symbol(string Name, string Detail, SymbolKind Kind, TextSpan Span, TextSpan NameSpan, ImmutableArray<Symbol> Children);
