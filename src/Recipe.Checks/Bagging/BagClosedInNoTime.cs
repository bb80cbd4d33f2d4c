using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>No time to close the bag over a shaped mould.</summary>
public sealed class BagClosedInNoTime : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5112",
        Name = "bag-closed-in-no-time",
        Severity = Severity.Warning,
        Title = "No time to close the bag",
        Reason = "The last minutes of the film life then go into pleats and leaks, and the laminate is left half pressed.",
        Remedy = "Cut and rehearse the bag first, lay the tape on the flange beforehand, and plan 15 to 25 minutes.",
        Source = "common practice: 10 minutes flat, 25 minutes for a first shaped bag",
        Exceptions = """
            Speaks of wet lay-up on a mould with sides, and only where `time` is written.
            """,
        BadExample = """
            mould tray-mould {
              surface spherical-cap diameter 300 mm rise 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 4
                time 4 min
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface spherical-cap diameter 300 mm rise 60 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 4
                time 20 min
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private static readonly Duration Least = Duration.FromMinutes(10);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part is not { Process.Value: Process.Bagged, Bag: { Time: { } time } bag }
            || time.Value >= Least
            || context.Plan.Geometry is not { Flat: false, Depth.Meters: > 0 })
        {
            return;
        }

        context.Report(
            time.Where ?? bag.Where,
            $"the bag is to be closed in {Say.Of(time)}; over a shaped mould it takes {Say.Of(Least)} and more",
            Grounds.Sure.And("time to close the bag", time),
            fixes: [Edits.Fix("Plan 20 min", FixSafety.NeedsALook, FigureEdits.Rewrite(time, "20 min"))]);
    }
}
