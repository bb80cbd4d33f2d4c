using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Classical lamination theory of a flat stack of plies: thin, perfectly bonded, linear, plane stress, no shear across the
/// thickness. Everything is computed when the laminate is made, and never changes.
/// </summary>
/// <remarks>
/// <para>
/// Convention. The first ply lies on the mould. z runs from the mould to the bag and is zero in the middle of the thickness, so
/// the mould side is at -h/2 and the bag side at +h/2. Angles run counter-clockwise from x to y for someone who looks at
/// the tool face, that is from the bag side. A positive curvature <c>kappa_x = -w,xx</c> stretches the bag side: the
/// laminate is hollow towards the mould. Textbooks that list plies from the top, with z downwards from the middle, use
/// the same numbers when their first ply is our first ply; for a stack listed from the other side the sign of B changes.
/// </para>
/// <para>
/// Source: e.g. Jones, Mechanics of Composite Materials, or Kaw, Mechanics of Composite Materials, ch. 4. The result is an
/// estimate for comparing stacks, not a certification: parts that bear load, fly or hold pressure need tests and licensed
/// practice.
/// </para>
/// </remarks>
public sealed class Laminate
{
    /// <summary>A laminate of plies.</summary>
    /// <param name="plies">The plies; the first lies on the mould; at least one.</param>
    /// <exception cref="ArgumentException">There is no ply.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The stack is thicker than 100 m, or its plies differ so much that the inverse would be rounding.
    /// </exception>
    public Laminate(IReadOnlyList<LaminatePly> plies)
    {
        ArgumentNullException.ThrowIfNull(plies);
        if (plies.Count == 0)
        {
            throw new ArgumentException("A laminate without plies has no stiffness.", nameof(plies));
        }

        Plies = [.. plies];
        double h = 0;
        double mass = 0;
        for (int i = 0; i < plies.Count; i++)
        {
            h += plies[i].Metres;
            mass += plies[i].Mass.KilogramsPerSquareMeter;
        }

        Metres = Guard.Between(h, 0, 100, "m", nameof(plies));
        Mass = AreaDensity.FromKilogramsPerSquareMeter(mass);

        StackSums sums = default;
        double z = -h / 2;
        foreach (LaminatePly ply in Plies)
        {
            for (int i = 0; i < ply.Layers.Count; i++)
            {
                Layer layer = ply.Layers[i];
                sums.Add(layer.Stiffness, z, z + layer.Metres);
                z += layer.Metres;
            }
        }

        (InPlaneStiffness, Coupling, BendingStiffness) = (sums.A, sums.B, sums.D);
        StackInverse inverse = sums.Invert(nameof(plies));
        (FreeBendingStiffness, BendingCompliance) = (inverse.FreeBending, inverse.Bending);
        CouplingCompliance = inverse.Shift.NegativeTimes(BendingCompliance);
        InPlaneCompliance = inverse.InverseA + (-1 * CouplingCompliance.SymmetricTimesTranspose(inverse.Shift));
    }

    /// <summary>The plies; the first lies on the mould.</summary>
    public IReadOnlyList<LaminatePly> Plies { get; }

    /// <summary>Thickness h.</summary>
    public Length Thickness => Length.FromMeters(Metres);

    /// <summary>Mass per area.</summary>
    public AreaDensity Mass { get; }

    /// <summary>A: in-plane forces per length from mid-plane strains, N/m.</summary>
    public PlaneMatrix InPlaneStiffness { get; }

    /// <summary>B: in-plane forces per length from curvatures, and moments per length from mid-plane strains, N.</summary>
    public PlaneMatrix Coupling { get; }

    /// <summary>D: moments per length from curvatures about the middle plane, with no mid-plane strain, N m.</summary>
    public PlaneMatrix BendingStiffness { get; }

    /// <summary>a: mid-plane strains from in-plane forces per length, m/N; the laminate is free to curve.</summary>
    public PlaneMatrix InPlaneCompliance { get; }

    /// <summary>b: mid-plane strains from moments per length, 1/N; transposed, curvatures from in-plane forces per length.</summary>
    public CouplingMatrix CouplingCompliance { get; }

    /// <summary>d: curvatures from moments per length, 1/(N m); the laminate is free to stretch.</summary>
    public PlaneMatrix BendingCompliance { get; }

    /// <summary>
    /// <c>D - B A^-1 B</c>, the inverse of d, N m: moments per length when all three curvatures are imposed and nothing pulls in the plane.
    /// </summary>
    public PlaneMatrix FreeBendingStiffness { get; }

    internal double Metres { get; }

    /// <summary>
    /// Moduli of a solid plate of the same thickness that stretches as this one does, free to curve: <c>Ex = 1/(a11 h)</c>. For a
    /// symmetric stack these are the constants of A; bending has its own, which may be far from these.
    /// </summary>
    /// <param name="direction">Direction of x, counter-clockwise from the laminate's own; at most 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    /// <remarks>Source: e.g. Kaw, ch. 4.4 (from memory).</remarks>
    public LaminateConstants StretchingConstants(Angle direction = default) =>
        LaminateConstants.From(Metres * InPlaneCompliance.ComplianceInAxesTurnedBy(direction));

    /// <summary>
    /// Moduli of a solid plate of the same thickness that bends as this one does, free to stretch: <c>Ex = 12/(d11 h^3)</c>.
    /// </summary>
    /// <param name="direction">Direction of x, counter-clockwise from the laminate's own; at most 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    /// <remarks>Source: e.g. Kaw, ch. 4.4 (from memory).</remarks>
    public LaminateConstants BendingConstants(Angle direction = default) =>
        LaminateConstants.From(
            Metres * Metres * Metres / 12 * BendingCompliance.ComplianceInAxesTurnedBy(direction));

    /// <summary>
    /// Bending stiffness of a narrow strip for each unit of its width, <c>1/d11</c>, N m2/m (carried as N m): it is free to bow across
    /// and to twist.
    /// </summary>
    /// <param name="direction">Direction of the strip, counter-clockwise from x; at most 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    /// <remarks>Source: compliance of the laminate under one moment; times the width it is the EI of a beam.</remarks>
    public Torque StripStiffness(Angle direction = default) =>
        Torque.FromNewtonMeters(1 / BendingCompliance.ComplianceInAxesTurnedBy(direction).M11);

    /// <summary>
    /// Bending stiffness of a wide panel for each unit of its width, N m2/m (carried as N m): curvature across and twist are held at
    /// nil, as in a panel that bends to part of a cylinder. It is never less than the strip's.
    /// </summary>
    /// <param name="direction">Direction of the bend, counter-clockwise from x; at most 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range.</exception>
    /// <remarks>Source: cylindrical bending, <c>(D - B A^-1 B)11</c>, e.g. Whitney, Structural Analysis of Laminated Anisotropic Plates (from memory).</remarks>
    public Torque PanelStiffness(Angle direction = default) =>
        Torque.FromNewtonMeters(FreeBendingStiffness.StiffnessInAxesTurnedBy(direction).M11);
}
