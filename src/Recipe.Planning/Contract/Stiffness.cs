using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// How stiff the full-cover stack is, by classical lamination theory with straight fibres; along is 0 degrees of the part's axis, across
/// is 90. Coats are left out, and so are patches and lines that cover only part of the surface. Compare stacks with it; nothing here is a
/// certification: parts that carry loads or fly are for tests and licensed practice.
/// </summary>
public sealed record StiffnessPlan
{
    /// <summary>Modulus for a pull along the part.</summary>
    public required Computed<Pressure> Along { get; init; }

    /// <summary>Modulus for a pull across the part.</summary>
    public required Computed<Pressure> Across { get; init; }

    /// <summary>Shear modulus in the plane.</summary>
    public required Computed<Pressure> Shear { get; init; }

    /// <summary>Bending stiffness of a strip along the part, for each unit of its width (N m2/m).</summary>
    public required Computed<Torque> StripAlong { get; init; }

    /// <summary>Bending stiffness of a strip across the part, for each unit of its width (N m2/m).</summary>
    public required Computed<Torque> StripAcross { get; init; }

    /// <summary>
    /// Shear stiffness of the one core between two skins, for each unit of width: what a strip sags by besides its bending. Null for any other
    /// stack, and where the core gives no shear modulus.
    /// </summary>
    public Computed<ForcePerLength>? CoreShear { get; init; }

    /// <summary>What each full-cover line brings, from the mould.</summary>
    public required ImmutableArray<PlyShare> Lines { get; init; }

    /// <summary>Names of the plies and cores that cover only part of the surface: nothing here counts them.</summary>
    public ImmutableArray<string> LeftOut { get; init; } = [];

    /// <summary>What the stated loads do to it, in the order of the recipe.</summary>
    public ImmutableArray<LoadPlan> Loads { get; init; } = [];

    /// <summary>How it wants to spring when it cools; null when an expansion is missing, or when no cure says from where it cools.</summary>
    public CurlPlan? Curl { get; init; }
}

/// <summary>
/// What one line of the stack brings, as shares of the whole: what the stack would lose without it. Each line is taken out alone, so the
/// losses do not add up to 1.
/// </summary>
/// <param name="Name">The line.</param>
/// <param name="Mass">Share of the cured mass of the stack.</param>
/// <param name="Thickness">Share of its thickness.</param>
/// <param name="Stretching">Share of the stiffness against a pull along the part.</param>
/// <param name="Bending">Share of the bending stiffness of a strip along the part.</param>
/// <param name="AsSpacer">The part of <paramref name="Bending"/> that it brings by holding the others apart; the rest is its own stiffness.</param>
public sealed record PlyShare(string Name, double Mass, double Thickness, double Stretching, double Bending, double AsSpacer);
