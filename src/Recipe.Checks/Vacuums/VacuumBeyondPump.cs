using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A deeper vacuum is asked for than the pump reaches.</summary>
public sealed class VacuumBeyondPump : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6008",
        Name = "vacuum-beyond-pump",
        Severity = Severity.Warning,
        Title = "Deeper vacuum than the pump reaches",
        Reason = "The gauge never arrives, and the hour goes into hunting a leak that is not there.",
        Remedy = "Ask for what the pump reaches with the bag on, or find a better pump.",
        Source = "common practice; the ultimate pressure is the pump's own",
        Exceptions = """
            Silent when the level is more than the air outside gives: that is another finding.
            """,
        BadExample = """
            shop ours {
              pump 2.5 cfm ultimate 100 mbar absolute
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
              }
              vacuum {
                draw 20 mbar absolute within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              pump 2.5 cfm ultimate 100 mbar absolute
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
              }
              vacuum {
                draw 150 mbar absolute within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum?.Draw is not { Value.Convention: { } convention } draw || context.Plan.Vacuum is not { } levels)
        {
            return;
        }

        if (convention == VacuumConvention.BelowAmbient && draw.Value.Value >= levels.Ceiling.Value)
        {
            return;
        }

        if (context.Plan.Shop?.PumpUltimate is not { } pump)
        {
            context.NotChecked("no ultimate pressure of the pump is given", draw.Where);
            return;
        }

        var wanted = levels.Absolute.Value;
        if (wanted >= pump.Value)
        {
            return;
        }

        var below = convention == VacuumConvention.BelowAmbient;
        context.Report(
            draw.Where ?? context.Part.Vacuum.Where,
            $"{Say.Of(wanted, pump.Written)} absolute is asked for; the pump reaches {Say.Of(pump.Value, pump.Written)} at best",
            Grounds.Sure.And("ultimate pressure of the pump", pump).And<Pressure>(below ? levels.Absolute : null),
            pump.Where is { } said ? [new FindingLabel(said, "pump here")] : [],
            [Reachable(draw, pump.Value, levels.Ceiling.Value)]);
    }

    private static Fix? Reachable(Figure<VacuumLevel> draw, Pressure ultimate, Pressure ambient)
    {
        const double withTheBagOn = 1.5;
        var absolute = ultimate * withTheBagOn;
        if (absolute >= ambient)
        {
            return null;
        }

        var level = draw.Value.Convention == VacuumConvention.BelowAmbient
            ? VacuumWords.Below(ambient - absolute, draw.Written)
            : $"{Say.Of(absolute, draw.Written)} absolute";
        return Edits.Fix($"Draw {level}", FixSafety.NeedsALook, FigureEdits.Rewrite(draw, level));
    }
}
