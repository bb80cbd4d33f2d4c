namespace Recipe.Architecture.Tests;

/// <summary>The comparisons behind <see cref="StairTests"/>, apart so that each is shown to catch an offender.</summary>
internal static class StairLaw
{
    private static readonly HashSet<string> Framework =
        [.. Directory.EnumerateFiles(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "*.dll").Select(Path.GetFileNameWithoutExtension).OfType<string>()];

    public static IEnumerable<string> ForbiddenReferences(ProductProject project, Step step) => project.References.Except(step.Knows);

    public static IEnumerable<string> ForbiddenPackages(ProductProject project, Step step) => project.Packages.Except(step.Packages);

    public static bool IsFramework(string assembly) => Framework.Contains(assembly);

    /// <summary>The nodes that stand on a cycle or wait for one: what is left when every node without an open edge is taken away.</summary>
    public static IReadOnlyList<string> Cycle(IReadOnlyDictionary<string, List<string>> edges)
    {
        var open = edges.ToDictionary(node => node.Key, node => node.Value.Where(edges.ContainsKey).ToHashSet());
        while (open.FirstOrDefault(node => node.Value.Count == 0).Key is { } free)
        {
            open.Remove(free);
            foreach (var targets in open.Values)
            {
                targets.Remove(free);
            }
        }

        return [.. open.Keys];
    }
}
