using Recipe.Model;
using Recipe.Planning.Ledger;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Prices and the shelf, looked up by name.</summary>
internal sealed class Prices
{
    private readonly PlanContext _context;
    private readonly Dictionary<string, PriceLine> _lines = new(StringComparer.Ordinal);

    public Prices(PlanContext context)
    {
        _context = context;
        foreach (var line in context.Model.Prices)
        {
            _lines[line.Material] = line;
        }
    }

    /// <summary>The price of a name: the last price line for it, else the material's own.</summary>
    public Price? Of(string name, Material material) => _lines.TryGetValue(name, out var line) ? line.Price.Value : material.Price?.Value;

    /// <summary>What an amount costs, to a hundredth; null when the price is for another kind of amount and nothing turns one into the other.</summary>
    public static decimal? Cost(Price? price, double si, Dimension dimension, Material material, Num? density)
    {
        if (price is null)
        {
            return null;
        }

        double? bought = price.Unit is { } unit ? Convert(si, dimension, unit.Dimension, material, density) : dimension == Dimension.None ? si : null;
        if (bought is not { } amount)
        {
            return null;
        }

        var number = price.Unit is { } u ? amount / u.Factor : amount;
        return number is >= 0 and < 1e12 && price.Amount is >= 0 and < 1e12m ? Math.Round((decimal)number * price.Amount, 2) : null;
    }

    /// <summary>What is on the shelf under a name, as an amount of this dimension; null when nothing is recorded or it does not compare.</summary>
    public double? OnTheShelf(string name, Dimension dimension, Material material, Num? density)
    {
        if (_context.Model.Stock.IsEmpty)
        {
            return null;
        }

        var sum = 0.0;
        foreach (var line in _context.Model.Stock)
        {
            if (line.Material != name)
            {
                continue;
            }

            if (line.Amount is not { } amount || Convert(amount.Si, amount.Dimension, dimension, material, density) is not { } si)
            {
                return null;
            }

            sum += si;
        }

        return sum;
    }

    /// <summary>Whether the shelf has a line of this name.</summary>
    public bool Knows(string name)
    {
        foreach (var line in _context.Model.Stock)
        {
            if (line.Material == name)
            {
                return true;
            }
        }

        return _lines.ContainsKey(name);
    }

    // Length of a roll and area through its width; mass and volume of a liquid through its density.
    private static double? Convert(double si, Dimension from, Dimension to, Material material, Num? density)
    {
        if (from == to)
        {
            return si;
        }

        if (from == DimensionNames.Length && to == DimensionNames.Area)
        {
            return Width(material) is { } width ? si * width : null;
        }

        if (from == DimensionNames.Area && to == DimensionNames.Length)
        {
            return Width(material) is { } width ? si / width : null;
        }

        if (density is not { Si: > 0 } rho)
        {
            return null;
        }

        return from == DimensionNames.Mass && to == DimensionNames.Volume ? si / rho.Si
            : from == DimensionNames.Volume && to == DimensionNames.Mass ? si * rho.Si
            : null;
    }

    private static double? Width(Material material)
    {
        Figure<Length>? width = material switch
        {
            Reinforcement cloth => cloth.Width,
            Consumable layer => layer.Width,
            _ => null,
        };
        return width?.Value.Meters is > 0 and < 1e9 and var metres ? metres : null;
    }
}
