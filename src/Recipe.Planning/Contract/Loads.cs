using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// What a stated load does to the full-cover stack, as a flat piece free at its edges: lamination theory and the rule of maximum strain.
/// No scatter, hole, knock, damp, heat, fatigue or buckling is in it, no stress left by the cure and no shear across the thickness, by
/// which a core may fail first. It compares stacks and certifies nothing: load-bearing and flying parts are for tests and licensed practice.
/// </summary>
public sealed record LoadPlan
{
    /// <summary>The load.</summary>
    public required StatedLoad Load { get; init; }

    /// <summary>The limit that is reached first among those that are given; null when none is given or the load never reaches one.</summary>
    public FirstLimit? First { get; init; }

    /// <summary>Lines of which no strain limit is known, from the mould; they are not judged.</summary>
    public required ImmutableArray<string> WithoutLimits { get; init; }

    /// <summary>Lines that have limits, but not for every way in which the load strains them.</summary>
    public required ImmutableArray<string> PartlyJudged { get; init; }

    /// <summary>How far the strip goes down in the middle, by bending and, where <see cref="StiffnessPlan.CoreShear"/> is known, by the slide of its core; null for a pull.</summary>
    public Computed<Length>? Sag { get; init; }

    /// <summary>The largest stresses in each full-cover line, from the mould.</summary>
    public required ImmutableArray<LineStress> Lines { get; init; }

    /// <summary>Whether every line was judged for every way in which the load strains it.</summary>
    public bool IsComplete => WithoutLimits.IsEmpty && PartlyJudged.IsEmpty;
}

/// <summary>The limit that a load reaches first. A strip is judged bent either way, since it can be laid either way on its supports.</summary>
/// <param name="Factor">How many times the stated load is borne until then; below 1 the stated load is beyond the limit.</param>
/// <param name="Line">The line of the stack.</param>
/// <param name="Mode">Which way it strains, in the axes of its yarns.</param>
/// <param name="BagSideStretched">For a strip, whether that is with the bag side stretched (and not the mould side); null for a pull.</param>
public sealed record FirstLimit(Computed<double> Factor, string Line, StrainMode Mode, bool? BagSideStretched);

/// <summary>The largest stress in a line under a load, in the axes of its yarns, of either sign.</summary>
/// <param name="Name">The line.</param>
/// <param name="Along">Along the yarns.</param>
/// <param name="Across">Across them.</param>
/// <param name="Shear">Shear in the plane.</param>
public sealed record LineStress(string Name, Computed<Pressure> Along, Computed<Pressure> Across, Computed<Pressure> Shear);

/// <summary>
/// How a flat piece of the full-cover stack curls, free of everything, when it cools from the temperature at which it has no stress to the
/// room. A shell cannot follow: its shape holds it, and the figure only says how much the stack wants to spring, to compare stacks.
/// Shrinkage of the resin, damp and creep are not in it. A positive curvature makes the piece hollow towards the mould.
/// </summary>
public sealed record CurlPlan
{
    /// <summary>Whether the stack is the same from both sides, so that it stays flat whatever the temperatures.</summary>
    public required bool IsSymmetric { get; init; }

    /// <summary>The temperature taken as free of stress: the hottest hold in the mould, an assumption; null for a symmetric stack.</summary>
    public Computed<Temperature>? StressFree { get; init; }

    /// <summary>The room to which it cools.</summary>
    public required Computed<Temperature> Room { get; init; }

    /// <summary>Curvature along the part.</summary>
    public required Computed<ReciprocalLength> Along { get; init; }

    /// <summary>Curvature across the part.</summary>
    public required Computed<ReciprocalLength> Across { get; init; }

    /// <summary>Twist, the engineering one: minus twice the mixed derivative of the height towards the bag.</summary>
    public required Computed<ReciprocalLength> Twist { get; init; }

    /// <summary>Length of the piece: the part's developed length, or 300 mm when that is not known.</summary>
    public required Length Length { get; init; }

    /// <summary>Width of the piece: the part's developed width, or 300 mm.</summary>
    public required Length Width { get; init; }

    /// <summary>How far the middle of the length stands off a straight line between its ends, whichever way.</summary>
    public required Computed<Length> RiseAlong { get; init; }

    /// <summary>The same across the width.</summary>
    public required Computed<Length> RiseAcross { get; init; }

    /// <summary>How far the fourth corner stands off a table on which the other three lie, by twist alone.</summary>
    public required Computed<Length> CornerRise { get; init; }
}
