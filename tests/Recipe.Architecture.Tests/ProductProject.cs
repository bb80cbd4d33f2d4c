using System.Xml.Linq;

namespace Recipe.Architecture.Tests;

/// <summary>A project of <c>src</c>, read from its file.</summary>
internal sealed record ProductProject(
    string Name,
    string AssemblyName,
    IReadOnlyList<string> References,
    IReadOnlyList<string> Packages,
    bool TouchesTheWorld)
{
    public static IReadOnlyList<ProductProject> All { get; } =
        [.. Repository.Files()
            .Where(file => file.StartsWith("src/", StringComparison.Ordinal) && file.EndsWith(".csproj", StringComparison.Ordinal))
            .Select(file => Parse(Path.GetFileNameWithoutExtension(file), Repository.Read(file)))];

    /// <summary>The compiled assembly, beside the tests because they refer to every product project.</summary>
    public string AssemblyPath => Path.Combine(AppContext.BaseDirectory, AssemblyName + ".dll");

    public static ProductProject Parse(string name, string xml)
    {
        var root = XDocument.Parse(xml).Root!;
        return new ProductProject(
            name,
            root.Descendants("AssemblyName").SingleOrDefault()?.Value ?? name,
            [.. Includes("ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')))],
            [.. Includes("PackageReference")],
            root.Descendants("RecipeTouchesTheWorld").Any());

        IEnumerable<string> Includes(string item) =>
            root.Descendants(item).Select(element => element.Attribute("Include")?.Value).OfType<string>();
    }

    public override string ToString() => Name;
}
