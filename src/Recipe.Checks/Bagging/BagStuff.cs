using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>What films of a bag are made of, by the words people use, and what its tape and edges come to.</summary>
internal static class BagStuff
{
    private static readonly Length UsualTape = Length.FromMillimeters(12);

    /// <summary>Whether the bag film stretches into corners by itself.</summary>
    public static bool Stretches(Bag bag) => bag.Layers.Any(l => l.Class == LayerClass.BagFilm
        && (Has(l.Material.Name, "stretch") || Has(l.Material.Stuff, "urethane") || Has(l.Material.Stuff, "silicone") || Has(l.Material.Stuff, "rubber")
            || Has(l.Material.Name, "silicone") || Has(l.Material.Name, "latex")));

    /// <summary>Whether something is nylon.</summary>
    public static bool IsNylon(Consumable material) => Has(material.Stuff, "nylon") || (material.Stuff is null && Has(material.Name, "nylon"));

    /// <summary>Whether something is polyethylene or polypropylene.</summary>
    public static bool IsSoftPlastic(Consumable material) =>
        material.Stuff is { } stuff && (Has(stuff, "polyethylene") || Has(stuff, "polythene") || Has(stuff, "polypropylene") || stuff is "pe" or "pp" or "PE" or "PP");

    /// <summary>How wide the sealant tape of a bag is: its own figure, else 12 mm, which is usual.</summary>
    public static Length TapeWidth(Bag bag) => bag.SealantTape?.Material.Width?.Value ?? UsualTape;

    /// <summary>Rests on how far the plies run past the trim line too: the part's own figure, or the usual one.</summary>
    public static Grounds AndTrim(this Grounds grounds, Part part) =>
        part.Trim is { } trim ? grounds.And("trim allowance", trim) : grounds.AndThat($"{Defaults.Trim.What} {Defaults.Trim.Written}");

    private static bool Has(string? text, string word) => text?.Contains(word, StringComparison.OrdinalIgnoreCase) == true;
}
