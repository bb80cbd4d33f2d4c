using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The cure is hotter than a core stands.</summary>
public sealed class CoreTooHot : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7003",
        Name = "core-too-hot",
        Severity = Severity.Error,
        Title = "Cure hotter than a core stands",
        Reason = "A core that softens under the bag shrinks and creeps, and the skins follow it.",
        Remedy = "Cure cooler, or take a core that stands the heat.",
        Source = "common practice; limits of cores from memory of the trade, the data sheet decides",
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
                stiff core pvc-foam-75 thickness 5 mm
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 12 h
                ramp 0.5 degC/min to 80 degC
                hold 80 degC for 6 h
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
                stiff core pvc-foam-75 thickness 5 mm
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
        var cores = context.Part.Stack.OfType<CoreItem>().ToList();
        Heat.Examine(context, limit => cores.Exists(limit.IsOf), _ => true);
    }
}
