using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Planning;

namespace Recipe.Documents.Takeoffs;

/// <summary>
/// The takeoff as one rectangular table. The first column says what a record is about (item, sum, total, mass, resin, assumption,
/// gap, finding, waiver, not-checked), so that a spreadsheet can filter and nothing the paper says is left out.
/// </summary>
internal static class TakeoffData
{
    private static readonly ImmutableArray<string> Columns =
    [
        "record", "group", "item", "name", "net", "waste_percent", "gross", "pack", "packs", "in_stock", "lots", "to_buy", "unit",
        "price", "price_per", "price_date", "cost", "currency", "mass_kg", "note", "source",
    ];

    public static DataTable Of(PaperContext context)
    {
        var rows = new Rows();
        foreach (var line in JobTakeoff.Lines(context))
        {
            Item(rows, context, line);
        }

        Sums(rows, context);
        Masses(rows, context.Plan);
        Notes(rows, context);
        return new DataTable(Columns, rows.ToImmutable());
    }

    private static void Item(Rows rows, PaperContext context, TakeoffLine line)
    {
        var unit = line.Net.Value.Unit;
        rows.Add(
            "item",
            ("group", Keys.Of(line.Group)),
            ("item", line.LabelWithVolume),
            ("name", line.Material.Name),
            ("net", line.Net.Value.Value),
            ("waste_percent", line.Waste.Value * 100),
            ("gross", In(unit, line.Gross.Value)),
            ("pack", JobTakeoff.PackOf(line) is { } pack ? In(unit, pack.Pack) : null),
            ("packs", JobTakeoff.PackOf(line)?.Packs),
            ("in_stock", In(unit, line.InStock)),
            ("lots", line.Shelf.IsEmpty ? null : string.Join("; ", line.Shelf.Select(shelf => string.Join(" ", new[] { shelf.Lot, shelf.Expires is { } day ? Quantities.Numbers.Day(day) : null }.OfType<string>())))),
            ("to_buy", In(unit, line.ToBuy)),
            ("unit", unit?.Symbol ?? "piece"),
            ("price", line.Price?.Amount),
            ("price_per", line.Price is null ? null : line.Price.Unit?.Symbol ?? "piece"),
            ("price_date", line.Price?.On),
            ("cost", line.Cost),
            ("currency", line.Price?.Currency),
            ("mass_kg", TakeoffSums.MassOf(line)?.Kilograms),
            ("note", context.RestsOn(line.Net.RestsOn, line.Waste.RestsOn, line.Gross.RestsOn)));
    }

    private static void Sums(Rows rows, PaperContext context)
    {
        var lines = JobTakeoff.Lines(context);
        foreach (var sum in TakeoffSums.Of(lines))
        {
            var mass = Adding(sum.Mass.Kilograms, lines, line => line.Group == sum.Group ? TakeoffSums.MassOf(line)?.Kilograms : null);
            rows.Add("sum", ("group", Keys.Of(sum.Group)), ("mass_kg", mass), ("note", Without(sum.WithoutMass, "mass")));
            foreach (var (currency, amount) in sum.Costs)
            {
                var cost = Adding(amount, lines, line => line.Group == sum.Group && line.Price?.Currency == currency ? line.Cost : null);
                rows.Add("sum", ("group", Keys.Of(sum.Group)), ("cost", cost), ("currency", currency), ("note", Without(sum.WithoutPrice, "price")));
            }
        }

        var (costs, without) = JobTakeoff.Total(lines);
        foreach (var (currency, amount) in costs)
        {
            rows.Add("total", ("cost", Adding(amount, lines, line => line.Price?.Currency == currency ? line.Cost : null)), ("currency", currency), ("note", Without(without, "price")));
            rows.Add("total-of-one-part", ("cost", decimal.Round(amount / context.Parts, 4)), ("currency", currency), ("note", "every part counted as good"));
        }
    }

    // The lines of the takeoff are the first rows of the table. A total that is more than its lines stays a number.
    private static object Adding<T>(T total, ImmutableArray<TakeoffLine> lines, Func<TakeoffLine, T?> value)
        where T : struct, System.Numerics.INumber<T>
    {
        var rows = Enumerable.Range(0, lines.Length).Where(i => value(lines[i]) is not null).ToImmutableArray();
        var added = rows.Aggregate(T.Zero, (sum, i) => sum + value(lines[i])!.Value);
        return rows.Length > 0 && double.CreateChecked(T.Abs(added - total)) <= 1e-9 ? new Sum(total, rows) : total;
    }

    private static string? Without(int lines, string what) => lines == 0 ? null : $"{Words.Count(lines, "line", "lines")} without {what}";

    private static void Masses(Rows rows, Plan plan)
    {
        if (plan.Laminate is { } laminate)
        {
            rows.Add("mass", ("item", "fibre"), ("mass_kg", laminate.Fibre.Value.Kilograms));
            rows.Add("mass", ("item", "resin"), ("mass_kg", laminate.Resin.Value.Kilograms));
            rows.Add("mass", ("item", "core"), ("mass_kg", laminate.Core.Value.Kilograms));
            rows.Add("mass", ("item", "coats"), ("mass_kg", laminate.Coats.Value.Kilograms));
            rows.Add("mass", ("item", "inserts"), ("mass_kg", laminate.Inserts.Value.Kilograms));
            if (laminate.Join is { } join)
            {
                rows.Add("mass", ("item", "join"), ("mass_kg", join.Value.Kilograms));
            }
        }

        if (plan.TrimmedMass is { Value: var mass })
        {
            rows.Add("mass", ("item", "trimmed part, expected"), ("mass_kg", mass.Value.Kilograms));
            rows.Add("mass", ("item", "trimmed part, low"), ("mass_kg", mass.Low.Kilograms));
            rows.Add("mass", ("item", "trimmed part, high"), ("mass_kg", mass.High.Kilograms));
        }

        if (plan.Part.TargetMass is { } target)
        {
            rows.Add("mass", ("item", "trimmed part, target"), ("mass_kg", target.Value.Kilograms), ("note", target.Written), ("source", target.Source));
        }

        if (plan.Resin is { } resin)
        {
            foreach (var line in resin.Lines)
            {
                rows.Add("resin", ("item", line.Label), ("name", Keys.Of(line.Use)), ("mass_kg", line.Mass.Value.Kilograms));
            }

            rows.Add("resin", ("item", "need without spare"), ("name", "need"), ("mass_kg", resin.Need.Value.Kilograms));
            rows.Add("resin", ("item", "to mix"), ("name", "to-mix"), ("mass_kg", resin.ToMix.Value.Kilograms));
        }
    }

    private static void Notes(Rows rows, PaperContext context)
    {
        for (var i = 0; i < context.Plan.Assumptions.Length; i++)
        {
            var assumption = context.Plan.Assumptions[i];
            var note = $"{PaperContext.AssumptionId(i + 1)}: {assumption.Value}; to replace it, {assumption.HowToReplace}";
            rows.Add("assumption", ("item", assumption.What), ("name", assumption.Key), ("note", note), ("source", assumption.Source));
        }

        foreach (var gap in context.Plan.Gaps)
        {
            rows.Add("gap", ("item", gap.Subject), ("note", gap.Missing));
        }

        foreach (var finding in context.Input.Findings)
        {
            var accepted = finding.AcceptedBecause is { } because ? $"; accepted because {because}" : "";
            rows.Add("finding", ("item", finding.Message), ("name", finding.Descriptor.Code), ("note", Words.Of(finding.Severity, context.Wording) + accepted), ("source", finding.Descriptor.Source));
        }

        foreach (var waiver in context.Part.Waivers)
        {
            rows.Add("waiver", ("name", waiver.Code), ("note", waiver.Because), ("item", waiver.Until is { } day ? $"until {Quantities.Numbers.Day(day)}" : null));
        }

        foreach (var check in context.Input.NotChecked)
        {
            rows.Add("not-checked", ("item", check.Descriptor.Title), ("name", check.Descriptor.Code), ("note", check.Missing));
        }
    }

    // All amounts of a line stand in the unit of its net amount.
    private static double? In(Text.Units.Unit? unit, Amount? amount) => amount is null ? null : unit?.FromSi(amount.Value.Si) ?? amount.Value.Si;

    private sealed class Rows
    {
        private readonly ImmutableArray<ImmutableArray<object?>>.Builder _rows = ImmutableArray.CreateBuilder<ImmutableArray<object?>>();

        public void Add(string record, params ReadOnlySpan<(string Column, object? Value)> fields)
        {
            var row = new object?[Columns.Length];
            row[0] = record;
            foreach (var (column, value) in fields)
            {
                row[Columns.IndexOf(column)] = value;
            }

            _rows.Add([.. row]);
        }

        public ImmutableArray<ImmutableArray<object?>> ToImmutable() => _rows.ToImmutable();
    }
}
