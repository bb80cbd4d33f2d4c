using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Where the mixed resin goes. The five parts add up to <see cref="ToMix"/>.</summary>
/// <param name="Laminate">Resin that stays in the part, coats and core faces included.</param>
/// <param name="PickUp">Resin that goes with peel ply, bleeder, breather and other consumables.</param>
/// <param name="ToolLoss">Resin left on brushes and rollers.</param>
/// <param name="PotLoss">Resin left in the pots.</param>
/// <param name="Spare">Contingency that should be left over.</param>
/// <param name="ToMix">All resin to mix.</param>
public sealed record ResinSheet(Mass Laminate, Mass PickUp, Mass ToolLoss, Mass PotLoss, Mass Spare, Mass ToMix);
