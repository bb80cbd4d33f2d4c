using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A bond line of laminating resin with nothing in it.</summary>
public sealed class NeatSeam : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8102",
        Name = "neat-seam",
        Severity = Severity.Advice,
        Title = "Neat resin in the bond line",
        Reason = "Thin resin runs out of the gap before it gels, and what stays is brittle.",
        Remedy = "Thicken it with cotton, silica or balloons, or take a paste, and say how much goes into a metre of seam.",
        Source = "common practice",
        Exceptions = """
            Silent where `fillet` gives the filler, where a line speaks of filler or thickening, and for a bond line of a paste.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              halves left right
              flange 40 mm
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
              join {
                manner cured-then-bonded
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 1400 mm
                adhesive slow-laminating-epoxy
                bond-line 0.5 mm
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              halves left right
              flange 40 mm
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
              join {
                manner cured-then-bonded
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 1400 mm
                adhesive slow-laminating-epoxy
                bond-line 0.5 mm
                fillet 6 g/m
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.JoinLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Join is not { Manner.Value: JoinManner.CuredThenBonded, Adhesive: { Role: ResinRole.Laminating } resin, Fillet: null } join
            || IsThickened(resin.Name.Replace('-', ' '))
            || IsThickened(resin.Title)
            || join.Preparation.Concat(part.Finish).Any(s => IsThickened(s.Words())))
        {
            return;
        }

        context.Report(
            join.Where,
            $"the bond line is filled with {resin.Name}, a laminating resin, and no filler is named",
            labels: join.AdhesiveWhere is { } line ? [new FindingLabel(line, "adhesive here")] : [],
            fixes: [Edits.Fix("Add filler", FixSafety.NeedsALook, Edits.Last(join.Where, "fillet 6 g/m"))]);
    }

    private static bool IsThickened(string? words) => TradeWords.Says(
        words, "thick", "thicken", "fill", "paste", "silica", "cotton", "flock", "balloon", "microballoon", "microsphere", "bubble", "microfibre", "microfiber", "putty", "powder", "mush", "scrim", "cloth");
}
