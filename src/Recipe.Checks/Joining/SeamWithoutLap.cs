using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Two halves meet in a seam that no cloth crosses.</summary>
public sealed class SeamWithoutLap : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8001",
        Name = "seam-without-lap",
        Severity = Severity.Error,
        Title = "Seam without lip or tape",
        Reason = "A butt seam is bare resin: it splits first, along its whole length.",
        Remedy = "Give one half a lip (`overlap`), or lay a tape of cloth over the seam inside.",
        Source = "common practice (lip of 12 to 25 mm, tape 25 mm either side)",
        Exceptions = """
            Silent when another part of the file joins this one, and when cured halves are bonded flange to flange.
            """,
        BadExample = """
            mould tray-mould {
              halves left right
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
              }
              join {
                manner wet-in-wet
                within 45 min
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              halves left right
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
              }
              join {
                manner wet-in-wet
                overlap 25 mm
                within 45 min
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.JoinLines() ?? new LinesRead(part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var halves = part.Mould?.Halves.Length ?? 0;
        if ((halves < 2 && part.Join is null) || !part.IsLaidOrJoins() || IsJoinedElsewhere(context.Model, part))
        {
            return;
        }

        if (part.Join is { } join)
        {
            var isLapped = join.Overlap is { Value.Meters: > 0 } || join.Tape is not null;
            var isFlanged = join is { Manner.Value: JoinManner.CuredThenBonded, Adhesive: not null }
                && part.Mould?.Flange is { Value.Meters: > 0 };
            if (isLapped || isFlanged)
            {
                return;
            }
        }

        context.Report(
            part.Join?.Where ?? part.Where,
            part.Join is null ? $"{part.Name} is laid in {halves} halves and nothing joins them" : $"no lip and no tape crosses the seam of {part.Name}",
            labels: part.MouldWhere is { } mould && halves > 1 ? [new FindingLabel(mould, "mould in halves")] : [],
            fixes: [Lip(part)]);
    }

    private static bool IsJoinedElsewhere(RecipeModel model, Part part) =>
        model.Parts.Any(p => p.Join is { } join && join.Parts.Contains(part.Name));

    private static Fix? Lip(Part part)
    {
        const string line = "overlap 25 mm";
        var edit = part.Join is not { } join ? Edits.Last(part.Where, "join {", "  " + line, "}")
            : join.Overlap is { Basis: Basis.Stated } zero ? FigureEdits.Rewrite(zero, "25 mm")
            : Edits.Last(join.Where, line);
        return Edits.Fix("Give one half a lip of 25 mm", FixSafety.NeedsALook, edit);
    }
}
