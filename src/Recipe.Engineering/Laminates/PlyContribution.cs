using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What one ply brings to a laminate, as what the laminate would lose without it; in one direction of the plane.</summary>
/// <param name="Ply">Index of the ply, 0 for the one on the mould.</param>
/// <param name="Mass">Its mass per area.</param>
/// <param name="MassShare">Its share of the laminate's mass; nil when no masses are given.</param>
/// <param name="Thickness">Its thickness.</param>
/// <param name="ThicknessShare">Its share of the laminate's thickness.</param>
/// <param name="Stretching">In-plane stiffness for each unit of width that is lost without it; the laminate is held flat.</param>
/// <param name="StretchingShare">The same as a share of the laminate's.</param>
/// <param name="Bending">Strip bending stiffness for each unit of width (N m2/m) that is lost without it.</param>
/// <param name="BendingShare">The same as a share of the laminate's.</param>
/// <param name="BendingAsStiffness">
/// The part of the loss that its own stiffness makes up: what is lost when the ply stays as a spacer without stiffness.
/// </param>
/// <param name="BendingAsSpacer">
/// The rest: what is then lost when the spacer goes too and the others close up. Small beside the other part, the ply works by
/// its stiffness; large, it works by its thickness, as a core does.
/// </param>
public sealed record PlyContribution(
    int Ply,
    AreaDensity Mass,
    Ratio MassShare,
    Length Thickness,
    Ratio ThicknessShare,
    ForcePerLength Stretching,
    Ratio StretchingShare,
    Torque Bending,
    Ratio BendingShare,
    Torque BendingAsStiffness,
    Torque BendingAsSpacer);
