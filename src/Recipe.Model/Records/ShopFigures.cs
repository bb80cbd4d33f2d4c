using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>Resin content that a shop finds in a cloth, for one process.</summary>
/// <param name="Material">Name of the cloth.</param>
/// <param name="Process">The process.</param>
/// <param name="Content">What stays in it.</param>
/// <param name="Where">The line.</param>
public sealed record ShopContent(string Material, Process Process, Figure<Content> Content, SourceSpan Where);

/// <summary>Resin that a consumable carries away in a shop.</summary>
/// <param name="Material">Name of the consumable.</param>
/// <param name="Pickup">Resin for each area.</param>
/// <param name="Where">The line.</param>
public sealed record ShopPickup(string Material, Figure<AreaDensity> Pickup, SourceSpan Where);
