using Recipe.Text.Units;
using Xunit.Abstractions;

namespace Recipe.Text.Tests;

/// <summary>Every unit of the table beside GNU units, whose table was written by other people.</summary>
public sealed class OtherUnitsTests(ITestOutputHelper output)
{
    // Where the other program spells a unit in another way.
    private static readonly Dictionary<string, string> Spellings = new()
    {
        ["h"] = "hour",
        ["d"] = "day",
        ["gal"] = "gallon",
        ["deg"] = "degree",
        ["%"] = "percent",
        ["Msi"] = "Mpsi",
        ["degC-diff"] = "degC",
        ["degF-diff"] = "degF",
    };

    /// <summary>Units that the two define differently, how far they lie apart at most, and why.</summary>
    private static readonly Dictionary<string, (double Relative, string Reason)> DefinedOtherwise = new()
    {
        ["inHg"] = (2e-7, "here the conventional 3386.389 Pa that NIST SP 811 prints, there 13.5951 g/cm3 times standard gravity times an inch"),
        ["mmHg"] = (2e-7, "here the conventional 133.3224 Pa that NIST SP 811 prints, there 13.5951 g/cm3 times standard gravity times a millimetre"),
        ["month"] = (3e-5, "here a twelfth of 365.25 days, there of a tropical year"),
        ["year"] = (3e-5, "here 365.25 days, there a tropical year"),
    };

    [Fact]
    public void Every_unit_is_worth_as_much_there()
    {
        Unit[] units = [.. UnitTable.All];
        Compare([.. units.Select(unit => (unit, Spellings.GetValueOrDefault(unit.Symbol, unit.Symbol)))]);

        // A spelling or a difference that is no longer needed goes.
        Assert.Empty(Spellings.Keys.Concat(DefinedOtherwise.Keys).Except(units.Select(unit => unit.Symbol)));
    }

    [Fact]
    public void Units_put_together_are_worth_as_much_there() => Compare(
    [
        .. new (string Ours, string Theirs)[]
        {
            ("oz/yd2", "oz/yd^2"),
            ("oz/ft2", "oz/ft^2"),
            ("g/m2", "g/m^2"),
            ("lb/gal", "lb/gallon"),
            ("lb/in3", "lb/in^3"),
            ("lb/ft3", "lb/ft^3"),
            ("g/cm3", "g/cm^3"),
            ("L/min", "L/min"),
            ("m3/h", "m^3/hour"),
            ("mPa.s", "mPa s"),
            ("degF/min", "degF/min"),
            ("degC/h", "degC/hour"),
            ("min/m2", "min/m^2"),
            ("W/in2", "W/in^2"),
            ("kJ/kg", "kJ/kg"),
            ("g/m", "g/m"),
        }.Select(pair => (UnitTable.Get(pair.Ours), pair.Theirs)),
    ]);

    [Theory]
    [InlineData("degC", "tempC", -18)]
    [InlineData("degC", "tempC", 25)]
    [InlineData("degF", "tempF", -40)]
    [InlineData("degF", "tempF", 77)]
    [InlineData("degF", "tempF", 250)]
    public void A_temperature_is_as_hot_there(string ours, string theirs, double degrees)
    {
        if (IsThere())
        {
            Assert.Equal(OtherUnits.InSi([($"{theirs}({degrees})", DimensionNames.Temperature)])[0], UnitTable.Get(ours).ToSi(degrees), 1e-9);
        }
    }

    private void Compare(IReadOnlyList<(Unit Unit, string Theirs)> pairs)
    {
        if (!IsThere())
        {
            return;
        }

        var values = OtherUnits.InSi([.. pairs.Select(pair => (Powers(pair.Theirs), pair.Unit.Dimension))]);
        foreach (var ((unit, theirs), value) in pairs.Zip(values))
        {
            var apart = Math.Abs((unit.Factor / value) - 1);
            if (DefinedOtherwise.TryGetValue(unit.Symbol, out var other))
            {
                output.WriteLine($"{unit.Symbol}: {apart:G2} apart: {other.Reason}");
                Assert.InRange(apart, 1e-9, other.Relative);
            }
            else
            {
                Assert.True(apart <= 1e-14, $"{unit.Symbol}: {unit.Factor:R} here, {theirs} is {value:R} there");
            }
        }
    }

    // "m2" is "m^2" there.
    private static string Powers(string spelling) =>
        spelling.Length > 1 && char.IsAsciiLetter(spelling[^2]) && spelling[^1] is ('2' or '3') ? spelling[..^1] + "^" + spelling[^1] : spelling;

    private bool IsThere()
    {
        if (OtherUnits.IsInstalled())
        {
            return true;
        }

        const string absent = "NOT COMPARED: the program units is not installed (Debian package units).";
        Assert.False(Environment.GetEnvironmentVariable("CI") == "true", absent);
        output.WriteLine(absent);
        return false;
    }
}
