using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

public class ContributionTests
{
    [Fact]
    public void Three_like_sheets_share_as_cubes_do()
    {
        // E (3t)^3/12 is 27 times E t^3/12. Two outer ones alone: 8 together, 26 with the gap kept.
        LaminatePly sheet = LaminatePly.Of(Lamina.Isotropic(Gpa(70), 0), Mm(1), Deg(0), Gsm(2700));
        IReadOnlyList<PlyContribution> all = Contributions.Of(new Laminate([sheet, sheet, sheet]));
        double one = 70e9 * 1e-9 / 12;
        Holds(all[0], 19 * one, 19 * one, 0);
        Holds(all[1], 19 * one, one, 18 * one);
        Holds(all[2], 19 * one, 19 * one, 0);
        Assert.All(all, ply =>
        {
            Digits.Close(70e6, ply.Stretching.NewtonsPerMeter);
            Digits.Close(1 / 3.0, ply.StretchingShare.DecimalFractions);
            Digits.Close(1 / 3.0, ply.MassShare.DecimalFractions);
            Digits.Close(1 / 3.0, ply.ThicknessShare.DecimalFractions);
            Digits.Close(19 / 27.0, ply.BendingShare.DecimalFractions);
        });
    }

    [Fact]
    public void A_core_works_as_a_spacer_and_a_face_as_stiffness()
    {
        LaminatePly face = LaminatePly.Of(Glass, Mm(0.5), Deg(0), Gsm(900));
        LaminatePly core = Plies.Core(Lamina.Isotropic(Pressure.FromMegapascals(60), 0.3), Mm(5), Rho(80));
        IReadOnlyList<PlyContribution> all = Contributions.Of(new Laminate([face, core, face]));
        Assert.True(all[1].BendingAsSpacer > 50 * all[1].BendingAsStiffness);
        Assert.True(all[0].BendingAsStiffness.NewtonMeters > 0.9 * all[0].Bending.NewtonMeters);
        Assert.True(all[1].StretchingShare.Percent < 3);
    }

    [Fact]
    public void The_loss_is_the_difference_of_two_laminates() =>
        Gen.Select(Gen.Double[-90, 90].Array[2, 6], Gen.Double[0.1, 2].Array[6], Gen.Int[0, 5], Gen.Double[-90, 90]).Sample(
            (angles, mm, pick, direction) =>
            {
                LaminatePly[] plies = [.. angles.Select((angle, i) => LaminatePly.Of(i % 2 == 0 ? Graphite : Glass, Mm(mm[i]), Deg(angle), Gsm(300 + i)))];
                int gone = pick % plies.Length;
                Laminate with = new(plies);
                Laminate without = new([.. plies.Where((_, i) => i != gone)]);
                PlyContribution ply = Contributions.Of(with, Deg(direction))[gone];
                double whole = with.StripStiffness(Deg(direction)).NewtonMeters;
                double expected = whole - without.StripStiffness(Deg(direction)).NewtonMeters;
                Assert.True(Math.Abs(expected - ply.Bending.NewtonMeters) <= 1e-9 * whole);
                Assert.True(Math.Abs(ply.BendingAsStiffness.NewtonMeters + ply.BendingAsSpacer.NewtonMeters - expected) <= 1e-9 * whole);
                Digits.Close((with.Thickness - without.Thickness).Meters, ply.Thickness.Meters);
                Digits.Close((with.Mass - without.Mass).KilogramsPerSquareMeter, ply.Mass.KilogramsPerSquareMeter);

                // A stiffness that is taken away never makes the rest stiffer.
                Assert.True(ply.BendingAsStiffness.NewtonMeters >= -1e-9 * whole);
                Assert.True(ply.Stretching.NewtonsPerMeter >= 0);
            });

    [Fact]
    public void The_only_ply_is_everything()
    {
        PlyContribution only = Contributions.Of(Of(Graphite, Mm(1), 30))[0];
        Digits.Close(1, only.BendingShare.DecimalFractions);
        Digits.Close(1, only.StretchingShare.DecimalFractions);
        Assert.Equal(0, only.BendingAsSpacer.NewtonMeters);
        Assert.Equal(0, only.MassShare.DecimalFractions);
    }

    private static void Holds(PlyContribution ply, double bending, double asStiffness, double asSpacer)
    {
        Digits.Close(bending, ply.Bending.NewtonMeters);
        Digits.Close(asStiffness, ply.BendingAsStiffness.NewtonMeters);
        Assert.True(Math.Abs(asSpacer - ply.BendingAsSpacer.NewtonMeters) <= 1e-9 * bending);
    }
}
