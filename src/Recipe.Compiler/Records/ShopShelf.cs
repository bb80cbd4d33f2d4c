using Recipe.Documents;
using Recipe.Planning;

namespace Recipe.Compiler.Records;

/// <summary>The shelf of many files together with their build records.</summary>
public static class ShopShelf
{
    /// <summary>What is left and what to buy.</summary>
    /// <param name="files">The files; a shelf that several of them use counts once.</param>
    /// <param name="parts">Names of the parts to be built next; those with a record when there is none.</param>
    /// <param name="quantity">How many of each.</param>
    /// <param name="today">The day.</param>
    /// <param name="format">text, md or json.</param>
    public static string Report(IReadOnlyList<CompiledFile> files, IReadOnlyCollection<string> parts, int quantity, DateOnly today, string format)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(parts);
        var builds = files.SelectMany(file => file.Builds).ToList();
        var shelf = ShelfCount.Of(files.SelectMany(file => file.Bound.Model.Stock).DistinctBy(line => line.Where), builds.Select(build => build.Record),
            name => files.Select(file => file.Bound.Model.Materials.GetValueOrDefault(name)).FirstOrDefault(material => material is not null));
        var next = files.SelectMany(file => file.Parts.Select(part => (part.Part, file.Bound.Model)))
            .Where(pair => parts.Count == 0 ? builds.Any(build => build.Record.Part == pair.Part.Name) : parts.Contains(pair.Part.Name))
            .ToList();
        var buy = ShelfCount.ToBuy(next.Select(pair => (pair.Part, quantity, pair.Model)), shelf, today);
        var forWhat = $"{string.Join(", ", next.Select(pair => pair.Part.Name))}{(quantity == 1 ? "" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $", {quantity} of each"))}";
        return format switch
        {
            "md" => ShelfReport.AsMarkdown(shelf, buy, forWhat, today),
            "json" => ShelfReport.AsJson(shelf, buy, today),
            _ => ShelfReport.AsText(shelf, buy, forWhat, today),
        };
    }
}
