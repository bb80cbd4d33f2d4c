using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Semantics.Findings;

/// <summary>Ounces where a weight per area is wanted.</summary>
public static class ClothInOunces
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1104",
        Name = "cloth-in-ounces",
        Severity = Severity.Error,
        Title = "A cloth weight in plain ounces",
        Reason = "Cloth is sold in oz/yd2 and mat in oz/ft2: the two differ by nine times.",
        Remedy = "Say ounces of what: oz/yd2 for cloth, oz/ft2 for mat.",
        Source = "NIST SP 811 (2008), appendix B: ounce, foot, yard; the two customs are common practice",
        BadExample =
            """
            mat my-mat {
              areal-weight 1.5 oz
            }

            """,
        GoodExample =
            """
            mat my-mat {
              areal-weight 1.5 oz/ft2
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string head, SourceSpan unit, double number)
    {
        var yard = InGrams(number, "oz/yd2");
        var foot = InGrams(number, "oz/ft2");
        var written = Numbers.Format(number);
        return Finding.Of(
            Descriptor,
            where,
            $"{written} oz is a mass, and `{head}` takes a weight per area: {written} oz/yd2 is {yard} g/m2, {written} oz/ft2 is {foot} g/m2.") with
        {
            Fixes =
            [
                new Fix($"Write oz/yd2 ({yard} g/m2, how cloth is sold)", FixSafety.NeedsALook, new TextEdit(unit, "oz/yd2")),
                new Fix($"Write oz/ft2 ({foot} g/m2, how mat is sold)", FixSafety.NeedsALook, new TextEdit(unit, "oz/ft2")),
            ],
        };
    }

    private static string InGrams(double number, string unit)
    {
        var grams = UnitTable.Get("g/m2").FromSi(UnitTable.Get(unit).ToSi(number));
        return Numbers.Format(grams >= 100 ? Math.Round(grams) : Math.Round(grams, 1));
    }
}
