using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>A part or variant of a compiled file.</summary>
public sealed class CompiledPart
{
    private readonly Plan? _figures;
    private readonly Lazy<Plan> _plan;

    internal CompiledPart(Part part, Plan? figures, Lazy<Plan> plan, PartExamination examination, ImmutableArray<TextSpan> reach)
    {
        (Part, _figures, _plan, Examination, Reach) = (part, figures, plan, examination, reach);
    }

    /// <summary>Its name.</summary>
    public string Name => Part.Name;

    /// <summary>What it means.</summary>
    public Part Part { get; }

    /// <summary>Its plan.</summary>
    public Plan Plan => _plan.Value;

    /// <summary>
    /// A plan with the same figures, at hand without any work. Its places may be those of an earlier text in which this part and all
    /// it rests on read the same: for what is shown of the part as a whole.
    /// </summary>
    public Plan Figures => _plan.IsValueCreated ? _plan.Value : _figures ?? _plan.Value;

    /// <summary>What the checks say of it before reasons are heard.</summary>
    internal PartExamination Examination { get; }

    /// <summary>The stretches of the file's text that it is made from, besides those that every part rests on.</summary>
    internal ImmutableArray<TextSpan> Reach { get; }

    /// <summary>The same part without its plan, which is made again if somebody asks for it.</summary>
    internal CompiledPart Light(RecipeModel model)
    {
        // What makes the plan again must not hold this part, which holds the plan.
        var part = Part;
        return new CompiledPart(part, null, new Lazy<Plan>(() => Planner.Plan(part, model)), Examination, Reach);
    }

    /// <summary>Whether any line inside a span of the file's text may belong to it.</summary>
    public bool MayStandIn(TextSpan span) => Reach.Any(stretch => stretch.Start <= span.End && span.Start <= stretch.End);
}
