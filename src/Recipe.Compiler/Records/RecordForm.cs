using System.Globalization;
using System.Text;
using Recipe.Documents;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler.Records;

/// <summary>
/// The form of a build record: a text of the language with a blank (<c>__</c>) for everything that happens at the bench, what the plan
/// says of it behind each, and what the plan says of the part as a whole kept inside.
/// </summary>
public static class RecordForm
{
    /// <summary>Writes the form of one part.</summary>
    /// <param name="file">The recipe.</param>
    /// <param name="part">The part.</param>
    /// <param name="serial">Its serial number; 0 or more.</param>
    /// <param name="on">The day.</param>
    /// <param name="usePath">How the form names another file, relative to where the form will stand, by the name the file was compiled under.</param>
    /// <exception cref="ArgumentException">The file has no such part.</exception>
    public static string Write(CompiledFile file, string part, int serial, DateOnly on, Func<string, string> usePath)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(usePath);
        ArgumentOutOfRangeException.ThrowIfNegative(serial);
        var compiled = file.Parts.FirstOrDefault(known => known.Part.Name == part) ?? throw new ArgumentException($"There is no part '{part}'.", nameof(part));
        var text = new StringBuilder();
        text.Append("# A build record. `__` is a blank: write what happened in its place. Take away what does not apply, write below what has no line.\n");
        foreach (var name in Uses(file, compiled.Plan))
        {
            text.Append(CultureInfo.InvariantCulture, $"use {QuotedText.Of(usePath(name))}\n");
        }

        text.Append('\n');
        text.Append(CultureInfo.InvariantCulture, $"build {part} no {serial} on {on:yyyy-MM-dd} {{\n");
        var holds = Papers.HoldPoints(BenchPapers.InputFor(file, compiled, new PaperWish { Part = part }));
        foreach (var line in Lines(compiled.Plan, file.Revision, holds, on))
        {
            text.Append("  ").Append(line).Append('\n');
        }

        text.Append("}\n");
        return Formatter.Format(SyntaxTree.Parse(new SourceText("record", text.ToString())));
    }

    /// <summary>The recipe, and the files in which materials stand that the form names: what a used file uses in turn is not in scope.</summary>
    private static IEnumerable<string> Uses(CompiledFile file, Plan plan)
    {
        var shelves = plan.Takeoff.Select(line => line.Material)
            .Concat(plan.Bag is { } bag ? bag.Layers.Select(layer => (Material)layer.Layer.Material) : [])
            .Concat(plan.Stack.Select(line => line.Item).OfType<PlyItem>().Select(ply => ply.Material))
            .Select(material => material.Where.Source.Name)
            .ToHashSet(StringComparer.Ordinal);
        return [file.Source.Name, .. file.Used.Select(used => used.Source.Name).Where(shelves.Contains)];
    }

    private static IEnumerable<string> Lines(Plan plan, string revision, IEnumerable<(string Id, string Title)> holds, DateOnly on)
    {
        var units = new FormUnits(plan.Shop?.Units ?? UnitSystem.Metric);
        var planned = PlannedFiguresOf.Plan(plan);
        yield return $"revision \"{revision}\"";
        yield return "by __";
        yield return "helper __";
        yield return $"room __   # plan {units.Of(plan.Conditions.Room.Value)}";
        yield return "humidity __";
        yield return $"pulls-since-release __{(plan.Part.Mould?.PullsSinceRelease is { } pulls ? $"   # the mould says {pulls.Written}" : "")}";
        yield return "";
        // What is weighed is said as the scale shows it, and the kit as the sum of what the cut list prints.
        var scale = new QuantityText(plan.Shop);
        string Shown(UnitsNet.Mass mass) => scale.Weight(mass).Main.Replace('\u00A0', ' ');
        string About(UnitsNet.Mass mass) => scale.AboutOnScale(mass).Main.Replace('\u00A0', ' ');
        if (planned.Kit is not null)
        {
            var kit = plan.Stack.Where(line => line.Item is PlyItem).Aggregate(UnitsNet.Mass.Zero, (sum, line) => sum + scale.OnScale(line.CutMass!.Value.Value));
            yield return $"kit __   # dry pieces; plan {Shown(kit)}";
        }

        foreach (var line in Used(plan, units, on))
        {
            yield return line;
        }

        yield return "";
        foreach (var pot in plan.Pots)
        {
            yield return $"pot {pot.Number.ToString(CultureInfo.InvariantCulture)} resin __ hardener __ mixed-at __ dead-at __{(pot is { Resin: { } resin, Hardener: { } hardener } ? $"   # plan {Shown(resin.Value)} and {Shown(hardener.Value)}" : "")}";
        }

        if (plan.Pots.Length > 0)
        {
            yield return plan.Part.Process.Value == Process.Infused ? "left __   # what stayed in the feed pot" : "left __   # what stayed in pots, brush and roller";
        }

        if (PlannedFiguresOf.WetWork(plan) is var (wet, pieces))
        {
            yield return $"wet-out from __ until __ over {units.Of(wet)} pieces {pieces.ToString(CultureInfo.InvariantCulture)} laminators {(planned.Laminators ?? 1).ToString(CultureInfo.InvariantCulture)}{(planned.WetOut is { } time ? $"   # plan {FormUnits.Minutes(time)}" : "")}";
        }

        yield return "";
        foreach (var line in Vacuum(plan, planned, units))
        {
            yield return line;
        }

        if (plan.Cure is not null)
        {
            yield return $"cure hottest __ lasted __   # plan {units.Of(planned.Hottest!.Value)}, {FormUnits.Of(planned.CureTime!.Value)}";
        }

        yield return "demould after __ at __   # from the first mix; how warm until then";
        yield return "";
        yield return "untrimmed __";
        yield return $"mass __{(planned is { Mass: { } mass, MassLow: { } low, MassHigh: { } high } ? $"   # plan {About(mass)}; from {About(low)} to {About(high)}" : "")}";
        for (var mark = 1; mark <= 3 && planned.Thickness is not null; mark++)
        {
            yield return $"thickness __ at \"mark {mark.ToString(CultureInfo.InvariantCulture)}\"{(mark == 1 ? $"   # plan {units.Of(planned.Thickness.Value)}" : "")}";
        }

        yield return "pinholes __   # in the worst square decimetre";
        if (plan.Part.Bag is { } bag && bag.Layers.Any(layer => layer.Class == LayerClass.PeelPly))
        {
            yield return "peel-ply __   # dry, even or wet";
        }

        yield return "defect __ at __ size __";
        yield return "cause __";
        yield return "action __";
        yield return "deviation __ because __";
        yield return "";
        foreach (var (id, title) in holds)
        {
            yield return $"signed {id} by __ at __   # {title}";
        }

        yield return "disposition __ because __ by __   # use, repair or scrap";
        yield return "";
        foreach (var line in Kept(planned, units))
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Used(Plan plan, FormUnits units, DateOnly on)
    {
        // One cloth may be ply and tape of the seam, one resin laminate and adhesive: from the shelf it is taken once.
        var taken = plan.Takeoff.Where(line => line.Group is not (TakeoffGroup.Bag or TakeoffGroup.Release) || !line.Shelf.IsEmpty).GroupBy(line => (line.Material.Name, line.Label));
        foreach (var (line, net) in taken.Select(lines => (lines.First(), lines.Sum(line => line.Net.Value.Si))))
        {
            // The takeoff is for all parts of the job; a record is of one.
            var amount = net / Math.Max(1, plan.Part.Quantity);
            var written = line.Net.Value.Unit switch
            {
                { } unit when unit.Dimension == Recipe.Text.Units.DimensionNames.Mass => units.Of(UnitsNet.Mass.FromKilograms(amount)),
                { } unit when unit.Dimension == Recipe.Text.Units.DimensionNames.Area => units.Of(UnitsNet.Area.FromSquareMeters(amount)),
                { } unit => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(unit.FromSi(amount), 3)} {unit.Symbol}"),
                null => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(amount)}"),
            };
            var good = line.Shelf.Where(shelf => shelf.Lot is not null && (shelf.Expires is not { } end || end >= on)).ToList();
            yield return $"used {line.Material.Name} {written} lot {(good is [{ Lot: { } lot }] ? QuotedText.Of(lot) : "__")}{(line.Label == line.Material.Name ? "" : $"   # {line.Label}")}";
        }
    }

    private static IEnumerable<string> Vacuum(Plan plan, PlannedFigures planned, FormUnits units)
    {
        if (plan.Part.Vacuum is not null)
        {
            yield return $"vacuum on __ reached __ off __{(planned.Vacuum is { } level ? $"   # plan {level}; write below ambient or absolute" : "")}";
            yield return $"rise __ in {(planned.RiseTime is { } time ? FormUnits.Minutes(time) : "__")}{(planned.RiseAtMost is { } most ? $"   # at most {(plan.Part.Vacuum?.LeakCheck ?? plan.Part.Infusion?.DropTest)?.RiseAtMost?.Written ?? units.Of(most)}{(plan.Bag is { Bags: > 1 } ? "; that of the worse bag" : "")}" : "")}";
        }

        foreach (var layer in (plan.Bag?.Layers ?? []).Where(layer => layer.Pickup is { Value.Kilograms: > 0 }))
        {
            yield return $"pickup {layer.Layer.Material.Name} __ over {units.Of(layer.WetArea)}   # heavier by; plan {units.Of(layer.Pickup!.Value.Value)}";
        }
    }

    private static IEnumerable<string> Kept(PlannedFigures planned, FormUnits units)
    {
        yield return "planned {";
        if (planned.Process is { } process)
        {
            yield return $"process {process.ToString().ToLowerInvariant()}";
        }

        if (planned.Resin is { } resin)
        {
            yield return $"resin {resin}";
        }

        if (planned.Mass is { } mass)
        {
            yield return $"mass {units.Of(mass)}{(planned is { MassLow: { } low, MassHigh: { } high } ? $" band {units.Of(low)} to {units.Of(high)}" : "")}";
            yield return $"thickness {units.Of(planned.Thickness!.Value)}";
            yield return $"fibre {units.Of(planned.Fibre!.Value)}";
            yield return $"other {units.Of(planned.Other!.Value)}";
        }

        foreach (var cloth in planned.Cloths)
        {
            yield return $"cloth {cloth.Material} {units.Of(cloth.Fibre)} holds {FormUnits.Share(cloth.Content)} by weight";
        }

        if (planned.Kit is { } kit)
        {
            yield return $"kit {units.Of(kit)}";
        }

        if (planned.Mixed is { } mixed)
        {
            yield return $"mixed {units.Of(mixed)}";
        }

        if (planned.WetOut is { } wetOut)
        {
            yield return $"wet-out {FormUnits.Minutes(wetOut)}";
        }

        yield return $"laminators {(planned.Laminators ?? 1).ToString(CultureInfo.InvariantCulture)}";
        foreach (var layer in planned.Bag)
        {
            yield return $"bag {layer}";
        }

        if (planned.Vacuum is { } vacuum)
        {
            yield return $"vacuum {vacuum}";
        }

        if (planned.RiseAtMost is { } rise)
        {
            yield return $"rise {units.Of(rise)}{(planned.RiseTime is { } time ? $" in {FormUnits.Minutes(time)}" : "")}";
        }

        if (planned is { Hottest: { } hottest, CureTime: { } cure })
        {
            yield return $"cure hottest {units.Of(hottest)} lasted {FormUnits.Of(cure)}";
        }

        if (planned.HeatLimit is { } limit)
        {
            yield return $"heat-limit {units.Of(limit)}";
        }

        yield return "}";
    }
}
