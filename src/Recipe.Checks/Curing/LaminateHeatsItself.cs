using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A thick laminate laid in one go warms itself beyond what mould or core stand.</summary>
public sealed class LaminateHeatsItself : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7010",
        Name = "laminate-heats-itself",
        Severity = Severity.Warning,
        Title = "Laminate hotter inside than the mould stands",
        Reason = "Its heat cannot get away: the middle scorches, the mould prints through, and the part warps as it cools.",
        Remedy = "Lay it in two goes with a day between, or take a slower resin.",
        Source = "common practice; balance of heat as in Loos and Springer, J. Compos. Mater. 17 (1983) 135",
        Exceptions = """
            Speaks of laminates of 4 mm and more without a core, laid wet, and of what touches them. Needs the resin's `heat-of-reaction`. Worked out with still air on both sides: a thick mould keeps it warmer.
            """,
        BadExample = """
            resin hot-epoxy like fast-laminating-epoxy {
              heat-of-reaction 450 J/g
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
              resin hot-epoxy
              plies {
                all glass-twill-163 0/90 x150
              }
              wet-out {
                laminators 6
                pace 0.1 min/m2
                room 25 degC
              }
              cure {
                hold 25 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            resin hot-epoxy like fast-laminating-epoxy {
              heat-of-reaction 450 J/g
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
              resin hot-epoxy
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
        if (context.Plan.Cure is not { Inside: { } inside } cure)
        {
            return;
        }

        // Tape, ports and hose lie beside the laminate: its heat does not reach them.
        var bag = context.Part.Bag;
        var weakest = cure.Limits.Where(l => l.Limit is not null && (bag is null || !l.IsOfFitting(bag))).MinBy(l => l.Limit!.Value.Value.Kelvins);
        if (weakest?.Limit is not { } limit || inside.Value <= limit.Value)
        {
            return;
        }

        var written = context.Part.CureWritten();
        context.Report(
            context.Part.StackWhere ?? context.Part.Where,
            $"the middle of the laminate gets up to {Say.Of(Temperature.FromDegreesCelsius(Math.Round(inside.Value.DegreesCelsius)), written)} by its own heat; {weakest.Item} stands {Say.Of(limit.Value, written)}",
            Grounds.Sure.And<Temperature>(inside).And<Temperature>(limit),
            [new FindingLabel(weakest.Where, $"{weakest.Item} here")]);
    }
}
