using Recipe.RuleApi;

namespace Recipe.RulesHost.Tests;

/// <summary>A part for tests: an invented hatch lid.</summary>
internal static class Lid
{
    public static FactSheet Sheet { get; } = Of(3);

    /// <summary>The lid with more plies.</summary>
    public static FactSheet Of(int plies) => new(
        "part",
        new Dictionary<string, Fact>
        {
            ["name"] = Fact.Word("lid"),
            ["mass"] = Fact.Quantity(0.14),
            ["fibre-mass"] = Fact.Quantity(0.07),
            ["hottest"] = Fact.Quantity(273.15 + 60),
            ["resin-content"] = Fact.Number(0.45, isAssumed: true),
        },
        new Dictionary<string, IReadOnlyList<FactSheet>> { ["ply"] = [.. Enumerable.Range(0, plies).Select(Ply)] });

    private static FactSheet Ply(int index) => new("ply", new Dictionary<string, Fact>
    {
        ["name"] = Fact.Word(index switch { 0 => "outer", 1 => "veil", _ => "body" }),
        ["fibre"] = Fact.Word(index == 1 ? "carbon" : "glass"),
        ["position"] = Fact.Number(index + 1),
    });
}
