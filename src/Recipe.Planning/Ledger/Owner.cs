using Recipe.Model;

namespace Recipe.Planning.Ledger;

/// <summary>Whose figure it is: decides the key under which an unmeasured one is listed, and what to write to replace it.</summary>
/// <param name="Name">Name of the material, part, mould or shop.</param>
/// <param name="Label">What papers call it.</param>
/// <param name="Keyword">The word it is declared with.</param>
/// <param name="FromBook">Whether the shipped book says it.</param>
internal readonly record struct Owner(string Name, string Label, string Keyword, bool FromBook)
{
    /// <summary>A material.</summary>
    public static Owner Of(Material material) => new(material.Name, material.Label, material.Keyword, material.FromBook);

    /// <summary>The part itself.</summary>
    public static Owner Of(Part part) => new(part.Name, part.Label, "part", false);

    /// <summary>A mould.</summary>
    public static Owner Of(Mould mould) => new(mould.Name, mould.Label, mould.IsPattern ? "pattern" : "mould", false);

    /// <summary>The shop.</summary>
    public static Owner Of(Shop shop) => new(shop.Name, shop.Name, "shop", false);

    /// <summary>The assumption that one of its figures is.</summary>
    /// <param name="word">The word of the figure: <c>heat-limit</c>, <c>resin-content bagged</c>.</param>
    /// <param name="written">The figure as written.</param>
    /// <param name="source">Where it comes from, or null.</param>
    public Assumption Figure(string word, string written, string? source) => new(
        $"{(FromBook ? "book" : "recipe")}.{Name}.{word.Replace(' ', '-')}",
        $"{word} of {Label}",
        written,
        source ?? "marked as assumed; no source is given",
        FromBook
            ? $"declare `{Keyword} my-{Name} like {Name} {{ {word} ...   source \"data sheet\" }}` and name that"
            : $"measure it, or read the data sheet, and give `{word}` a `source` that is not `assumed`");
}
