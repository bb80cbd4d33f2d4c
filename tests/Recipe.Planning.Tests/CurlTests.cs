namespace Recipe.Planning.Tests;

/// <summary>From expansions and a cure to the curl of a stack that is not the same from both sides.</summary>
public class CurlTests
{
    // Fibre and resin invented so that a layer of 70 % fibre by volume has the constants of graphite and epoxy T300/5208 in Kaw, Mechanics
    // of Composite Materials, 2nd ed. (2006): 181, 10.3 and 7.17 GPa, 0.28, 0.02 and 22.5 ppm/K.
    private const string Graphite = """
        fibre printed-carbon {
          density               1.8 g/cm3
          modulus               256.42857142857144 GPa
          transverse-modulus    13.922558922558919 GPa
          shear-modulus         19.96986469539267 GPa
          poisson               0.27142857142857146
          expansion             -0.3976601671309193 ppm/K
          transverse-expansion  4.401650616792676 ppm/K
        }

        resin printed-epoxy like infusion-epoxy {
          density    cured 1.2 g/cm3
          modulus    5 GPa
          poisson    0.3
          expansion  50 ppm/K
        }

        ud printed-ud {
          fibre         printed-carbon
          areal-weight  6300 g/m2
        }

        """;

    private const string Content = "resin-content 22.22222222222222 % by weight";

    // Kaw, the [0/90] example of ch. 4 with plies of 5 mm, cooled by 75 K: curvature -0.1276 and 0.1276 1/m (from memory).
    [Fact]
    public void AnUnsymmetricCrossPlyCurlsAsInTheTextbook()
    {
        var curl = Plan(Graphite, $"a printed-ud 0 {Content}\nb printed-ud 90 {Content}", "hold 95 degC for 2 h", "printed-epoxy").Stiffness!.Curl!;
        Assert.Equal((95.0, 20.0), (Math.Round(curl.StressFree!.Value.Value.DegreesCelsius, 9), Math.Round(curl.Room.Value.DegreesCelsius, 9)));
        Assert.Equal(-0.1276, curl.Along.Value.InverseMeters, 0.0001);
        Assert.Equal(0.1276, curl.Across.Value.InverseMeters, 0.0001);
        Assert.Equal(0, curl.Twist.Value.InverseMeters, 1e-9);
        Assert.False(curl.IsSymmetric);
        Assert.Contains("default.stress-free-temperature", curl.Along.RestsOn);

        // Over the 400 mm of the plate: an arc that is nearly a parabola, kappa L^2 / 8.
        Assert.Equal(400, curl.Length.Millimeters, 1e-9);
        Assert.Equal(0.1276 * 0.16 / 8, curl.RiseAlong.Value.Meters, 1e-5);
        Assert.Equal(0.1276 * 0.09 / 8, curl.RiseAcross.Value.Meters, 1e-5);
    }

    // S. Timoshenko, Analysis of Bi-Metal Thermostats, J. Opt. Soc. Am. 11 (1925) 233 (from memory), m = t1/t2, n = E1/E2; with like Poisson's
    // ratios it holds in both directions of a plate. Figures of aluminium and steel, handbook values from memory.
    [Fact]
    public void TwoUnlikeSheetsCurlAsAThermostat()
    {
        const string sheets = """
            core light-sheet {
              density       2700 kg/m3
              modulus       70 GPa
              resin-uptake  0 g/m2
              expansion     23 ppm/K
            }

            core stiff-sheet {
              density       7850 kg/m3
              modulus       200 GPa
              resin-uptake  0 g/m2
              expansion     12 ppm/K
            }

            """;
        var curl = Plan(sheets, "a core light-sheet thickness 1 mm\nb core stiff-sheet thickness 0.5 mm", "hold 80 degC for 2 h").Stiffness!.Curl!;
        const double m = 1 / 0.5;
        const double n = 70.0 / 200;
        const double sum = (1 + m) * (1 + m);

        // The sheet on the mould shrinks more: the bag side is stretched, which counts as positive.
        const double expected = 6 * 11e-6 * 60 * sum / (0.0015 * ((3 * sum) + ((1 + (m * n)) * ((m * m) + (1 / (m * n))))));
        Assert.Equal(expected, curl.Along.Value.InverseMeters, 1e-9 * expected);
        Assert.Equal(expected, curl.Across.Value.InverseMeters, 1e-9 * expected);

        // The rise of an arc of 400 mm: R (1 - cos(L/2R)).
        Assert.Equal((1 - Math.Cos(expected * 0.2)) / expected, curl.RiseAlong.Value.Meters, 1e-12);
    }

    [Fact]
    public void ASymmetricStackStaysFlatWhateverTheCure()
    {
        var curl = Plan(Graphite, $"a printed-ud 30 {Content}\nb printed-ud 90 {Content}\nc printed-ud 30 {Content}", "hold 95 degC for 2 h", "printed-epoxy").Stiffness!.Curl!;
        Assert.True(curl.IsSymmetric);
        Assert.Equal(0, curl.Along.Value.InverseMeters);
        Assert.Equal(0, curl.CornerRise.Value.Meters);

        // Nor does it need to know the expansions, or any cure.
        var bare = Graphite.Replace("transverse-expansion", "# transverse-expansion", StringComparison.Ordinal);
        Assert.True(Plan(bare, $"a printed-ud 0 {Content} x2", "demould", "printed-epoxy").Stiffness!.Curl!.IsSymmetric);
    }

    [Fact]
    public void AnUnbalancedPairTwists()
    {
        var curl = Plan(Graphite, $"a printed-ud 45 {Content}\nb printed-ud -45 {Content}", "hold 95 degC for 2 h", "printed-epoxy").Stiffness!.Curl!;

        // The cross-ply of the textbook turned by 45 degrees: its opposite curvatures are all twist there, twice the tensor's.
        Assert.Equal(0, curl.Along.Value.InverseMeters, 1e-9);
        Assert.Equal(2 * 0.1276, Math.Abs(curl.Twist.Value.InverseMeters), 2e-4);
        Assert.Equal(Math.Abs(curl.Twist.Value.InverseMeters) * 0.4 * 0.3 / 2, curl.CornerRise.Value.Meters, 1e-12);
    }

    [Fact]
    public void WhatIsFreeOfStressIsTheHottestHoldInTheMould()
    {
        const string plies = $"a printed-ud 0 {Content}\nb printed-ud 90 {Content}";
        var curl = Plan(Graphite, plies, "hold 20 degC for 12 h\nhold 50 degC for 6 h\nhold 40 degC for 1 h\ndemould\nhold 80 degC for 6 h support cradle", "printed-epoxy").Stiffness!.Curl!;
        Assert.Equal(50, curl.StressFree!.Value.Value.DegreesCelsius, 1e-9);
        var cold = Plan(Graphite, plies, "hold 20 degC for 12 h", "printed-epoxy").Stiffness!.Curl!;
        Assert.Equal(0, cold.Along.Value.InverseMeters);
        Assert.False(cold.IsSymmetric);
    }

    [Fact]
    public void AMissingExpansionIsAGapAndNoGuess()
    {
        var bare = Graphite.Replace("transverse-expansion", "# transverse-expansion", StringComparison.Ordinal);
        var plan = Plan(bare, $"a printed-ud 0 {Content}\nb printed-ud 90 {Content}", "hold 95 degC for 2 h", "printed-epoxy");
        Assert.NotNull(plan.Stiffness);
        Assert.Null(plan.Stiffness.Curl);
        Assert.Contains(plan.Gaps, gap => gap is { Subject: "curl on cooling", Missing: "fibre printed-carbon gives no expansion or transverse-expansion" });
    }

    private static Plan Plan(string materials, string plies, string cure, string resin = "infusion-epoxy") => Corpus.PlanOf($$"""
        {{materials}}
        mould plate {
          surface  flat 400 mm x 300 mm
          made-of  aluminium
        }

        part panel {
          mould    plate
          process  infused
          resin    {{resin}}
          plies {
        {{plies}}
          }
          wet-out { room 20 degC }
          cure {
        {{cure}}
          }
        }

        """);
}
