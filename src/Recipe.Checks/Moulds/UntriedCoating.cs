using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Release was never tried on the paint of this pattern or mould.</summary>
public sealed class UntriedCoating : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2119",
        Name = "untried-coating",
        Severity = Severity.Warning,
        Title = "Coating that was never tried with the release",
        Reason = "Some paints and primers soften under wax and resin, and twenty coats of wax do not help then.",
        Remedy = "Lay a hand of resin on a released test patch of the same coating, and pull it off when it is hard.",
        Source = "common practice",
        Exceptions = """
            Silent without a `coating`, and where `stick-test yes` says that the pair was tried.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              coating "two-pack primer"
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
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              coating "two-pack primer"
              stick-test yes
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
    public override LinesRead? Reads(Part part) => part.MouldLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { Coating: { } coating, StaysInPart: false } mould || mould.StickTested is { Value: true } || !context.Part.IsWetted())
        {
            return;
        }

        var where = mould.CoatingWhere ?? mould.Where;
        context.Report(
            where,
            $"the face of {mould.Name} is coated with {coating.Trim('"')}, and nobody tried whether the release holds on it",
            labels: mould.Release is [var first, ..] ? [new FindingLabel(first.Where, "released with this")] : [],
            fixes: [Edits.Fix(
                "Try it on a test patch first",
                FixSafety.NeedsALook,
                FigureEdits.Rewrite(mould.StickTested, "yes") ?? Edits.After(where, "stick-test yes"))]);
    }
}
