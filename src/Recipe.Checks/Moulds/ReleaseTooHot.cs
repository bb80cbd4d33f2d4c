using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The cure is hotter than the release stands.</summary>
public sealed class ReleaseTooHot : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2005",
        Name = "release-too-hot",
        Severity = Severity.Error,
        Title = "Cure hotter than the release stands",
        Reason = "Wax that melts moves into the laminate, and a film that embrittles lets go of the mould: the part bonds.",
        Remedy = "Cure cooler while the part is in the mould, or take a release that stands the heat.",
        Source =
            "FAA AC 43.13-1B (1998) paragraph 3-4a(1): PVA film 121 degC; wax from memory of the trade, the data sheet "
            + "decides",
        Exceptions = """
            What follows `demould` does not heat the release.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
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
                hold 20 degC for 12 h
                ramp 0.5 degC/min to 130 degC
                hold 130 degC for 6 h
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
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
                hold 20 degC for 12 h
                ramp 0.5 degC/min to 60 degC
                hold 60 degC for 6 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var coats = context.Part.Mould?.Release ?? [];
        Heat.Examine(context, limit => coats.Any(limit.IsOf), step => step.InMould);
    }
}
