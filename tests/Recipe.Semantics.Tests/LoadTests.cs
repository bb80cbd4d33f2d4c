using Recipe.Model;

namespace Recipe.Semantics.Tests;

/// <summary>Loads of a part, strain limits of a layer, expansion across a fibre.</summary>
public class LoadTests
{
    [Fact]
    public void A_pull_is_read_with_its_name_and_way()
    {
        var load = Assert.IsType<PullLoad>(One("load stay across   pull 10 lbf/in"));
        Assert.Equal(("stay", LoadDirection.Across, "10 lbf/in"), (load.Name, load.Direction, load.Pull.Written));

        // NIST SP 811: 1 lbf/in is 175.126835 N/m.
        Assert.Equal(1751.26835, load.Pull.Value.NewtonsPerMeter, 1e-5);
    }

    [Theory]
    [InlineData("2 kg", 19.6133)] // standard gravity 9.80665 m/s2, exact in ISO 80000-3
    [InlineData("2 lb", 8.896443230521)] // as many pounds-force, NIST SP 811
    [InlineData("15 N", 15)]
    [InlineData("2 lbf", 8.896443230521)]
    public void A_strip_carries_a_mass_or_a_force(string weight, double newtons)
    {
        var load = Assert.IsType<StripLoad>(One($"load bench along   strip 25 mm   span 200 mm   carries {weight}"));
        Assert.Equal((25.0, 200.0), (Math.Round(load.Width.Value.Millimeters, 9), Math.Round(load.Span.Value.Millimeters, 9)));
        Assert.Equal(newtons, load.Load.Value.Newtons, 1e-9);
        Assert.Equal(weight, load.Load.Written);
        Assert.Equal(LoadDirection.Along, load.Direction);
    }

    [Fact]
    public void Clauses_may_stand_in_any_order() =>
        Assert.IsType<StripLoad>(One("load bench carries 2 kg span 200 mm strip 25 mm across"));

    [Fact]
    public void Several_loads_keep_their_order_and_a_variant_replaces_one_by_its_name()
    {
        var parts = Given.Sound(
            """
            part lid {
              load bench along   strip 25 mm   span 200 mm   carries 2 kg
              load stay along    pull 10 N/mm
            }
            variant other of lid { load stay across   pull 20 N/mm }
            """).Model.Parts;
        Assert.Equal(["bench", "stay"], parts[0].Loads.Select(load => load.Name));
        Assert.Equal(["bench", "stay"], parts[1].Loads.Select(load => load.Name));
        Assert.Equal([LoadDirection.Along, LoadDirection.Across], parts[1].Loads.Select(load => load.Direction));
    }

    [Theory]
    [InlineData("load stay along", "missing-value")]
    [InlineData("load stay pull 10 N/mm", "missing-value")]
    [InlineData("load along", "missing-value")]
    [InlineData("load bench along strip 25 mm carries 2 kg", "missing-value")]
    [InlineData("load bench along span 200 mm carries 2 kg", "missing-value")]
    [InlineData("load bench along strip 25 mm span 200 mm", "missing-value")]
    [InlineData("load stay along pull 10", "bare-number")]
    [InlineData("load stay along pull 10 N", "wrong-kind-of-unit")]
    [InlineData("load stay along pull 10 g/m", "wrong-kind-of-unit")]
    [InlineData("load stay along pull 0 N/mm", "out-of-range")]
    [InlineData("load bench along strip 25 mm span 200 mm carries 2", "bare-number")]
    [InlineData("load bench along strip 25 mm span 200 mm carries 2 MPa", "wrong-kind-of-unit")]
    [InlineData("load bench along strip 25 mm span 200 mm carries 5 %", "wrong-kind-of-unit")]
    [InlineData("load bench along strip 25 mm span 200 mm carries 0 kg", "out-of-range")]
    [InlineData("load bench along strip 25 mm span 200 mm carries \"a child\"", "not-understood")]
    [InlineData("load bench along strip 25 mm span 200 mm carries 2 kg pull 10 N/mm", "extra-value")]
    [InlineData("load stay sideways pull 10 N/mm", "not-understood")]
    [InlineData("load stay along pull 10 N/mm\n  load stay across pull 10 N/mm", "said-twice")]
    public void A_load_that_is_none_is_refused(string line, string finding) =>
        Assert.Equal([finding], Given.Codes($"part lid {{\n  {line}\n}}"));

    [Fact]
    public void Strain_limits_of_a_cloth_are_read_each_with_its_source()
    {
        var limits = Assert.IsType<Reinforcement>(Given.Sound(
            """
            fabric my-cloth {
              areal-weight  200 g/m2
              strain-limit  stretch 1.2 %          source assumed "invented"
              strain-limit  press 12000 ppm
              strain-limit  stretch-across 0.3 %
              strain-limit  press-across 0.9 %
              strain-limit  shear 1.5 %
            }
            fabric other like my-cloth { strain-limit press 0.8 % }
            """).Model.Materials["my-cloth"]).StrainLimits!;
        Assert.Equal((0.012, Basis.Assumed, "1.2 %"), (Math.Round(limits.Stretch!.Value, 12), limits.Stretch.Basis, limits.Stretch.Written));
        Assert.Equal(0.012, limits.Press!.Value, 1e-12);
        Assert.Equal(0.003, limits.StretchAcross!.Value, 1e-12);
        Assert.Equal(0.009, limits.PressAcross!.Value, 1e-12);
        Assert.Equal(0.015, limits.Shear!.Value, 1e-12);
    }

    [Fact]
    public void A_copy_replaces_one_limit_and_keeps_the_others()
    {
        var model = Given.Sound(
            """
            core a {
              strain-limit stretch 1 %
              strain-limit press 2 %
            }
            core b like a { strain-limit press 0.8 % }
            """).Model;
        var limits = Assert.IsType<Core>(model.Materials["b"]).StrainLimits!;
        Assert.Equal((0.01, 0.008), (limits.Stretch!.Value, limits.Press!.Value));
        Assert.Null(limits.Shear);
    }

    [Theory]
    [InlineData("strain-limit 1.2 %", "missing-value")]
    [InlineData("strain-limit stretch", "missing-value")]
    [InlineData("strain-limit stretch 1.2", "bare-number")]
    [InlineData("strain-limit stretch 120 %", "out-of-range")]
    [InlineData("strain-limit stretch 0 %", "out-of-range")]
    [InlineData("strain-limit stretch 300 MPa", "wrong-kind-of-unit")]
    [InlineData("strain-limit bend 1.2 %", "not-understood")]
    [InlineData("strain-limit stretch 1 %\n  strain-limit stretch 2 %", "said-twice")]
    public void A_limit_that_is_none_is_refused(string line, string finding) =>
        Assert.Equal(finding, Given.Codes($"core a {{\n  {line}\n}}")[0]);

    [Fact]
    public void A_fibre_has_an_expansion_each_way()
    {
        var fibre = Assert.IsType<Fibre>(Given.Sound("fibre a {\n  expansion -0.5 ppm/K\n  transverse-expansion 10 ppm/K\n}").Model.Materials["a"]);
        Assert.Equal((-0.5e-6, 10e-6), (Math.Round(fibre.Expansion!.Value.PerKelvin, 12), Math.Round(fibre.TransverseExpansion!.Value.PerKelvin, 12)));
        Assert.Equal(["wrong-kind-of-unit"], Given.Codes("fibre a {\n  transverse-expansion 10 %\n}"));
    }

    private static StatedLoad One(string line) => Assert.Single(Given.Sound($"part lid {{\n  {line}\n}}").Model.Parts.Single().Loads);
}
