using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The lip of a joint is too short.</summary>
public sealed class ShortLap : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8108",
        Name = "short-lap",
        Severity = Severity.Warning,
        Title = "Lap too short",
        Reason = "A short lip peels from its edge; load goes through the length that overlaps.",
        Remedy = "Widen the lip, or lay a tape over the seam inside.",
        Source = "common practice: 12 mm for light parts, 25 mm for loaded ones",
        Exceptions = """
            Silent where a tape crosses the seam. An error below 8 mm on a part that carries load.
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
                seam 1400 mm
                adhesive our-paste
                bond-line 0.3 mm
                overlap 6 mm
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

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.JoinLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        // A lap of 0 is no lap, which is another finding.
        var part = context.Part;
        if (part.Join is not { Overlap: { Value.Meters: > 0 } lap, Tape: null } join || Laps.AreEnough(lap.Value, part))
        {
            return;
        }

        var wanted = Laps.WantedOn(part);
        var text = FormattableString.Invariant($"{wanted.Millimeters} mm");
        context.Report(
            lap.Where ?? join.Where,
            $"the lap is {Say.Of(lap)}; {Say.Of(wanted, lap.Written)} are wanted{(part.CarriesLoad() ? " where load goes through" : "")}",
            Grounds.Sure.And("overlap of the joint", lap),
            fixes: [Edits.Fix($"Lap it {text}", FixSafety.NeedsALook, FigureEdits.Rewrite(lap, text))],
            severity: Laps.AreHopeless(lap.Value, part) ? Severity.Error : Severity.Warning);
    }
}
