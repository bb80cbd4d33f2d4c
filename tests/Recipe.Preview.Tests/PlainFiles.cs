using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;

namespace Recipe.Preview.Tests;

/// <summary>The disk, as the command line hands it to a preview.</summary>
internal class PlainFiles : IFileStore
{
    public virtual bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        text = File.Exists(name) ? File.ReadAllText(name) : null;
        return text is not null;
    }

    public ShapeBytes? ShapeOf(string name) => File.Exists(name) ? new ShapeBytes(name, File.ReadAllBytes(name)) : null;

    public IEnumerable<string> RecipesIn(string folder) =>
        Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*.recipe").Select(path => $"{folder.TrimEnd('/')}/{Path.GetFileName(path)}").Order(StringComparer.Ordinal) : [];
}
