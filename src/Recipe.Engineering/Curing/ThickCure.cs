using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What the cure of a thick laminate comes to.</summary>
/// <param name="Peak">The highest temperature anywhere in it.</param>
/// <param name="PeakAt">When that is.</param>
/// <param name="PeakDepth">How deep that is, from the mould's face.</param>
/// <param name="LeastDegree">Degree of cure at the end where it is least.</param>
/// <param name="MostDegree">Degree of cure at the end where it is most.</param>
/// <param name="Final">The state at the end through the thickness, from the mould's face to the bag's.</param>
public sealed record ThickCure(
    Temperature Peak, Duration PeakAt, Length PeakDepth, Ratio LeastDegree, Ratio MostDegree, IReadOnlyList<ThicknessPoint> Final);
