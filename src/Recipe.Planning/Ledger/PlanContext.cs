using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning.Ledger;

/// <summary>What every planner works with: the part, its shop, the figures and the books.</summary>
internal sealed class PlanContext
{
    public PlanContext(Part part, RecipeModel model)
    {
        Part = part;
        Model = model;
        Ledger = new PlanLedger();
        Figures = new FigureReader(Ledger);
        PartOwner = Owner.Of(part);
        ShopOwner = model.Shop is { } shop ? Owner.Of(shop) : PartOwner;
    }

    public Part Part { get; }

    public RecipeModel Model { get; }

    public Shop? Shop => Model.Shop;

    public PlanLedger Ledger { get; }

    public FigureReader Figures { get; }

    public Owner PartOwner { get; }

    public Owner ShopOwner { get; }

    public Process Process => Part.Process.Value;

    /// <summary>Notes that something cannot be computed.</summary>
    public void Miss(string subject, string missing) => Ledger.Miss(subject, missing);

    /// <summary>
    /// Whether a ply stands in the recipe that could not be understood. A sum without it would be wrong and look right, so it is missed instead.
    /// </summary>
    public bool MissesForAPly(string subject)
    {
        if (Part.UnreadPlies.IsEmpty)
        {
            return false;
        }

        Miss(subject, $"ply {Part.UnreadPlies[0]} could not be read");
        return true;
    }

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<Length> value) => new(value.Value.Meters, Ledger.Assume(value));

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<Mass> value) => new(value.Value.Kilograms, Ledger.Assume(value));

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<Duration> value) => new(value.Value.Seconds, Ledger.Assume(value));

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<AreaDensity> value) => new(value.Value.KilogramsPerSquareMeter, Ledger.Assume(value));

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<Density> value) => new(value.Value.KilogramsPerCubicMeter, Ledger.Assume(value));

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<Volume> value) => new(value.Value.CubicMeters, Ledger.Assume(value));

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<Pressure> value) => new(value.Value.Pascals, Ledger.Assume(value));

    /// <summary>A default as an SI number.</summary>
    public Num Take(TradeDefault<TemperatureDelta> value) => new(value.Value.Kelvins, Ledger.Assume(value));

    /// <summary>A default as a plain number.</summary>
    public Num Take(TradeDefault<double> value) => new(value.Value, Ledger.Assume(value));

    /// <summary>A default as it stands.</summary>
    public Known<T> TakeKnown<T>(TradeDefault<T> value) => new(value.Value, Ledger.Assume(value));

    /// <summary>That a material was chosen for its class because the recipe names only the class.</summary>
    public Rests ChosenByDefault(Material material) => Ledger.Assume(new Assumption(
        $"default.material.{material.Keyword}",
        $"{material.Keyword} where the recipe names no material",
        material.Name,
        "the book's entry that says `default yes`",
        $"write `{material.Keyword} NAME`"));
}
