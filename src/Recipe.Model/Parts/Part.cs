using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>What a part is for.</summary>
public enum PartUse
{
    /// <summary>Looks only.</summary>
    Cosmetic,

    /// <summary>Carries load.</summary>
    Structural,

    /// <summary>Flies: defer to licensed practice.</summary>
    Flying,
}

/// <summary>How dark a part is in use.</summary>
public enum PartColour
{
    /// <summary>White or nearly.</summary>
    White,

    /// <summary>Light.</summary>
    Light,

    /// <summary>Black, deep blue or red, bare carbon.</summary>
    Dark,
}

/// <summary>A waiver: <c>accept RC6004 because "..." until 2027-01-01</c>.</summary>
/// <param name="Code">Code or readable name, as written.</param>
/// <param name="Because">The reason, or null when the author gave none.</param>
/// <param name="Until">The day it lapses, or null.</param>
/// <param name="Where">The line.</param>
public sealed record Waiver(string Code, string? Because, DateOnly? Until, SourceSpan Where);

/// <summary>A part: what is laid, wetted, bagged, cured and finished. A variant is one too, with its changes already made.</summary>
public sealed record Part
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Where its name is declared.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Name of the part this is a variant of, or null.</summary>
    public string? VariantOf { get; init; }

    /// <summary>A title for papers, or null.</summary>
    public string? Title { get; init; }

    /// <summary>Whether the title is that of the part it is a variant of.</summary>
    public bool TitleIsInherited { get; init; }

    /// <summary>What papers call it; a variant without a title of its own is told from its original by its name.</summary>
    public string Label => Title is null ? Name : TitleIsInherited ? $"{Title}, {Name}" : Title;

    /// <summary>The mould, or null when none is named (or known).</summary>
    public Mould? Mould { get; init; }

    /// <summary>Where the mould is named.</summary>
    public SourceSpan? MouldWhere { get; init; }

    /// <summary>How it is made: said, or computed from the blocks.</summary>
    public required Figure<Process> Process { get; init; }

    /// <summary>The resin with its hardener, or null.</summary>
    public ResinSystem? Resin { get; init; }

    /// <summary>Where the resin is named.</summary>
    public SourceSpan? ResinWhere { get; init; }

    /// <summary>Target mass of the trimmed part.</summary>
    public Figure<Mass>? TargetMass { get; init; }

    /// <summary>Tolerance of the target mass, plus and minus.</summary>
    public Figure<Mass>? TargetTolerance { get; init; }

    /// <summary>How many are made; 1 when not given.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>How far plies run past the trim line.</summary>
    public Figure<Length>? Trim { get; init; }

    /// <summary>Overlap where two pieces of a ply meet.</summary>
    public Figure<Length>? Overlap { get; init; }

    /// <summary>The hottest the part gets in use.</summary>
    public Figure<Temperature>? Service { get; init; }

    /// <summary>What it is for.</summary>
    public Figure<PartUse>? Use { get; init; }

    /// <summary>Whether it lives outdoors.</summary>
    public Figure<bool>? Outdoors { get; init; }

    /// <summary>How dark it is in use.</summary>
    public Figure<PartColour>? Colour { get; init; }

    /// <summary>How far the join lines of one ply lie from those of the next.</summary>
    public Figure<Length>? Stagger { get; init; }

    /// <summary>Which way 0 degrees runs, in the author's words, or null.</summary>
    public string? Axis { get; init; }

    /// <summary>A surface of its own, when it is not the mould's.</summary>
    public Figure<SurfaceShape>? Surface { get; init; }

    /// <summary>What the part covers of its surface or of its mould's; empty for all of it.</summary>
    public ImmutableArray<ShapeRegion> Regions { get; init; } = [];

    /// <summary>How the cloth is laid down on a shaped surface, or null.</summary>
    public DrapeStart? Drape { get; init; }

    /// <summary>Coats on the mould before the plies.</summary>
    public ImmutableArray<Coat> Coats { get; init; } = [];

    /// <summary>Loads that the stack is compared with.</summary>
    public ImmutableArray<StatedLoad> Loads { get; init; } = [];

    /// <summary>The stack, the mould side first, in laying order (an <c>after</c> has already been followed).</summary>
    public ImmutableArray<StackItem> Stack { get; init; } = [];

    /// <summary>Where the ply block stands, or null.</summary>
    public SourceSpan? StackWhere { get; init; }

    /// <summary>
    /// Names of plies that stand in the recipe and could not be understood, wholly or in part: no sum over the stack is known while there is one.
    /// </summary>
    public ImmutableArray<string> UnreadPlies { get; init; } = [];

    /// <summary>Wetting out, or null.</summary>
    public WetOut? WetOut { get; init; }

    /// <summary>How a pot is mixed, or null.</summary>
    public Mixing? Mixing { get; init; }

    /// <summary>How the prepreg is handled, or null.</summary>
    public PrepregHandling? Prepreg { get; init; }

    /// <summary>The bag, or null.</summary>
    public Bag? Bag { get; init; }

    /// <summary>Infusion, or null.</summary>
    public Infusion? Infusion { get; init; }

    /// <summary>Vacuum, or null.</summary>
    public VacuumPlan? Vacuum { get; init; }

    /// <summary>Cure, or null.</summary>
    public Cure? Cure { get; init; }

    /// <summary>Finishing lines, in order.</summary>
    public ImmutableArray<FinishStep> Finish { get; init; } = [];

    /// <summary>The first finishing line that is done off the mould; null when none is.</summary>
    public FinishStep? OffTheMould => Finish.FirstOrDefault(step => step.Verb is "seal" or "drill" or "weigh" or "prime" or "paint" or "ship");

    /// <summary>Whether a line of the cure or the finish takes the part off its mould.</summary>
    public bool IsDemoulded => Cure is { } cure && cure.Steps.Any(step => step.Action == CureAction.Demould) || Finish.Any(step => step.Verb == "demould");

    /// <summary>Where the finish block stands, or null.</summary>
    public SourceSpan? FinishWhere { get; init; }

    /// <summary>The join, or null.</summary>
    public Join? Join { get; init; }

    /// <summary>Whether it is an assembly: nothing is laid for it, it is joined of other parts that are made by papers of their own.</summary>
    public bool IsAssembly => Stack.IsEmpty && Mould is null && Join is { Parts.IsEmpty: false };

    /// <summary>Waivers written in the part (and, in a variant, in the part it comes from).</summary>
    public ImmutableArray<Waiver> Waivers { get; init; } = [];
}
