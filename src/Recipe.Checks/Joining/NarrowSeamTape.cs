using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The tape over a seam is too narrow to hold it.</summary>
public sealed class NarrowSeamTape : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8107",
        Name = "narrow-seam-tape",
        Severity = Severity.Warning,
        Title = "Seam tape too narrow",
        Reason = "A tape holds a seam by the length it lies on each side: too short, it peels from its edge.",
        Remedy = "Take a tape of 50 mm, which lies 25 mm on each side.",
        Source = "common practice: 12 mm on each side for light parts, 25 mm for loaded ones",
        Exceptions = """
            Without a `width` on the line the roll's own width counts. An error below 8 mm on each side of a part that carries load.
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
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 1400 mm
                vent 3 mm
                tape glass-tape-200 width 20 mm x1
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
                manner cured-then-taped
                align dowels
                abrade 80 grit
                overlap 20 mm
                seam 1400 mm
                tape glass-tape-200 width 50 mm x1
                vent 3 mm
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Join is not { Tape: { } tape } join)
        {
            return;
        }

        if ((join.TapeWidth ?? tape.Width) is not { } width)
        {
            context.NotChecked($"no width is given for {tape.Name}", join.Where);
            return;
        }

        var side = width.Value / 2;
        if (Laps.AreEnough(side, part))
        {
            return;
        }

        var wanted = Laps.WantedOn(part);
        var twice = FormattableString.Invariant($"{wanted.Millimeters * 2} mm");
        context.Report(
            width.Where ?? join.Where,
            $"a tape of {Say.Of(width)} lies {Say.Of(side, width.Written)} on each side of the seam; {Say.Of(wanted, width.Written)} are wanted{(part.CarriesLoad() ? " where load goes through" : "")}",
            Grounds.Sure.And("width of the tape", width),
            fixes: [Edits.Fix($"Take {twice}", FixSafety.NeedsALook, join.TapeWidth is null ? null : FigureEdits.Rewrite(width, twice))],
            severity: Laps.AreHopeless(side, part) ? Severity.Error : Severity.Warning);
    }
}
