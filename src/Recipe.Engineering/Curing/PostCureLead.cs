using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How a part's glass transition keeps ahead of its temperature in a post-cure.</summary>
/// <param name="Least">Least lead of the glass transition over the temperature; negative where the oven overtakes it.</param>
/// <param name="At">When that is.</param>
/// <param name="Softens">When the temperature first overtakes the glass transition and an unsupported part sags; null when it never does.</param>
/// <param name="Final">Glass transition at the end.</param>
public sealed record PostCureLead(TemperatureDelta Least, Duration At, Duration? Softens, Temperature Final);
