using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How a piece is made up of strips side by side when the roll is narrower than the piece.</summary>
/// <param name="Strips">Number of strips; 1 when the roll is wide enough.</param>
/// <param name="StripWidth">Width of each strip across the roll, the overlap included.</param>
/// <param name="RollLength">Length of roll that all strips take together.</param>
/// <param name="OverlapArea">Area of cloth that lies double at the joints.</param>
public sealed record StripPlan(int Strips, Length StripWidth, Length RollLength, Area OverlapArea);
