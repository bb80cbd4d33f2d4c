using Recipe.Model;
using Recipe.Planning.Ledger;
using Recipe.Text.Units;

namespace Recipe.Planning.Planners;

/// <summary>
/// The unit a material is bought in: the one its author wrote its weight or roll in (a cloth of 5.8 oz/yd2 is bought in yd2), or for
/// the book's own materials that of the shop; metric otherwise.
/// </summary>
internal static class TakeoffUnits
{
    public static readonly Unit SquareMetre = UnitTable.Get("m2");
    public static readonly Unit SquareYard = UnitTable.Get("yd2");
    public static readonly Unit SquareFoot = UnitTable.Get("ft2");
    public static readonly Unit Metre = UnitTable.Get("m");
    public static readonly Unit Foot = UnitTable.Get("ft");
    public static readonly Unit Gram = UnitTable.Get("g");
    public static readonly Unit Millilitre = UnitTable.Get("mL");

    /// <summary>Cloth, mat, veil, layers of the bag.</summary>
    public static Unit Sheet(PlanContext context, Material material, string? weight, string? width, string? roll)
    {
        if (IsShopUs(context, material))
        {
            return SquareYard;
        }

        if (Ends(weight, "yd2"))
        {
            return SquareYard;
        }

        if (Ends(weight, "ft2"))
        {
            return SquareFoot;
        }

        return weight is null && (IsUsLength(width) || IsUsLength(roll)) ? SquareYard : SquareMetre;
    }

    /// <summary>Cores, sold by the sheet.</summary>
    public static Unit Board(PlanContext context, Core core) =>
        IsShopUs(context, core) || IsUsLength(core.SheetLength?.Written) || (core.SheetLength is null && IsUsLength(core.Thickness?.Written))
            ? SquareFoot
            : SquareMetre;

    /// <summary>Tape and hose.</summary>
    public static Unit Run(PlanContext context, Material material, string? width, string? roll) =>
        IsShopUs(context, material) || IsUsLength(roll) || (roll is null && IsUsLength(width)) ? Foot : Metre;

    private static bool IsShopUs(PlanContext context, Material material) => material.FromBook && context.Shop?.Units == UnitSystem.Us;

    private static bool IsUsLength(string? written) => Ends(written, "in") || Ends(written, "ft") || Ends(written, "yd");

    // "5.8 oz/yd2", "60 in": the unit ends the text, and no metric unit ends like these.
    private static bool Ends(string? written, string unit)
    {
        if (written is null)
        {
            return false;
        }

        var text = written.AsSpan().TrimEnd();
        return text.EndsWith(unit, StringComparison.Ordinal)
            && (text.Length == unit.Length || !char.IsAsciiLetter(text[^(unit.Length + 1)]));
    }
}
