using System.Text.RegularExpressions;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A mould as long as a hall, or shorter than a thumb is wide.</summary>
public sealed partial class MouldSizeSlip : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2126",
        Name = "mould-size-slip",
        Severity = Severity.Error,
        Title = "Mould of an odd size",
        Reason = "Metres and millimetres were mixed up, and cloth, resin, pots and minutes all follow the slip.",
        Remedy = "Measure the mould again, and write its unit.",
        Source = "common practice",
        Exceptions = """
            Speaks of a surface of more than 12 m, or of less than 20 mm, over its longer side. What else is found of such a part waits, but for what is safety: it mostly follows from it.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 5 mm x 4 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 500 mm x 400 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool SettlesFirst => true;

    private static readonly Length Longest = Length.FromMeters(12);
    private static readonly Length Shortest = Length.FromMillimeters(20);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { Surface: { Where: { } where } } mould || context.Plan.Geometry is not { } shape)
        {
            return;
        }

        var side = UnitMath.Max(shape.DevelopedLength, shape.DevelopedWidth);
        if (side <= Length.Zero || (side <= Longest && side >= Shortest))
        {
            return;
        }

        var isLong = side > Longest;
        context.Report(
            where,
            $"{mould.Name} is {Say.Of(side, isLong ? "m" : "mm")} over its longer side; {(isLong ? "were millimetres meant?" : "were metres meant?")}",
            labels: context.Part.MouldWhere is { } laid ? [new FindingLabel(laid, "laid here")] : [],
            fixes: [Exchanged(where, side, isLong)]);
    }

    // Offered where all of it is then of a size that a shop makes.
    private static Fix? Exchanged(SourceSpan where, Length side, bool isLong)
    {
        var units = (isLong ? Metres() : Millimetres()).Matches(where.Text);
        var then = isLong ? side / 1000 : side * 1000;
        return units.Count == 0 || then > Longest || then < Shortest
            ? null
            : new Fix(
                isLong ? "Read it in millimetres" : "Read it in metres",
                FixSafety.NeedsALook,
                [.. units.Select(unit => new TextEdit(where with { Span = new TextSpan(where.Span.Start + unit.Index, unit.Length) }, isLong ? "mm" : "m"))]);
    }

    [GeneratedRegex(@"(?<=\d ?)m\b", RegexOptions.CultureInvariant)]
    private static partial Regex Metres();

    [GeneratedRegex(@"(?<=\d ?)mm\b", RegexOptions.CultureInvariant)]
    private static partial Regex Millimetres();
}
