using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class PermeabilityTests
{
    // Worked case, computed: 1 mm of flow medium at 5e-9 m2 on 3 mm of fabric at 1e-10 m2.
    [Fact]
    public void A_stack_with_flow_medium_agrees_with_the_worked_case()
    {
        PorousMedium stack = PorousStack.Layered([LayerOf(1, 5e-9, 0.9), LayerOf(3, 1e-10, 0.5)]);
        Digits.Close(1.325e-9, stack.Permeability.SquareMeters);
        Digits.Close((0.9 + 1.5) / 4, stack.Porosity.DecimalFractions);
    }

    // Computed from the form of Gutowski (1987): fibre radius 8.5 um, k0 0.7.
    [Theory]
    [InlineData(0.5, "12.902")]
    [InlineData(0.6, "4.5873")]
    public void Kozeny_Carman_agrees_with_the_worked_case(double fibre, string squareMicrometres) =>
        Digits.AsPrinted(
            squareMicrometres, KozenyCarman.Permeability(Length.FromMicrometers(8.5), KozenyCarman.AlongFibre, Part(fibre)).SquareMeters * 1e12);

    [Fact]
    public void A_repacked_fabric_is_that_of_the_formula()
    {
        Gen.Select(Gen.Double[0.2, 0.8], Gen.Double[0.2, 0.8], Gen.Double[1, 20], Gen.Double[0.3, 20]).Sample(
            (at, wanted, radius, constant) =>
            {
                Area measured = KozenyCarman.Permeability(Length.FromMicrometers(radius), constant, Part(at));
                Digits.Close(
                    KozenyCarman.Permeability(Length.FromMicrometers(radius), constant, Part(wanted)).SquareMeters,
                    KozenyCarman.Repacked(measured, Part(at), Part(wanted)).SquareMeters);
            },
            iter: 1000);
    }

    [Fact]
    public void A_stack_lies_between_its_layers_and_does_not_mind_their_order()
    {
        Gen.Select(Gen.Double[0.1, 5], AnyMedium).Select((mm, medium) => new PorousLayer(Mm(mm), medium)).Array[1, 8].Sample(
            layers =>
            {
                PorousMedium stack = PorousStack.Layered(layers);
                PorousMedium reversed = PorousStack.Layered([.. layers.Reverse()]);
                Digits.Close(stack.Permeability.SquareMeters, reversed.Permeability.SquareMeters);
                Assert.InRange(
                    stack.Permeability.SquareMeters,
                    layers.Min(l => l.Medium.Permeability.SquareMeters) * (1 - 1e-12),
                    layers.Max(l => l.Medium.Permeability.SquareMeters) * (1 + 1e-12));

                // Pores are conserved.
                Digits.Close(
                    layers.Sum(l => l.Thickness.Meters * l.Medium.Porosity.DecimalFractions),
                    layers.Sum(l => l.Thickness.Meters) * stack.Porosity.DecimalFractions);
            },
            iter: 1000);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentException>(() => PorousStack.Layered([]));
        Refused("fibreRadius", () => KozenyCarman.Permeability(Mm(0), 0.7, Part(0.5)));
        Refused("constant", () => KozenyCarman.Permeability(Length.FromMicrometers(8.5), 0, Part(0.5)));
        Refused("fibreVolumeFraction", () => KozenyCarman.Permeability(Length.FromMicrometers(8.5), 0.7, Part(1)));
        Refused("measured", () => KozenyCarman.Repacked(M2(-1), Part(0.5), Part(0.5)));
        Refused("wanted", () => KozenyCarman.Repacked(M2(1e-10), Part(0.5), Part(0)));
    }
}
