using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A styrenated resin is put under a vacuum in which its styrene leaves it.</summary>
public sealed class StyreneBoils : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6012",
        Name = "styrene-boils",
        Severity = Severity.Warning,
        Title = "Vacuum so deep that styrene boils",
        Reason = "Boiling styrene froths the laminate and takes away what should have cured; the pump blows it into the room.",
        Remedy = "Draw 600 to 800 mbar below ambient until gel, and lead the exhaust outdoors.",
        Source = "vapour pressure of styrene 5 mmHg at 20 degC (NIOSH Pocket Guide); that practice keeps 50 mbar is from memory of the trade",
        Exceptions = """
            Speaks of wet lay-up and infusion with polyester and vinylester. A maker who allows deeper vacuum for an infusion resin is reason enough to accept it.
            """,
        BadExample = """
            resin my-polyester {
              chemistry polyester
              mix 100:2 by weight
              density resin 1.10 g/cm3
              density hardener 1.10 g/cm3
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
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
              resin my-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 980 mbar below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            resin my-polyester {
              chemistry polyester
              mix 100:2 by weight
              density resin 1.10 g/cm3
              density hardener 1.10 g/cm3
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
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
              resin my-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 750 mbar below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private static readonly Pressure Floor = Engineering.Styrene.PracticeFloor;
    private static readonly Pressure Wanted = Pressure.FromMillibars(250);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (!context.Part.Resin.IsStyrenated() || context.Part.Process.Value == Process.Prepreg
            || context.Part.Vacuum is not { Draw: { } draw } vacuum || context.Plan.Vacuum is not { } levels)
        {
            return;
        }

        // A level beyond the air there is is another finding.
        var absolute = levels.Absolute.Value;
        if (absolute >= Floor || levels.BelowAmbient.Value >= levels.Ceiling.Value)
        {
            return;
        }

        var level = draw.Value.Convention == VacuumConvention.BelowAmbient
            ? VacuumWords.Below(levels.Ceiling.Value - Wanted, draw.Written)
            : $"{Say.Of(Wanted, draw.Written)} absolute";
        context.Report(
            draw.Where ?? vacuum.Where,
            $"{Say.Of(draw)} leave {Say.Of(absolute, draw.Written)} absolute in the bag; styrene wants {Say.Of(Floor, draw.Written)} and more",
            Grounds.Sure.And<Pressure>(levels.Absolute),
            context.Part.ResinWhere is { } resin ? [new FindingLabel(resin, "styrenated resin here")] : [],
            [Edits.Fix($"Draw {level}", FixSafety.NeedsALook, FigureEdits.Rewrite(draw, level))]);
    }
}
