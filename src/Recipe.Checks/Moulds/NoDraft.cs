using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The walls of a rigid one-piece mould run straight along the pull.</summary>
public sealed class NoDraft : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2108",
        Name = "no-draft",
        Severity = Severity.Warning,
        Title = "No draft on the walls",
        Reason = "Without draft the part rubs all the way out: it is scratched, or it stays in.",
        Remedy = "Give the walls 1 to 1.5 degrees, or split the mould.",
        Source = "common practice (draft of 1 to 1.5 degrees, or 1 to 1.5 %)",
        Exceptions = """
            Silent on walls up to 25 mm, for split and flexible moulds, and where no `draft` is given.
            """,
        BadExample = """
            mould tray-mould {
              surface box 400 mm x 300 mm x 60 mm
              made-of epoxy-glass-tooling
              draft 0 deg
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

    private static readonly Angle Enough = Angle.FromDegrees(1);
    private static readonly Length Shallow = Length.FromMillimeters(25);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is { Pull: not null, Draft: null, IsFlexible: false, StaysInPart: false, IsMandrel: false, Halves.IsEmpty: true } unsaid
            && context.Plan is { Shape.Model.Measures.Draft: { } measured, Geometry: { } walls } && walls.Depth > Shallow
            && measured.FacingAway <= UnitsNet.Area.Zero && measured.Smallest < Enough)
        {
            context.Report(
                unsaid.Pull?.Where ?? unsaid.Where,
                $"a wall {Say.About(walls.Depth)} deep has a draft of {Say.Number(Math.Floor(measured.Smallest.Degrees * 10) / 10)} deg, measured on the surface; a rigid mould in one piece wants {Say.Number(Enough.Degrees)} deg or more",
                labels: unsaid.Surface?.Where is { } face ? [new FindingLabel(face, "walls here")] : []);
            return;
        }

        if (context.Part.Mould is not { Draft: { } draft, IsFlexible: false, StaysInPart: false, IsMandrel: false, Halves.IsEmpty: true } mould
            || context.Plan.Geometry is not { } geometry || geometry.Depth <= Shallow || draft.Value >= Enough)
        {
            return;
        }

        context.Report(
            draft.Where ?? mould.Where,
            $"draft of {Say.Of(draft)} on walls {Say.About(geometry.Depth)} deep; a rigid mould in one piece wants {Say.Number(Enough.Degrees)} deg or more",
            Grounds.Sure.And("draft", draft),
            mould.Surface?.Where is { } surface ? [new FindingLabel(surface, "walls here")] : [],
            [Edits.Fix("Give the walls 1.5 deg", FixSafety.NeedsALook, FigureEdits.Rewrite(draft, "1.5 deg"))]);
    }
}
