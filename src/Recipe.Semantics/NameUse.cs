using Recipe.Text;

namespace Recipe.Semantics;

/// <summary>What a name stands for. Each kind has a space of its own: a mould and a part may have one name.</summary>
public enum NameKind
{
    /// <summary>A material of any kind.</summary>
    Material,

    /// <summary>A mould or pattern.</summary>
    Mould,

    /// <summary>A part or variant.</summary>
    Part,

    /// <summary>A named value (<c>let</c>).</summary>
    Value,

    /// <summary>A line of a ply list.</summary>
    Ply,

    /// <summary>A hardener of a resin.</summary>
    Hardener,

    /// <summary>A shop.</summary>
    Shop,

    /// <summary>An <c>explore</c>.</summary>
    Study,

    /// <summary>A house rule.</summary>
    Rule,
}

/// <summary>A place where a name is declared or used.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Name">The name.</param>
/// <param name="Where">The place.</param>
/// <param name="Declaration">Where it is declared (perhaps in another file); null when nothing of that name is in scope.</param>
public sealed record NameUse(NameKind Kind, string Name, SourceSpan Where, SourceSpan? Declaration)
{
    /// <summary>Whether this place is the declaration itself.</summary>
    public bool IsDeclaration => Where == Declaration;
}
