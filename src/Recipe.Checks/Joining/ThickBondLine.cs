using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A bond line thicker than glue is strong in.</summary>
public sealed class ThickBondLine : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8103",
        Name = "thick-bond-line",
        Severity = Severity.Advice,
        Title = "Thick bond line",
        Reason = "A thick layer of glue is weaker than a thin one, brittle at its ends, and gets hot as it cures.",
        Remedy = "Close the gap to 0.2 to 0.5 mm, held by wire or glass beads, or take an adhesive that is made to fill gaps.",
        Source = "common practice: 0.2 to 0.5 mm; the sheet of the adhesive decides",
        Exceptions = """
            Silent up to 1 mm, and where the record of the adhesive gives a bond line as thick.
            """,
        BadExample = """
            adhesive our-paste { chemistry epoxy; mix 100:50 by weight; density cured 1.2 g/cm3; pot-life 60 min at 20 degC in 100 g; film-life 90 min at 20 degC; gel-time 3 h at 20 degC; source "data sheet" }

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
                adhesive our-paste
                bond-line 3 mm
              }
            }
            """,
        GoodExample = """
            adhesive our-paste { chemistry epoxy; mix 100:50 by weight; density cured 1.2 g/cm3; pot-life 60 min at 20 degC in 100 g; film-life 90 min at 20 degC; gel-time 3 h at 20 degC; source "data sheet" }

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
                adhesive our-paste
                bond-line 0.3 mm
              }
            }
            """,
    };

    private static readonly Length Thick = Length.FromMillimeters(1);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Join is not { BondLine: { } gap } join
            || gap.Value <= Thick
            || (join.Adhesive?.BondLine is { } own && own.Value >= gap.Value)
            || TradeWords.Says($"{join.Adhesive?.Name} {join.Adhesive?.Title}".Replace('-', ' '), "gap", "fill", "fillet", "balloon", "microballoon", "foam"))
        {
            return;
        }

        context.Report(
            gap.Where ?? join.Where,
            $"the bond line is {Say.Of(gap)}; beyond {Say.Of(Thick)} glue is weak and brittle",
            Grounds.Sure.And("bond line", gap),
            fixes: [Edits.Fix("Close it to 0.3 mm", FixSafety.NeedsALook, FigureEdits.Rewrite(gap, "0.3 mm"))]);
    }
}
