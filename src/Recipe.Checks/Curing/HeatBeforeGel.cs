using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A wet part with upright faces is warmed before it has gelled.</summary>
public sealed class HeatBeforeGel : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7108",
        Name = "heat-before-gel",
        Severity = Severity.Advice,
        Title = "Warmed before it gels",
        Reason = "Warm resin thins before it sets: it drains off upright faces and pools at the bottom.",
        Remedy = "Let it gel at room temperature, then warm it.",
        Source = "common practice",
        Exceptions = """
            Speaks of wet lay-up by hand, on moulds deeper than 50 mm and on mandrels. A bag holds its resin, and prepreg is made for heat.
            """,
        BadExample = """
            mould tray-mould {
              surface box 300 mm x 200 mm x 80 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                hold 20 degC for 1 h
                ramp 0.5 degC/min to 45 degC
                hold 45 degC for 20 h
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface box 300 mm x 200 mm x 80 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                ramp 0.5 degC/min to 45 degC
                hold 45 degC for 20 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly Length Deep = Length.FromMillimeters(50);
    private static readonly TemperatureDelta Noticeable = TemperatureDelta.FromKelvins(10);
    private const double Sure = 1.5;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (part.Process.Value != Process.Hand
            || !part.IsWetted()
            || part.Resin is not { } resin
            || plan.Cure is not { } cure
            || (part.Mould?.IsMandrel != true && !(plan.Geometry?.Depth > Deep)))
        {
            return;
        }

        var heat = cure.Steps.FirstOrDefault(s => s.To >= plan.Conditions.Room.Value + Noticeable);
        if (heat is null)
        {
            return;
        }

        if (cure.Progress?.Gel is not { } gel)
        {
            context.NotChecked(plan.Missing("progress of the cure", $"no gel time is known for {resin.Name}"), heat.Step.Where);
            return;
        }

        if (heat.Start.Value >= gel.Value)
        {
            return;
        }

        var begun = heat.Start.Value <= Duration.Zero ? "at once" : $"after {Say.Of(heat.Start.Value)}";
        context.Report(
            heat.Step.Where,
            $"the part is warmed {begun}, before {resin.Name} has gelled, and it has upright faces",
            Grounds.Sure.And<Duration>(gel).And<Duration>(heat.Start),
            fixes: [GelFirst(resin, heat.Step)]);
    }

    private static Fix? GelFirst(ResinSystem resin, CureStep heat) => resin.GelTime is not { } sheet ? null : new Fix(
        "Let it gel first",
        FixSafety.NeedsALook,
        Edits.Before(heat.Where, FormattableString.Invariant($"hold {Math.Round(sheet.Value.At.DegreesCelsius)} degC for {Math.Ceiling(sheet.Value.Time.Hours * Sure)} h")));
}
