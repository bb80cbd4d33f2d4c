using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class FeedTests
{
    [Fact]
    public void A_line_spaced_for_a_time_fills_in_that_time()
    {
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[60, 1e4], Gen.Double[100, 1e5]).Sample(
            (medium, mu, pull, within, doubling) =>
            {
                ViscosityCurve resin = ViscosityCurve.Doubling(PaS(mu), S(doubling));
                Duration opened = S(doubling / 3);
                Length one = FeedLines.GreatestSpacing(medium, Kpa(pull), resin, S(within), FeedSides.One, opened);
                Length both = FeedLines.GreatestSpacing(medium, Kpa(pull), resin, S(within), FeedSides.Both, opened);
                Digits.Close(2 * one.Meters, both.Meters);

                // Long after the resin is thick, time no longer tells and only the reach can be compared.
                if (within < 10 * doubling)
                {
                    FillOutcome fill = InfusionFill.Line(medium, Kpa(pull), one * (1 - 1e-12), resin, opened: opened);
                    Digits.Close(within, fill.Time!.Value.Seconds, 1e-6);
                }
            },
            iter: 500);
    }

    [Fact]
    public void The_worked_fill_gives_its_own_length_as_spacing()
    {
        // The worked case of a line: 0.5 m in 1973.684 s.
        ViscosityCurve resin = ViscosityCurve.Constant(PaS(0.3));
        Length spacing = FeedLines.GreatestSpacing(Glass, Pull, resin, S(1973.684), FeedSides.Both);
        Digits.Close(1, spacing.Meters, 1e-6);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        ViscosityCurve resin = ViscosityCurve.Constant(PaS(1));
        Refused("within", () => FeedLines.GreatestSpacing(Glass, Pull, resin, S(-1), FeedSides.One));
        Refused("sides", () => FeedLines.GreatestSpacing(Glass, Pull, resin, S(1), (FeedSides)9));
    }
}
