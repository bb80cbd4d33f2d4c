using Recipe.Documents.Tests.Plans;

namespace Recipe.Documents.Tests;

/// <summary>The plans whose papers are kept under version control, by the name of their folder.</summary>
internal static class Cases
{
    public static readonly IReadOnlyDictionary<string, PaperInput> All = new SortedDictionary<string, PaperInput>(StringComparer.Ordinal)
    {
        ["bare"] = Bare.Input,
        ["hatch-lid"] = HatchLid.Input,
        ["hostile"] = Hostile.With("<script>alert('x')</script> =cmd() \"a\" | b & `c` *d*"),
        ["rudder-halves"] = RudderHalves.Input,
        ["tube-infused"] = TubeInfused.Input,
    };

    public static IEnumerable<(string Case, PaperKind Kind, PaperFormat Format)> Papers =>
        from name in All.Keys
        from kind in Documents.Papers.All
        where kind.AppliesTo(All[name])
        from format in kind.Formats
        select (name, kind, format);

    /// <summary>The papers that a part has use for, in their order.</summary>
    public static IEnumerable<Layout.Document> Built(PaperInput input) => Documents.Papers.All.Where(kind => kind.AppliesTo(input)).Select(kind => kind.Build(input));
}
