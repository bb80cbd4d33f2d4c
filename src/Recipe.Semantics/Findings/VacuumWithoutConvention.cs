using Recipe.Semantics.Reading;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Semantics.Findings;

/// <summary>A vacuum level with neither `below ambient` nor `absolute`.</summary>
public static class VacuumWithoutConvention
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1105",
        Name = "vacuum-without-convention",
        Severity = Severity.Error,
        Title = "A vacuum that does not say how it is counted",
        Reason = "100 mbar absolute is a good bag, 100 mbar below ambient is hardly any vacuum.",
        Remedy = "Write `below ambient` or `absolute` behind the pressure.",
        Source = "common practice; 1013.25 mbar is the standard atmosphere (ISO 2533)",
        BadExample =
            """
            part lid {
              vacuum {
                draw 25 inHg
              }
            }

            """,
        GoodExample =
            """
            part lid {
              vacuum {
                draw 25 inHg below ambient
              }
            }

            """,
        Exceptions = "A negative level is a warning: the sign says below ambient by custom.",
    };

    internal static Finding Create(SourceSpan where, string written, Value level, bool onlyAbsolute, StandardAir air)
    {
        var pascals = level.Si;
        if (onlyAbsolute)
        {
            return OfAbsolute(where, written, level, air);
        }

        var left = air.Pascals - pascals;
        var canDraw = air.CanDraw(pascals);
        var below = canDraw ? $"{written} below ambient leaves {Mbar(Math.Max(0, left))} of air {air.Place}"
            : $"{written} below ambient is more than a pump can draw of the {Mbar(air.Pascals)} {air.Place}";
        var absolute = left > 0 ? $"{written} absolute leaves {Mbar(pascals)}" : $"{written} absolute is no vacuum at all";
        var fixes = new List<Fix>();
        if (canDraw)
        {
            fixes.Add(Behind(where, "below ambient", $"Write {written} below ambient ({Mbar(Math.Max(0, left))} of air left {air.Place})"));
        }
        else
        {
            var good = air.GoodVacuum(level.Unit ?? UnitTable.Get("mbar"));
            fixes.Add(new Fix($"Write {good} below ambient, nine tenths of the air {air.Place}", FixSafety.NeedsALook, new TextEdit(where, good + " below ambient")));
        }

        if (left > 0)
        {
            fixes.Add(Behind(where, "absolute", $"Write {written} absolute ({Mbar(pascals)} of air left)"));
        }

        return Finding.Of(Descriptor, where, $"{written} does not say how it is counted: {below}, {absolute}.") with { Fixes = [.. fixes] };
    }

    /// <summary>Where only an absolute pressure makes sense: as it stands, or what is left when it was read from a gauge. The one that leaves less air is the likelier.</summary>
    private static Finding OfAbsolute(SourceSpan where, string written, Value level, StandardAir air)
    {
        var asItStands = Behind(where, "absolute", $"Write {written} absolute");
        var fromGauge = NotUnderstood.WriteAbsolute(where, air.LeftBelow(level.Si, level.Unit ?? UnitTable.Get("mbar")));
        return Finding.Of(Descriptor, where, $"{written} does not say how it is counted; this line takes an absolute pressure.") with
        {
            Fixes = level.Si > air.Pascals / 2 ? [.. fromGauge, asItStands] : [asItStands, .. fromGauge],
        };
    }

    /// <summary>A minus sign: below ambient by custom, so that it only wants the words.</summary>
    internal static Finding Signed(SourceSpan where, string written)
    {
        var plain = written.TrimStart('-', ' ');
        return new Finding(Descriptor, Severity.Warning, where, $"{written} is read as {plain} below ambient; the words say it without a sign.") with
        {
            Fixes = [new Fix($"Write {plain} below ambient", FixSafety.Safe, new TextEdit(where, plain + " below ambient"))],
        };
    }

    private static Fix Behind(SourceSpan where, string words, string title) =>
        new(title, FixSafety.NeedsALook, new TextEdit(where with { Span = new TextSpan(where.Span.End, 0) }, " " + words));

    private static string Mbar(double pascals) => $"{Numbers.Format(Math.Round(pascals / 100))} mbar";
}
