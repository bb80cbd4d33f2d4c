using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Checks;

/// <summary>Tells what a thing in the heat belongs to; the plan names it by its material.</summary>
internal static class HeatOwners
{
    /// <summary>Whether it is the mould.</summary>
    public static bool IsOf(this HeatLimit limit, Mould mould) =>
        limit.Material == mould.Name || limit.Material == mould.MadeOf?.Name;

    /// <summary>Whether it is this core.</summary>
    public static bool IsOf(this HeatLimit limit, CoreItem core) => limit.Material == core.Material.Name;

    /// <summary>Whether it is a coat of the release block.</summary>
    public static bool IsOf(this HeatLimit limit, ReleaseCoat coat) => limit.Material == coat.Agent.Name;

    /// <summary>Whether it is a layer or a fitting of the bag.</summary>
    public static bool IsOf(this HeatLimit limit, Bag bag) =>
        bag.Layers.Any(l => l.Material.Name == limit.Material) || limit.IsOfFitting(bag);

    /// <summary>Whether it is a tape or a fitting of the bag, which lies beside the laminate.</summary>
    public static bool IsOfFitting(this HeatLimit limit, Bag bag) =>
        bag.SealantTape?.Material.Name == limit.Material
        || bag.Ports.Any(p => p.Material.Name == limit.Material)
        || bag.Hose?.Material.Name == limit.Material
        || bag.CatchPot?.Material.Name == limit.Material;
}
