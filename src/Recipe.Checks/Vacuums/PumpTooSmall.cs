using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The leak that the check accepts takes more than a fifth of what the pump moves at the level.</summary>
public sealed class PumpTooSmall : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6010",
        Name = "pump-too-small",
        Severity = Severity.Warning,
        Title = "Pump too small for the leak that is accepted",
        Reason = "Much of the pump then works for the leak, the level is never reached, and no new leak shows on the gauge.",
        Remedy = "Accept a smaller rise, find a bigger pump, or take a shorter or wider hose.",
        Source = "common practice: a leak may take a fifth of the flow of the pump at the level; what the hose passes is that of air in a smooth straight tube",
        Exceptions = """
            Counted is what the hose leaves of the pump's flow. Silent where the level is deeper than the pump reaches: that is another finding. Needs the flow of the pump and what the leak check accepts.
            """,
        BadExample = """
            shop ours {
              pump 0.2 cfm ultimate 20 mbar absolute
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
                draw 27 inHg below ambient within 30 min
                leak-check 5 min rise at-most 160 mbar isolated
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

    private const double Enough = VacuumLevels.EnoughMargin;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum is not { } vacuum || context.Plan.Vacuum is not { } levels)
        {
            return;
        }

        if (levels.PumpMargin is not { } margin)
        {
            context.NotChecked(
                context.Plan.Shop?.Pump is null ? "no flow of the pump is given" : "no size of the bag or no accepted rise is known", vacuum.Where);
            return;
        }

        // 0 is a level that the pump does not reach without any leak.
        if (margin.Value is 0 or >= Enough)
        {
            return;
        }

        var check = vacuum.LeakCheck ?? context.Part.Infusion?.DropTest;
        context.Report(
            check?.RiseAtMost?.Where ?? check?.Where ?? vacuum.Where,
            $"the pump moves {Say.Number(Math.Floor(margin.Value * 10) / 10)} times the leak that is accepted{Hose(levels)}; {Say.Number(Enough)} times leaves something in hand, and {Needed(levels, context.Plan.Shop?.Pump?.Written)}",
            Grounds.Sure.And<double>(margin),
            context.Plan.Shop?.Pump?.Where is { } pump ? [new FindingLabel(pump, "pump here")] : [],
            [Tighter(check, margin.Value)]);
    }

    private static string Hose(VacuumLevels levels) => levels.HoseTakes is { Value: var share } && VacuumWords.HoseShare(share) is { } part
        ? $", of which its hose has taken {part} off"
        : "";

    private static string Needed(VacuumLevels levels, string? like) => levels.PumpNeeded is { Value: var needed }
        ? $"takes a pump of {VacuumWords.NoSmaller(needed, like)} through this hose"
        : "no pump moves that through this hose";

    // The margin goes with one over the rise.
    private static Fix? Tighter(LeakCheck? check, double margin)
    {
        if (check?.RiseAtMost is not { } rise)
        {
            return null;
        }

        var text = VacuumWords.UpTo(rise.Value * margin / Enough, rise.Written);
        return Edits.Fix($"Accept {text}", FixSafety.NeedsALook, FigureEdits.Rewrite(rise, text));
    }
}
