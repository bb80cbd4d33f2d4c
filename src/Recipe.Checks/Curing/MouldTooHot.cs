using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The cure is hotter than the mould stands.</summary>
public sealed class MouldTooHot : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7002",
        Name = "mould-too-hot",
        Severity = Severity.Error,
        Title = "Cure hotter than the mould stands",
        Reason = "A mould that softens under a part takes a new shape, and the part takes it too.",
        Remedy = "Cure cooler while the part is in the mould, and go hotter after demoulding on a support.",
        Source = "common practice; limits of mould materials from memory of the trade, the maker of the mould decides",
        Exceptions = """
            What follows `demould` does not heat the mould. The limit of the mould is its own `heat-limit`, or else that of what it is
            made of.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              heat-limit 55 degC
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
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              heat-limit 55 degC
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
                ramp 0.5 degC/min to 50 degC
                hold 50 degC for 6 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var mould = context.Part.Mould;
        Heat.Examine(context, limit => mould is not null && limit.IsOf(mould), step => step.InMould);
    }
}
