using System.Collections.Immutable;

namespace Recipe.Text;

/// <summary>How the names of files end that the program reads.</summary>
public static class FileEndings
{
    /// <summary>A text in the language.</summary>
    public const string Recipe = ".recipe";

    /// <summary>Rules of the house in C#.</summary>
    public const string CodedRules = ".rule.cs";

    /// <summary>Surfaces that were drawn or scanned: STL, OBJ, PLY and 3MF.</summary>
    public static ImmutableArray<string> Meshes { get; } = [".stl", ".obj", ".ply", ".3mf"];

    /// <summary>Whether a path means rules in C# and no recipe. Case does not count: the same file has several spellings on some systems.</summary>
    public static bool IsCodedRules(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.EndsWith(CodedRules, StringComparison.OrdinalIgnoreCase);
    }
}
