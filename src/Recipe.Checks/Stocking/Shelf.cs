using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>What the shelf has of what a part takes.</summary>
internal static class Shelf
{
    /// <summary>The lines of the shelf for a material, in order.</summary>
    public static List<StockLine> Of(RecipeModel model, string material) => [.. model.Stock.Where(s => s.Material == material)];

    /// <summary>Resins, coats and adhesives that the part mixes, each once.</summary>
    public static IEnumerable<ResinSystem> Resins(Part part)
    {
        IEnumerable<ResinSystem?> all = [part.Resin, .. part.Coats.Select(c => c.Material), part.Join?.Adhesive];
        return all.OfType<ResinSystem>().DistinctBy(r => r.Name);
    }

    /// <summary>Where the part names a material, or null.</summary>
    public static SourceSpan? Used(Part part, string material) =>
        part.Resin?.Name == material ? part.ResinWhere
        : part.Stack.OfType<PlyItem>().FirstOrDefault(p => p.Material.Name == material)?.MaterialWhere
            ?? part.Stack.OfType<CoreItem>().FirstOrDefault(c => c.Material.Name == material)?.MaterialWhere
            ?? part.Coats.FirstOrDefault(c => c.Material.Name == material)?.Where
            ?? part.Bag?.Layers.FirstOrDefault(l => l.Material.Name == material)?.Where
            ?? (part.Bag?.SealantTape is { } tape && tape.Material.Name == material ? tape.Where : null);

    /// <summary>"lot E31 of slow-laminating-epoxy", or the material alone where the line names no lot.</summary>
    public static string Lot(StockLine line) => line.Lot is { } lot ? $"lot {lot} of {line.Material}" : line.Material;

    /// <summary>Months from one day to another, whole ones; negative when they run backwards.</summary>
    public static int Months(DateOnly from, DateOnly to)
    {
        var months = ((to.Year - from.Year) * 12) + to.Month - from.Month;
        return to.Day < from.Day ? months - 1 : months;
    }

    /// <summary>A shelf life in whole months, to the nearest: a month is a twelfth of a year of 365.25 days.</summary>
    public static int Months(Duration life)
    {
        const double daysOfAMonth = 365.25 / 12;
        return (int)Math.Round(life.Days / daysOfAMonth);
    }

    /// <summary>"2.4 kg", in the unit the takeoff counts in.</summary>
    public static string Say(Amount amount) => amount.Unit is { } unit
        ? $"{Checks.Say.Number(Math.Round(amount.Value, 2))} {unit.Symbol}"
        : Checks.Say.Number(amount.Value);
}
