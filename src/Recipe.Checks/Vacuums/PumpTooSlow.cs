using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The pump needs longer to draw the bag down than the recipe gives it.</summary>
public sealed class PumpTooSlow : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6011",
        Name = "pump-too-slow",
        Severity = Severity.Warning,
        Title = "Pump slower than the recipe plans",
        Reason = "The minutes that the pump is late are taken from the life of the resin.",
        Remedy = "Plan the time that the pump needs, take out loose film, find a bigger pump, or take a shorter or wider hose.",
        Source = "common practice of vacuum work: (V/S) ln(p0/p1), ideal gas at constant temperature, with 1/S = 1/pump + 1/hose",
        Exceptions = """
            Without leaks and without what boils out of the resin, so that a real bag takes longer. Silent where no time is planned.
            """,
        BadExample = """
            shop ours {
              pump 0.05 cfm ultimate 20 mbar absolute
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
                draw 25 inHg below ambient within 5 min
                leak-check 5 min rise at-most 2 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              pump 2.5 cfm ultimate 20 mbar absolute
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

    // Nobody plans to seconds.
    private const double Slack = 1.01;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum is not { Within: { } within, Draw: { } draw } || context.Plan.Vacuum is not { } levels)
        {
            return;
        }

        if (levels.PumpDown is not { } down)
        {
            context.NotChecked(
                context.Plan.Shop?.Pump is null ? "no flow of the pump is given" : context.Plan.Missing("draw the bag down", "the size of the bag is not known"), draw.Where);
            return;
        }

        if (down.Value <= within.Value * Slack)
        {
            return;
        }

        context.Report(
            within.Where ?? draw.Where ?? context.Part.Vacuum.Where,
            $"the pump needs {Say.Of(down.Value)} to draw the bag down without any leak{Hose(down.Value, levels)}; {Say.Of(within)} are planned",
            Grounds.Sure.And<Duration>(down).And("planned time", within),
            context.Plan.Shop?.Pump?.Where is { } pump ? [new FindingLabel(pump, "pump here")] : [],
            [Edits.Fix($"Plan {Minutes(down.Value)}", FixSafety.NeedsALook, FigureEdits.Rewrite(within, Minutes(down.Value)))]);
    }

    private static string Hose(Duration down, VacuumLevels levels) =>
        levels.HoseSlows is { Value: var hose } && VacuumWords.HoseShare(hose / down) is { } part ? $", {part} of it for the hose" : "";

    private static string Minutes(Duration time) => $"{Say.Number(Math.Ceiling(time.Minutes * 1.2))} min";
}
