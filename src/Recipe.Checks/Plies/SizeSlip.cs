using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A piece is several times as large as the part it lies on.</summary>
public sealed class SizeSlip : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3119",
        Name = "size-slip",
        Severity = Severity.Warning,
        Title = "Piece larger than the part",
        Reason = "Centimetres, millimetres or inches were mixed up, and the cut list follows the slip.",
        Remedy = "Measure the piece again, and write its unit.",
        Source = "common practice",
        Exceptions = """
            Speaks of pieces more than 3 times as long as the part is over its surface. Small pads are not judged.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
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
                pad patch glass-twill-163 0/90 size 150 cm x 60 cm at "under the hinge"
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
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
                pad patch glass-twill-163 0/90 size 150 mm x 60 mm at "under the hinge"
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double Times = 3;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (context.Plan.Geometry is not { } shape)
        {
            return;
        }

        var longest = Math.Max(shape.DevelopedLength.Meters, shape.DevelopedWidth.Meters);
        var worst = part.Stack.Where(s => Side(s) > Times * longest).MaxBy(Side);
        if (worst is null || longest <= 0)
        {
            return;
        }

        var size = Sides(worst).MaxBy(side => side.Value.Meters)!;
        context.Report(
            size.Where ?? worst.Where,
            $"{worst.Name} is {Say.Of(size)} long; {part.Name} is {Say.Of(Length.FromMeters(longest), size.Written)} over its surface",
            Grounds.Sure.And("size", size),
            part.MouldWhere is { } mould ? [new FindingLabel(mould, "mould here")] : [],
            [Tenth(part, worst)]);
    }

    private static IEnumerable<Figure<Length>> Sides(StackItem item) => new[] { item.SizeLength, item.SizeWidth }.OfType<Figure<Length>>();

    private static double Side(StackItem item) => Sides(item).Select(side => side.Value.Meters).DefaultIfEmpty().Max();

    private static Fix? Tenth(Part part, StackItem item)
    {
        var edits = Sides(item)
            .Select(f => part.Rewrite(f, Say.Of(f.Value / 10, "mm")))
            .OfType<TextEdit>()
            .ToArray();
        return edits.Length == 2 ? new Fix("Take it as a tenth of that", FixSafety.NeedsALook, [.. edits]) : null;
    }
}
