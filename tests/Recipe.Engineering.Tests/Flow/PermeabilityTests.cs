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
    public void A_stack_of_nothing_is_refused() => Assert.Throws<ArgumentException>(() => PorousStack.Layered([]));
}
