using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A glass transition higher than the resin can reach.</summary>
public sealed class TransitionAboveLimit : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4205",
        Name = "transition-above-limit",
        Severity = Severity.Warning,
        Title = "Glass transition above the limit of the resin",
        Reason = "No cure takes a resin beyond its own limit, so one of the two figures is wrong, and the heat that the part stands with it.",
        Remedy = "Read both off the sheet again.",
        Source = "common practice; the limit is that of full cure (ISO 11357-2 says how it is measured)",
        BadExample = """
            resin shop-epoxy like slow-laminating-epoxy {
              glass-transition 95 degC after 20 degC for 24 h
              glass-transition-limit 85 degC
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin shop-epoxy
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
            resin shop-epoxy like slow-laminating-epoxy {
              glass-transition 50 degC after 20 degC for 24 h
              glass-transition-limit 85 degC
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin shop-epoxy
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
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Resin is not { GlassTransition: { } transition, GlassTransitionLimit: { } limit } resin
            || transition.Value.Tg.Kelvins <= limit.Value.Kelvins + 0.05)
        {
            return;
        }

        var reached = Say.Of(transition.Value.Tg, limit.Written);
        context.Report(
            part.FigureWhere(limit),
            $"glass transition of {resin.Name} is {reached} after its cure; the limit of the system is given as {Say.Of(limit)}",
            Grounds.Sure.And($"glass transition of {resin.Name}", transition).And($"limit of {resin.Name}", limit),
            part.ResinNamed(),
            [Edits.Fix($"Write {reached} as the limit", FixSafety.NeedsALook, part.Rewrite(limit, reached))]);
    }
}
