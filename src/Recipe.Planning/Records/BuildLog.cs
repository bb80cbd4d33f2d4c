using System.Collections.Immutable;

namespace Recipe.Planning;

/// <summary>All build records of one part, in the order in which it was built.</summary>
public sealed record BuildLog
{
    private BuildLog(string part, ImmutableArray<LoggedBuild> builds) => (Part, Builds) = (part, builds);

    /// <summary>Name of the part.</summary>
    public string Part { get; }

    /// <summary>The records, by serial number; one without a number comes last, by its day.</summary>
    public ImmutableArray<LoggedBuild> Builds { get; }

    /// <summary>One log for each part, in order of name.</summary>
    public static ImmutableArray<BuildLog> Of(IEnumerable<LoggedBuild> builds)
    {
        ArgumentNullException.ThrowIfNull(builds);
        return
        [
            .. builds.GroupBy(build => build.Record.Part, StringComparer.Ordinal)
                .OrderBy(part => part.Key, StringComparer.Ordinal)
                .Select(part => new BuildLog(part.Key, [.. part.OrderBy(b => b.Record.Number ?? int.MaxValue).ThenBy(b => b.Record.On ?? DateOnly.MaxValue).ThenBy(b => b.Record.Where.Source.Name, StringComparer.Ordinal)])),
        ];
    }
}
