using Recipe.Model;

namespace Recipe.Checks;

/// <summary>What films of a bag are made of, by the words people use.</summary>
internal static class BagStuff
{
    /// <summary>Whether the bag film stretches into corners by itself.</summary>
    public static bool Stretches(Bag bag) => bag.Layers.Any(l => l.Class == LayerClass.BagFilm
        && (Has(l.Material.Name, "stretch") || Has(l.Material.Stuff, "urethane") || Has(l.Material.Stuff, "silicone") || Has(l.Material.Stuff, "rubber")
            || Has(l.Material.Name, "silicone") || Has(l.Material.Name, "latex")));

    /// <summary>Whether something is nylon.</summary>
    public static bool IsNylon(Consumable material) => Has(material.Stuff, "nylon") || (material.Stuff is null && Has(material.Name, "nylon"));

    /// <summary>Whether something is polyethylene or polypropylene.</summary>
    public static bool IsSoftPlastic(Consumable material) =>
        material.Stuff is { } stuff && (Has(stuff, "polyethylene") || Has(stuff, "polythene") || Has(stuff, "polypropylene") || stuff is "pe" or "pp" or "PE" or "PP");

    private static bool Has(string? text, string word) => text?.Contains(word, StringComparison.OrdinalIgnoreCase) == true;
}
