using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Off the mould, the oven overtakes the rising glass transition of the part.</summary>
public sealed class OvenAheadOfPart : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7008",
        Name = "oven-ahead-of-part",
        Severity = Severity.Warning,
        Title = "Oven hotter than the part is stiff",
        Reason = "Above its glass transition a part is rubber: it sags into the shape of whatever it lies on.",
        Remedy = "Warm it more slowly, dwell on the way, support it, or post-cure it in the mould.",
        Source = "common practice: 10 degC/h free-standing; DiBenedetto's equation in the form of Pascault and Williams 1990",
        Exceptions = """
            Silent for a step that names its support, and for what is cured in the mould. The glass transition is worked out and seldom measured: support the part all the same.
            """,
        BadExample = """
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
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
                ramp 60 degC/h to 75 degC
                hold 75 degC for 6 h
                cool to 30 degC
              }
            }
            """,
        GoodExample = """
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
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                ramp 20 degC/h to 60 degC under vacuum
                hold 60 degC for 8 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private const double Slack = 1;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Cure is not { Steps.Length: > 0 } cure)
        {
            return;
        }

        var loose = cure.Steps.SkipWhile(s => s.Step.Action != CureAction.Demould).Skip(1).ToList();
        var heated = loose.Where(s => s.To > s.From || s.Step.Action == CureAction.Ramp).ToList();
        if (heated.Count == 0 || loose.Exists(s => s.Step.Support is not null))
        {
            return;
        }

        if (cure.Progress is not { LeadOffMould: { } lead, LeadOffMouldAt: { } at })
        {
            context.NotChecked(context.Plan.Missing("glass transition", context.Plan.Missing("progress of the cure", "no glass transition is known")), heated[0].Step.Where);
            return;
        }

        if (lead.Value.Kelvins >= -Slack)
        {
            return;
        }

        var step = loose.FirstOrDefault(s => s.Start.Value <= at.Value && at.Value <= s.End.Value && s.Step.Action != CureAction.Demould) ?? heated[0];
        context.Report(
            step.Step.Where,
            $"off the mould the oven is up to {Say.Apart(-lead.Value.Kelvins, step.Step.Temperature?.Written)} above the glass transition of the part, {Say.Of(Duration.FromMinutes(Math.Round(at.Value.Minutes)))} into the cure",
            Grounds.Sure.And<TemperatureDelta>(lead),
            [new FindingLabel(cure.Steps.First(s => s.Step.Action == CureAction.Demould).Step.Where, "off the mould here")],
            [Slower(heated, cure.Progress.FastestRamp)]);
    }

    // One ramp that goes all the way is the only thing that can be changed without a look at the rest.
    private static Fix? Slower(List<CureStepPlan> heated, Computed<TemperatureChangeRate>? fastest)
    {
        var ramps = heated.Where(s => s.To > s.From).ToList();
        if (fastest is not { } rate || ramps is not [{ Step.Rate: { } written }])
        {
            return null;
        }

        var perHour = Math.Floor(rate.Value.DegreesCelsiusPerSecond * 3600);
        return perHour >= 1 ? Edits.Fix($"Warm it at {Say.Number(perHour)} degC/h", FixSafety.NeedsALook, FigureEdits.Rewrite(written, $"{Say.Number(perHour)} degC/h")) : null;
    }
}
