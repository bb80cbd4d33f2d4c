using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Planning.Planners;

/// <summary>
/// The finished parts of an assembly, each planned once however often it is named at whatever depth: a chain of assemblies that each take two of the
/// one before would else be planned twice as often at each step.
/// </summary>
internal sealed class AssemblyParts
{
    // Nobody joins so often, and planning goes as deep as the assemblies do.
    private const int Deepest = 32;

    private readonly ImmutableList<string> _names;
    private readonly Dictionary<string, Plan> _plans;

    private AssemblyParts(ImmutableList<string> names, Dictionary<string, Plan> plans) => (_names, _plans) = (names, plans);

    /// <summary>Of no assembly.</summary>
    public static AssemblyParts None { get; } = new([], []);

    /// <summary>Those of an assembly that is a part of these.</summary>
    public AssemblyParts Within(string assembly) => new(_names.Add(assembly), _names.IsEmpty ? [] : _plans);

    /// <summary>The plan of a part, as far as its mass goes; null when there is no such part, it is joined of itself, however far down, or too far down.</summary>
    public Plan? Plan(string name, RecipeModel model)
    {
        if (_plans.TryGetValue(name, out var known))
        {
            return known;
        }

        var part = model.Parts.FirstOrDefault(part => part.Name == name) ?? model.UsedParts.GetValueOrDefault(name);
        if (part is null || _names.Count > Deepest || _names.Contains(name))
        {
            return null;
        }

        return _plans[name] = Planner.Plan(part, model, PlanPieces.Laminate, this);
    }
}
