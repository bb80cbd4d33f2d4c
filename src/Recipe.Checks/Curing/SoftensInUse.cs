using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The part gets nearly as hot in use as the temperature at which its resin softens.</summary>
public sealed class SoftensInUse : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7009",
        Name = "softens-in-use",
        Severity = Severity.Warning,
        Title = "Part softens where it is used",
        Reason = "Near its glass transition a resin creeps: the part sags, prints through and loses its shape for good.",
        Remedy = "Post-cure it hotter, take a resin for hot service, or paint it white.",
        Source = "common practice: service temperature 15 degC below the glass transition at the least",
        Exceptions = """
            Advice for a part that is only looked at. Silent where no `service` temperature is given. A dark skin in the sun reaches 80 degC: say so in `service`.
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
              service 50 degC
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
              service 30 degC
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
                ramp 20 degC/h to 50 degC under vacuum
                hold 50 degC for 16 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly TemperatureDelta Distance = TemperatureDelta.FromKelvins(15);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (part.Service is not { } service || part.Resin is not { } resin || plan.Cure is not { Steps.Length: > 0 } cure)
        {
            return;
        }

        if (cure.Progress?.Transition is not { } transition)
        {
            context.NotChecked(
                plan.Missing("glass transition", plan.Missing("progress of the cure", $"no glass transition is known for {resin.Name}")), service.Where ?? part.Where);
            return;
        }

        var softens = transition.Value.Value;
        if (service.Value + Distance <= softens)
        {
            return;
        }

        context.Report(
            service.Where ?? part.Where,
            $"used up to {Say.Of(service)}; after this cure {resin.Name} softens at about {Say.Of(Temperature.FromDegreesCelsius(Math.Round(softens.DegreesCelsius)), service.Written)}, and {Say.Apart(Distance.Kelvins, service.Written)} between are wanted",
            Grounds.Sure.And<Banded<Temperature>>(transition).And("service temperature", service),
            cure.Steps.IsEmpty ? [] : [new FindingLabel(cure.Steps[^1].Step.Where, "end of the cure")],
            [Hotter(resin, cure, service.Value + Distance)],
            part.Use?.Value == PartUse.Cosmetic ? Severity.Advice : Severity.Warning);
    }

    // The post-cure of the data sheet, in the mould, where it is hotter than what is written and could be enough.
    private static Fix? Hotter(ResinSystem resin, CurePlan cure, Temperature wanted)
    {
        if (resin.PostCure?.Value is not { } soak || soak.At <= cure.Peak.Value)
        {
            return null;
        }

        // As far above its cure as the sheet's own glass transition lies above the cure that the sheet names.
        var above = resin.GlassTransition?.Value is { After: { } named, Tg: var sheet } ? sheet - named.At : TemperatureDelta.FromKelvins(15);
        if (soak.At + above < wanted)
        {
            return null;
        }

        var end = cure.Steps.FirstOrDefault(s => s.Step.LetsVacuumGo)?.Step;
        var degrees = FormattableString.Invariant($"{Math.Round(soak.At.DegreesCelsius)} degC");
        return end is null ? null : Edits.Fix(
            $"Post-cure it in the mould at {degrees}",
            FixSafety.NeedsALook,
            Edits.Before(end.Where, $"ramp 20 degC/h to {degrees}", FormattableString.Invariant($"hold {degrees} for {Math.Ceiling(soak.For.Hours)} h"), "cool to 30 degC"));
    }
}
