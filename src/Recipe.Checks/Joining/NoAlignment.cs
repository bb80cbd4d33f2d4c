using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Nothing brings the two halves to the same place.</summary>
public sealed class NoAlignment : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8104",
        Name = "no-alignment",
        Severity = Severity.Warning,
        Title = "Nothing aligns the halves",
        Reason = "Without dowels or keys the halves slide on wet resin, and the part gets a step along its seam.",
        Remedy = "Name what aligns them: dowels, keys, a lip, a jig.",
        Source = "common practice",
        Exceptions = """
            Silent where a lip (`overlap`) locates the halves or a line of the preparation speaks of fitting, pins, tape or a jig. A seam that
            nothing crosses has a finding of its own.
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
                abrade 80 grit
                seam 1400 mm
                tape glass-tape-200 width 50 mm x1
                vent 3 mm
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
                seam 1400 mm
                tape glass-tape-200 width 50 mm x1
                vent 3 mm
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
        if (part.Join is not { Align: null, Manner: not null, Overlap: not { Value.Meters: > 0 } } join
            || (join.Tape is null && join.Adhesive is null)
            || (join.Parts.Length < 2 && !(part.Mould?.Halves.Length > 1))
            || join.Preparation.Concat(part.Finish).Any(s => TradeWords.Says(
                s.Words(), "align", "dowel", "key", "pin", "jig", "peg", "clamp", "locat", "index", "fit", "fitt", "dry-fit", "mark", "match", "line up", "bolt", "fixture", "cradle", "tack")))
        {
            return;
        }

        context.Report(
            join.Where,
            "two halves are joined, and neither dowels, keys, a lip nor a jig bring them to the same place",
            labels: part.MouldWhere is { } mould ? [new FindingLabel(mould, "mould here")] : [],
            fixes: [Edits.Fix("Align them with dowels", FixSafety.NeedsALook, Edits.Last(join.Where, "align dowels"))]);
    }
}
