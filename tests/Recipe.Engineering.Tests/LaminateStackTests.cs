using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class LaminateStackTests
{
    private static readonly Density Glass = Density.FromKilogramsPerCubicMeter(2550);
    private static readonly Density Carbon = Density.FromKilogramsPerCubicMeter(1780);
    private static readonly Density Epoxy = Density.FromKilogramsPerCubicMeter(1150);

    private static StackPly Ply(double gsm, Density fibre, double resin) =>
        new(AreaDensity.FromGramsPerSquareMeter(gsm), fibre, Ratio.FromDecimalFractions(resin));

    // Common practice, computed table of light cloth: cured millimetres at resin mass fractions 0.50, 0.42 and 0.36.
    [Theory]
    [InlineData(163, false, 0.50, "0.21")]
    [InlineData(163, false, 0.42, "0.17")]
    [InlineData(80, false, 0.50, "0.10")]
    [InlineData(280, false, 0.36, "0.25")]
    [InlineData(200, true, 0.50, "0.29")]
    [InlineData(160, true, 0.42, "0.19")]
    [InlineData(93, true, 0.36, "0.10")]
    public void Thickness_agrees_with_the_table_of_light_cloth(double gsm, bool carbon, double resin, string millimetres) =>
        Digits.AsPrinted(
            millimetres, LaminateStack.Thickness([Ply(gsm, carbon ? Carbon : Glass, resin)], Epoxy).Millimeters);

    [Fact]
    public void One_ply_agrees_with_the_fibre_content_formulas()
    {
        StackPly ply = Ply(200, Carbon, 0.42);
        Ratio volume = FibreContent.VolumeFraction(Ratio.FromPercent(58), Carbon, Epoxy);
        Digits.Close(
            FibreContent.PlyThickness(ply.Cloth, Carbon, volume).Millimeters,
            LaminateStack.Thickness([ply], Epoxy).Millimeters);
        Digits.Close(
            volume.DecimalFractions, LaminateStack.FibreVolumeFraction([ply], Epoxy).DecimalFractions);
        Digits.Close(0.42, LaminateStack.ResinMassFraction([ply]).DecimalFractions);
    }

    [Fact]
    public void Mass_is_wet_weight_times_trimmed_area()
    {
        // By hand: 163 at 0.42 and 105 at 0.45: 281.03 + 190.91 = 471.94 g/m2; 0.03 m2 weigh 14.16 g.
        StackPly[] plies = [Ply(163, Glass, 0.42), Ply(105, Glass, 0.45)];
        Digits.Close(268, LaminateStack.DryArealWeight(plies).GramsPerSquareMeter);
        Digits.Close((163 / 0.58) + (105 / 0.55), LaminateStack.WetArealWeight(plies).GramsPerSquareMeter);
        Digits.AsPrinted("14.16", LaminateStack.TrimmedMass(plies, Area.FromSquareMeters(0.03)).Grams);
    }

    [Fact]
    public void Thickness_times_density_is_the_wet_weight()
    {
        Gen.Select(Gen.Double[20, 900], Gen.Bool, Gen.Double[0.25, 0.85]).Array[1, 10].Sample(
            drawn =>
            {
                StackPly[] plies = [.. drawn.Select(d => Ply(d.Item1, d.Item2 ? Carbon : Glass, d.Item3))];
                double fibre = plies.Sum(p => p.Cloth.KilogramsPerSquareMeter / p.Fibre.KilogramsPerCubicMeter);
                double thick = LaminateStack.Thickness(plies, Epoxy).Meters;
                Digits.Close(fibre / thick, LaminateStack.FibreVolumeFraction(plies, Epoxy).DecimalFractions);
                double wet = LaminateStack.DryArealWeight(plies).KilogramsPerSquareMeter + ((thick - fibre) * 1150);
                Digits.Close(wet, LaminateStack.WetArealWeight(plies).KilogramsPerSquareMeter);
            },
            iter: 1000);
    }

    [Fact]
    public void An_empty_stack_weighs_nothing_and_has_no_contents()
    {
        Assert.Equal(0, LaminateStack.WetArealWeight([]).GramsPerSquareMeter);
        Assert.Equal(0, LaminateStack.Thickness([], Epoxy).Meters);
        Assert.Throws<ArgumentException>(() => LaminateStack.ResinMassFraction([]));
        Assert.Throws<ArgumentException>(() => LaminateStack.FibreVolumeFraction([], Epoxy));
        Assert.Throws<ArgumentOutOfRangeException>(() => LaminateStack.WetArealWeight([Ply(0, Glass, 0.4)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LaminateStack.WetArealWeight([Ply(100, Glass, 1)]));
    }
}
