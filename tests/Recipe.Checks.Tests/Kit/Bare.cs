using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks.Tests;

/// <summary>Parts and plans with nothing in them but a name, for what does not depend on a recipe.</summary>
internal static class Bare
{
    public static readonly SourceText Source = new("bare.recipe", "part lid { accept one because \"x\"; accept two because \"y\" }");

    public static readonly SourceSpan Name = Place.Of(Source, "lid");

    public static Part Part(string name, params ReadOnlySpan<Waiver> waivers) => new()
    {
        Name = name,
        Where = Name,
        Process = new Figure<Process>(Process.Hand, Basis.Assumed, "hand"),
        Waivers = [.. waivers],
    };

    public static Plan Plan(Part part, params ReadOnlySpan<Assumption> assumptions) => new()
    {
        Part = part,
        Assumptions = [.. assumptions],
        Conditions = new ConditionsPlan
        {
            Room = Sure(Temperature.FromDegreesCelsius(20)),
            Resin = Sure(Temperature.FromDegreesCelsius(20)),
            Laminators = Sure(1),
            Altitude = Sure(Length.Zero),
            Ambient = Sure(Pressure.FromPascals(101325)),
        },
    };

    public static RecipeModel Model(params ReadOnlySpan<Part> parts) => new()
    {
        Materials = ImmutableDictionary<string, Material>.Empty,
        Parts = [.. parts],
    };

    public static Waiver Waiver(string code, string? because = "we know", DateOnly? until = null, string at = "one") =>
        new(code, because, until, Place.Of(Source, at));

    public static Computed<T> Sure<T>(T value) => new(value, []);

    public static FindingDescriptor Descriptor(string code, string name, Severity severity = Severity.Error) => new()
    {
        Code = code,
        Name = name,
        Severity = severity,
        Title = "Title",
        Reason = "Reason.",
        Remedy = "Remedy.",
        Source = "common practice",
        BadExample = "bad",
        GoodExample = "good",
    };
}

/// <summary>A check made of a lambda.</summary>
internal sealed class SomeCheck(string code, Action<CheckContext> examine, bool canBeAccepted = true, Severity severity = Severity.Error) : Check
{
    public override FindingDescriptor Descriptor { get; } = Bare.Descriptor(code, "some-" + code[2..], severity);

    public override bool CanBeAccepted => canBeAccepted;

    public override void Examine(CheckContext context) => examine(context);
}
