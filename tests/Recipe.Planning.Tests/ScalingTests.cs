using CsCheck;
using Recipe.Model;
using Recipe.TestKit.Models;
using UnitsNet;

namespace Recipe.Planning.Tests;

public class ScalingTests
{
    /// <summary>Twice the area, without a border and without joins, is twice the mass.</summary>
    [Fact]
    public void TwiceTheAreaIsTwiceTheMass() => RandomParts.Model.Sample(
        model =>
        {
            var part = model.Parts[0] with
            {
                Trim = Fig.Length("0 mm"),
                Stack = [.. model.Parts[0].Stack.Where(s => s is PlyItem { IsPatch: false, CoversArea: null, Step: null }).Select(s => Borderless((PlyItem)s))],
            };
            var once = Sized(part, 1, 1);
            var twice = Sized(part, 2, 1);
            if (part.Stack.IsEmpty)
            {
                return;
            }

            Close(2 * once.Laminate!.Fibre.Value.Kilograms, twice.Laminate!.Fibre.Value.Kilograms);
            Close(2 * once.Laminate.Resin.Value.Kilograms, twice.Laminate.Resin.Value.Kilograms);
            Close(2 * once.Laminate.Coats.Value.Kilograms, twice.Laminate.Coats.Value.Kilograms);
            Close(once.Laminate.Thickness.Value.Meters, twice.Laminate.Thickness.Value.Meters);
            Close(once.Laminate.ResinFraction.Value, twice.Laminate.ResinFraction.Value);
        },
        iter: 300);

    [Fact]
    public void TwoHalvesAreTwiceOne() => RandomParts.Model.Sample(
        model =>
        {
            var part = model.Parts[0] with { Join = null };
            var one = Planner.Plan(part with { Mould = part.Mould! with { Halves = [] } }, model);
            var two = Planner.Plan(part with { Mould = part.Mould! with { Halves = ["left", "right"] } }, model);
            foreach (var (a, b) in one.Stack.Zip(two.Stack))
            {
                Twice(a.NetArea?.Value.SquareMeters, b.NetArea?.Value.SquareMeters);
                Twice(a.CutArea?.Value.SquareMeters, b.CutArea?.Value.SquareMeters);
                Twice(a.CutMass?.Value.Kilograms, b.CutMass?.Value.Kilograms);
                Twice(a.CutResin?.Value.Kilograms, b.CutResin?.Value.Kilograms);
                Twice(a.WetOut?.Value.Seconds, b.WetOut?.Value.Seconds);
                Assert.Equal(a.Pieces.Sum(p => 2 * p.Count), b.Pieces.Sum(p => p.Count));
                Assert.All(b.Pieces, p => Assert.True(p.Mirrored));
                Assert.All(a.Pieces, p => Assert.False(p.Mirrored));
                Assert.Equal(a.Thickness?.Value, b.Thickness?.Value);
            }

            Twice(one.Laminate?.TrimmedMass.Value.Value.Kilograms, two.Laminate?.TrimmedMass.Value.Value.Kilograms);
            Twice(one.Bag?.SealantTape.Value.Meters, two.Bag?.SealantTape.Value.Meters);
            Twice(one.Bag?.Pickup?.Value.Kilograms, two.Bag?.Pickup?.Value.Kilograms);
        },
        iter: 300);

    [Fact]
    public void TheTakeoffIsForAllTheParts() => RandomParts.Model.Sample(
        model =>
        {
            var one = Planner.Plan(model.Parts[0] with { Quantity = 1 }, model);
            var five = Planner.Plan(model.Parts[0] with { Quantity = 5 }, model);
            Assert.Equal(one.Takeoff.Select(l => l.Material.Name), five.Takeoff.Select(l => l.Material.Name));
            foreach (var (a, b) in one.Takeoff.Zip(five.Takeoff))
            {
                Close(5 * a.Gross.Value.Si, b.Gross.Value.Si);
            }
        },
        iter: 300);

    [Fact]
    public void MoreHandsAreNeverSlower() => RandomParts.Model.Sample(
        model =>
        {
            var part = model.Parts[0] with { WetOut = (model.Parts[0].WetOut ?? new WetOut { Where = Fig.Somewhere }) with { Pots = Fig.Count(1), PotMasses = [] } };
            var one = Planner.Plan(part with { WetOut = part.WetOut with { Laminators = Fig.Count(1) } }, model).Clock;
            var two = Planner.Plan(part with { WetOut = part.WetOut with { Laminators = Fig.Count(2) } }, model).Clock;
            Assert.True(one is null == two is null);
            Assert.True(one is null || two!.Need.Value <= one.Need.Value);
        },
        iter: 300);

    private static PlyItem Borderless(PlyItem ply) => ply with { Trim = Fig.Length("0 mm"), Material = ply.Material with { Width = null } };

    private static Plan Sized(Part part, double length, double width)
    {
        var mould = Recipes.Mould(new FlatShape(Length.FromMeters(length), Length.FromMeters(width)));
        var sized = part with { Mould = mould, Join = null };
        return Planner.Plan(sized, Recipes.Around(sized));
    }

    private static void Twice(double? once, double? twice)
    {
        Assert.Equal(once is null, twice is null);
        Close(2 * (once ?? 0), twice ?? 0);
    }

    private static void Close(double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-9 * Math.Max(1e-6, Math.Abs(expected)), $"{actual} is not {expected}");
}
