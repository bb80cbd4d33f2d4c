using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The shape locks the part into a mould of one rigid piece.</summary>
public sealed class LockedIn : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2109",
        Name = "locked-in",
        Severity = Severity.Error,
        Title = "Part locked into its mould",
        Reason = "The first part never comes out whole, and often the mould does not survive it either.",
        Remedy = "Split the mould, make it flexible, or change the shape.",
        Source = "common practice",
        Exceptions = """
            Silent for moulds with `halves`, `flexible yes`, and those that stay in the part. Where the part itself flexes out, accept it with
            that reason.
            """,
        BadExample = """
            mould tray-mould {
              surface box 400 mm x 300 mm x 60 mm
              made-of epoxy-glass-tooling
              draft 2 deg
              undercut yes
              pull-aid "air port in the floor"
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
              surface box 400 mm x 300 mm x 60 mm
              made-of epoxy-glass-tooling
              draft 2 deg
              undercut no
              pull-aid "air port in the floor"
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

    // Facets of a scan lean by chance; so little holds nothing.
    private const double Little = 0.002;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is { Pull: not null, Undercut: null, IsFlexible: false, StaysInPart: false, Halves.IsEmpty: true } unsaid
            && context.Plan.Shape is { Model.Measures: { Draft: { } draft } measures } && draft.Undercut / measures.Area > Little)
        {
            context.Report(
                unsaid.Pull?.Where ?? unsaid.Where,
                $"{Say.Percent(Math.Round(draft.Undercut / measures.Area, 3))} of the surface of {unsaid.Name} lies under itself along the pull: what is laid in it is locked in",
                labels: unsaid.Surface?.Where is { } surface ? [new FindingLabel(surface, "measured on this surface")] : []);
            return;
        }

        if (context.Part.Mould is not { Undercut: { Value: true } undercut, IsFlexible: false, StaysInPart: false, Halves.IsEmpty: true } mould)
        {
            return;
        }

        context.Report(
            undercut.Where ?? mould.Where,
            $"{mould.Name} has an undercut and is one rigid piece: what is laid in it is locked in",
            Grounds.Sure.And("undercut", undercut),
            context.Part.MouldWhere is { } used ? [new FindingLabel(used, "used here")] : [],
            [Edits.Fix("Make the mould flexible", FixSafety.NeedsALook, Edits.After(undercut.Where ?? mould.Where, "flexible yes"))]);
    }
}
