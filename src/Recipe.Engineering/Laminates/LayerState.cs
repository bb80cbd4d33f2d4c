using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Strain and stress at one place in one layer.</summary>
/// <param name="Ply">Index of the ply, 0 for the one on the mould.</param>
/// <param name="Layer">Index of the layer in its ply.</param>
/// <param name="Face">Where in the layer; in an interlaced ply, where in the ply.</param>
/// <param name="Height">Height above the middle plane, positive towards the bag.</param>
/// <param name="Strain">Strain in the laminate's axes, with what temperature adds.</param>
/// <param name="Stress">Stress in the laminate's axes, Pa.</param>
/// <param name="OwnStrain">Strain in the layer's axes that stresses it: the whole strain less the free thermal one.</param>
/// <param name="OwnStress">Stress in the layer's axes, Pa.</param>
public readonly record struct LayerState(
    int Ply,
    int Layer,
    LayerFace Face,
    Length Height,
    PlaneVector Strain,
    PlaneVector Stress,
    PlaneVector OwnStrain,
    PlaneVector OwnStress);
