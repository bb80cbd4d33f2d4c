using Recipe.Model;

namespace Recipe.Semantics.Binding;

/// <summary>What names mean somewhere: in a file with the files it uses and the book, or in the book.</summary>
internal interface INameScope
{
    MaterialDeclaration? FindMaterial(string name);

    MouldDeclaration? FindMould(string name);

    PartDeclaration? FindPart(string name);

    LetDeclaration? FindLet(string name);

    /// <summary>The file of a shape, or null when it cannot be read.</summary>
    /// <param name="fromName">Name of the text in which it is named.</param>
    /// <param name="path">The path as written there.</param>
    ShapeFile? FindShape(string fromName, string path);

    /// <summary>Height of the shop above the sea in m: that of this file, else of the nearest file it uses; null where nobody says it.</summary>
    double? Altitude { get; }

    /// <summary>All names of a space, for a did-you-mean.</summary>
    IEnumerable<string> NamesOf(NameKind kind);

    /// <summary>The materials declared with this word that say <c>default yes</c>; the user's before the book's.</summary>
    IEnumerable<MaterialDeclaration> DefaultsOf(string keyword);

    /// <summary>All materials declared with this word, the user's before the book's.</summary>
    IEnumerable<MaterialDeclaration> MaterialsOf(string keyword);
}
