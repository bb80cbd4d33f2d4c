using Recipe.Model;

namespace Recipe.Semantics.Tests;

/// <summary>
/// Units against NIST Special Publication 811 (2008), appendix B.8 and B.9 (factors printed there to seven digits, exact ones in
/// bold), read through the language.
/// </summary>
public class EvaluatorTests
{
    [Theory]
    [InlineData("1 in", 2.54e-2)]
    [InlineData("1 ft", 3.048e-1)]
    [InlineData("1 yd", 9.144e-1)]
    [InlineData("1 mil", 2.54e-5)]
    [InlineData("3 ft 4 in", 1.016)]
    [InlineData("1/2 in", 1.27e-2)]
    public void Lengths(string written, double metres) =>
        Assert.Equal(metres, Part($"trim {written}").Trim!.Value.Meters, 1e-7 * metres);

    [Theory]
    [InlineData("1 lb", 4.535924e-1)]
    [InlineData("1 oz", 2.834952e-2)]
    [InlineData("2 lb 3 oz", 0.99223338)]
    public void Masses(string written, double kilograms) =>
        Assert.Equal(kilograms, Part($"target mass {written}").TargetMass!.Value.Kilograms, 1e-6 * kilograms);

    [Theory]
    [InlineData("68 F", "Write degF")]
    [InlineData("20 C", "Write degC")]
    [InlineData("20 c", "Write degC")]
    public void A_thermometers_letter_is_a_temperature_and_no_difference(string room, string fix)
    {
        var finding = Given.Single($"shop s {{\n  room {room}\n}}");
        Assert.Equal("unknown-unit", finding.Descriptor.Name);
        Assert.Equal(fix, Assert.Single(finding.Fixes).Title);
    }

    // A unit of another dimension that is spelt nearly so (a day for a darcy) is no guess.
    [Theory]
    [InlineData("flow-medium m {\n  permeability 3000 darcy\n}", "`darcy` is not a unit; a permeability is written in m2.")]
    [InlineData("shop s {\n  room 20 grad\n}", "`grad` is not a unit; a temperature is written in degC or degF.")]
    public void A_unit_that_nothing_is_like_is_answered_with_what_is_written_there(string text, string said)
    {
        var finding = Given.Single(text);
        Assert.Equal(said, finding.Message);
        Assert.Empty(finding.Fixes);
    }

    [Fact]
    public void A_range_with_a_misspelt_unit_is_told_once_and_at_the_unit()
    {
        var finding = Given.Single("shop s {\n  room 19 to 22 altitude\n}");
        Assert.Equal("unknown-unit", finding.Descriptor.Name);
        Assert.Equal(["unknown-unit", "unknown-word"], Given.Codes("shop s {\n  room 19 to 22 altitude degC\n}").Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("1 oz/yd2", 3.390575e-2)]
    [InlineData("1 oz/ft2", 3.051517e-1)]
    [InlineData("3/4 oz/ft2", 2.288638e-1)]
    [InlineData("163 g/m2", 0.163)]
    [InlineData("163 gsm", 0.163)]
    public void Cloth_weights(string written, double kilogramsPerSquareMetre)
    {
        var cloth = Assert.IsType<Reinforcement>(Given.Sound($"fabric a {{\n  areal-weight {written}\n}}").Model.Materials["a"]);
        Assert.Equal(kilogramsPerSquareMetre, cloth.ArealWeight!.Value.KilogramsPerSquareMeter, 1e-6 * kilogramsPerSquareMetre);
        Assert.Equal(written, cloth.ArealWeight.Written);
    }

    [Theory]
    [InlineData("1 inHg", 3.386389e3)]
    [InlineData("1 mmHg", 1.333224e2)]
    [InlineData("1 torr", 1.333224e2)]
    [InlineData("1 psi", 6.894757e3)]
    [InlineData("1 atm", 1.01325e5)]
    [InlineData("1 mbar", 1e2)]
    public void Pressures(string written, double pascals) =>
        Assert.Equal(pascals, Part($"vacuum {{\n  draw {written} absolute\n}}").Vacuum!.Draw!.Value.Value.Pascals, 1e-6 * pascals);

    [Theory]
    [InlineData("32 degF", 273.15)]
    [InlineData("212 degF", 373.15)]
    [InlineData("20 degC", 293.15)]
    [InlineData("-5 degC", 268.15)]
    [InlineData("(20 degC + 5 K)", 298.15)]
    [InlineData("(68 degF + 9 degF-diff)", 298.15)]
    [InlineData("(20 degC - 5 degC-diff)", 288.15)]
    public void Temperatures(string written, double kelvins) =>
        Assert.Equal(kelvins, Part($"service {written}").Service!.Value.Kelvins, 9);

    [Theory]
    [InlineData("1 cfm", 4.719474e-4)]
    [InlineData("1 m3/h", 2.777778e-4)]
    public void Flows(string written, double cubicMetresPerSecond) =>
        Assert.Equal(cubicMetresPerSecond, Given.Sound($"shop a {{\n  pump {written}\n}}").Model.Shop!.Pump!.Value.CubicMetersPerSecond, 1e-6 * cubicMetresPerSecond);

    [Theory]
    [InlineData("1 Msi", 6.894757e9)]
    [InlineData("72 GPa", 72e9)]
    public void Moduli(string written, double pascals)
    {
        var fibre = Assert.IsType<Fibre>(Given.Sound($"fibre a {{\n  modulus {written}\n}}").Model.Materials["a"]);
        Assert.Equal(pascals, fibre.Modulus!.Value.Pascals, 1e-6 * pascals);
    }

    [Fact]
    public void Compound_units_are_put_together()
    {
        var resin = Assert.IsType<ResinSystem>(Given.Sound(
            """
            resin a {
              mix 100:30 by weight
              viscosity 600 mPa.s at 77 degF
              heat-of-reaction 450 J/g
              expansion 60 ppm/K
              density cured 9.6 lb/gal
            }
            """).Model.Materials["a"]);
        Assert.Equal(0.6, resin.Viscosity!.Value.PascalSeconds, 9);
        Assert.Equal(25, resin.ViscosityAt!.Value.DegreesCelsius, 9);
        Assert.Equal(450_000, resin.HeatOfReaction!.Value.JoulesPerKilogram, 6);
        Assert.Equal(60e-6, resin.Expansion!.Value.PerKelvin, 12);
        Assert.Equal(9.6 * 1.198264e2, resin.CuredDensity!.Value.KilogramsPerCubicMeter, 1e-3); // pound per gallon (U.S.), NIST SP 811 B.8
    }

    [Theory]
    [InlineData("(2 * lap + 15 mm)", 55, "55 mm")]
    [InlineData("((1 + 2) * lap)", 60, "60 mm")]
    [InlineData("(lap / 2)", 10, "10 mm")]
    [InlineData("(1 in + lap)", 45.4, "1.7874 in")]
    [InlineData("(0.01 m2 / 500 mm)", 20, "20 mm")]
    [InlineData("(-lap + 30 mm)", 10, "10 mm")]
    [InlineData("lap", 20, "20 mm")]
    [InlineData("(3 * 4) mm", 12, "12 mm")]
    [InlineData("(10 % * 200 mm)", 20, "20 mm")]
    public void Arithmetic(string expression, double millimetres, string written)
    {
        var trim = Given.Sound($"let lap = 20 mm\npart a {{\n  trim {expression}\n}}").Model.Parts.Single().Trim!;
        Assert.Equal(millimetres, trim.Value.Millimeters, 9);
        Assert.Equal(written, trim.Written);
    }

    [Theory]
    [InlineData("(3 g + 2 mm)", "dimension-clash")]
    [InlineData("(20 degC + 20 degC)", "dimension-clash")]
    [InlineData("(2 * 20 degC)", "dimension-clash")]
    [InlineData("(5 K - 20 degC)", "dimension-clash")]
    [InlineData("(1 EUR + 1 USD)", "dimension-clash")]
    [InlineData("(3 mm) mm", "dimension-clash")]
    [InlineData("(1 / 0)", "out-of-range")]
    [InlineData("(1e308 * 1e308)", "out-of-range")]
    [InlineData("(2 * lop)", "unknown-name")]
    public void Arithmetic_that_has_no_value(string expression, string finding) =>
        Assert.Equal([finding], Given.Codes($"let x = {expression}"));

    [Fact]
    public void The_difference_of_two_temperatures_is_a_difference()
    {
        var service = Given.Sound("let rise = (50 degC - 20 degC)\npart a {\n  service (20 degC + rise)\n}").Model.Parts.Single().Service!;
        Assert.Equal(50, service.Value.DegreesCelsius, 9);
    }

    [Fact]
    public void A_sum_as_long_as_the_grammar_reads_is_worked_out_and_a_longer_one_is_one_finding()
    {
        var sum = string.Join(" + ", Enumerable.Repeat("1 mm", 90));
        Assert.Equal(90, Given.Sound($"part a {{\n  trim ({sum})\n}}").Model.Parts.Single().Trim!.Value.Millimeters, 9);
        var endless = Given.Bind($"part a {{\n  trim ({string.Join(" + ", Enumerable.Repeat("1 mm", 100_000))})\n}}");
        Assert.Equal("nested-too-deep", Assert.Single(endless.Tree.Findings).Descriptor.Name);
        Assert.Empty(endless.Findings);
    }

    [Fact]
    public void A_long_row_of_named_values_is_refused_and_not_followed_to_the_end()
    {
        var lets = string.Concat(Enumerable.Range(0, 5_000).Select(i => $"let v{i} = v{i + 1}\n"));
        Assert.All(Given.Codes(lets + "let v5000 = 1 mm"), c => Assert.Equal("not-understood", c));
    }

    [Fact]
    public void Only_the_values_on_a_circle_report_it()
    {
        Assert.Equal(["value-cycle", "value-cycle"], Given.Codes("let a = b\nlet b = (a + 1 mm)\nlet c = (2 * a)\nlet d = 1 mm"));
        Assert.Equal(["value-cycle"], Given.Codes("let a = a"));
    }

    private static Part Part(string line) => Given.Sound($"part a {{\n  {line}\n}}").Model.Parts.Single();
}
