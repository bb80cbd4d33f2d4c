using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Units;

namespace Recipe.Documents.Takeoffs;

/// <summary>The takeoff for all the parts of the job, where another number is asked for than the recipe gives.</summary>
internal static class JobTakeoff
{
    /// <summary>The lines for all of them. Amounts and costs grow with the number of parts; what is on the shelf does not.</summary>
    public static ImmutableArray<TakeoffLine> Lines(PaperContext context)
    {
        var lines = context.Plan.Takeoff;
        var factor = (double)context.Parts / Math.Max(1, context.Part.Quantity);
        if (factor == 1)
        {
            return lines;
        }

        // A resin may stand in two lines; the shelf gives it only once.
        var giving = new ShelfGiving();
        var scaled = ImmutableArray.CreateBuilder<TakeoffLine>(lines.Length);
        foreach (var line in lines)
        {
            var gross = line.Gross.Value.Si * factor;
            var left = giving.For(line.ShelfName, line.IsHardener, gross, line.InStock?.Si);
            scaled.Add(line with
            {
                Net = line.Net with { Value = line.Net.Value with { Si = line.Net.Value.Si * factor } },
                Gross = line.Gross with { Value = line.Gross.Value with { Si = gross } },
                ToBuy = left is { } there ? line.InStock!.Value with { Si = Math.Max(0, gross - there) } : null,
                Cost = line.Cost is { } cost ? Math.Round(cost * (decimal)factor, 2) : null,
            });
        }

        return scaled.MoveToImmutable();
    }

    /// <summary>What the lines with a price cost together, by currency.</summary>
    public static (ImmutableArray<(string Currency, decimal Amount)> Costs, int WithoutPrice) Total(ImmutableArray<TakeoffLine> lines) =>
        (TakeoffSums.CostsOf(lines), lines.Count(line => line.Cost is null));

    /// <summary>
    /// A whole roll, in the dimension of the line, and how many are needed for what is to buy (or for all of it, where nobody recorded the shelf);
    /// null when the length of a roll is not known.
    /// </summary>
    public static (Amount Pack, int Packs)? PackOf(TakeoffLine line)
    {
        var (length, width) = line.Material switch
        {
            Reinforcement cloth => (cloth.RollLength?.Value.Meters, cloth.Width?.Value.Meters),
            Consumable layer => (layer.RollLength?.Value.Meters, layer.Width?.Value.Meters),
            Tape tape => (tape.RollLength?.Value.Meters, tape.Width?.Value.Meters),
            _ => (null, null),
        };
        var unit = line.Gross.Value.Unit;
        double? pack = unit?.Dimension == DimensionNames.Area ? length * width : unit?.Dimension == DimensionNames.Length ? length : null;
        var needed = (line.ToBuy ?? line.Gross.Value).Si;
        return pack is > 0 and { } si && needed / si < 1e6 ? (new Amount(si, unit), (int)Math.Ceiling((needed / si) - 1e-9)) : null;
    }
}
