using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A roll or an offcut that pieces may be cut from: a rectangle of cloth.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Width">Usable width, selvedges left out; greater than zero.</param>
/// <param name="Length">Length that is left, greater than zero; null for a roll that is long enough. What has a length is used up first.</param>
public sealed record RollStock(string Name, Length Width, Length? Length = null);
