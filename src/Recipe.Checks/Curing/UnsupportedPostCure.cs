using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A part is warmed off its mould with nothing under it.</summary>
public sealed class UnsupportedPostCure : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7103",
        Name = "unsupported-post-cure",
        Severity = Severity.Warning,
        Title = "Post-cure off the mould without support",
        Reason = "On the way up a part is only just stiffer than the oven is hot, and takes the shape of what it happens to lie on.",
        Remedy = "Post-cure it in the mould, or in a cradle that holds its shape, and say `support`.",
        Source = "common practice; DiBenedetto's equation in the form of Pascault and Williams 1990 for the lead of the glass transition",
        Exceptions = """
            Silent where the glass transition keeps 20 degC ahead of the oven, for laminates thicker than 5 mm, and for tubes. Where the oven
            overtakes the part, that is another finding.
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 36 h
                demould
                ramp 8 degC/h to 50 degC
                hold 50 degC for 16 h
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 36 h
                demould
                ramp 8 degC/h to 50 degC support cradle
                hold 50 degC for 16 h support cradle
                cool to 30 degC
              }
            }
            """,
    };

    private const double EnoughLead = 20;
    private const double Slack = 1;
    private static readonly Length Thick = Length.FromMillimeters(5);
    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(40);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (!context.Part.IsWetted()
            || context.Plan.Cure is not { } cure
            || context.Plan.Geometry?.Shape is CylinderShape or ConeShape
            || context.Plan.Laminate?.Thickness.Value > Thick)
        {
            return;
        }

        var loose = cure.Steps.SkipWhile(s => s.Step.Action != CureAction.Demould).ToList();
        var heated = loose.Where(s => s.To > Warm && (s.To > s.From || s.Step.Action == CureAction.Hold)).ToList();
        if (heated.Count == 0 || loose.Exists(s => s.Step.Support is not null))
        {
            return;
        }

        if (cure.Progress?.LeadOffMould is not { } lead)
        {
            context.NotChecked(context.Plan.Missing("glass transition", context.Plan.Missing("progress of the cure", "no glass transition is known")), heated[0].Step.Where);
            return;
        }

        if (lead.Value.Kelvins < -Slack || lead.Value.Kelvins >= EnoughLead)
        {
            return;
        }

        var ahead = Math.Max(0, Math.Round(lead.Value.Kelvins));
        var like = heated[0].Step.Temperature?.Written;
        context.Report(
            heated[0].Step.Where,
            $"off the mould and without support the part is warmed to {Say.Of(heated.Max(s => s.To), like)}, its glass transition {Say.Apart(ahead, like)} ahead; {Say.Apart(EnoughLead, like)} are wanted",
            Grounds.Sure.And<TemperatureDelta>(lead),
            [new FindingLabel(loose[0].Step.Where, "off the mould here")],
            [new Fix("Say that a cradle holds it", FixSafety.NeedsALook, [.. heated.Select(s => Edits.Append(s.Step.Where, "support cradle"))])]);
    }
}
