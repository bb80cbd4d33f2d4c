using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The leak check is too short to show a leak.</summary>
public sealed class LeakCheckTooShort : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6101",
        Name = "leak-check-too-short",
        Severity = Severity.Warning,
        Title = "Leak check too short",
        Reason = "In less than a minute the gauge shows the bag settling, not the leak.",
        Remedy = "Watch the gauge for five minutes; one minute at the least where the pot life leaves no more.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0184): one minute accepted for wet lay-up; common practice (five minutes)",
        Exceptions = """
            One minute will do for a wet lay-up; an infusion and a prepreg want five.
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
                leak-check 30 s rise at-most 5 mbar isolated
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

    private static readonly Duration Wet = Duration.FromMinutes(1);
    private static readonly Duration Dry = Duration.FromMinutes(5);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var check = part.Infusion?.DropTest ?? part.Vacuum?.LeakCheck;
        if (check?.Duration is not { } time)
        {
            return;
        }

        var enough = part.Process.Value is Process.Infused or Process.Prepreg ? Dry : Wet;
        if (time.Value >= enough * 0.999)
        {
            return;
        }

        context.Report(
            time.Where ?? check.Where,
            $"{(part.Infusion?.DropTest is null ? "leak check" : "drop test")} of {Say.Of(time)}; {Say.APart(part.Process.Value)} wants {Say.Of(enough)} or more",
            Grounds.Sure.And("leak check", time),
            fixes: [Edits.Fix("Watch it for 5 min", FixSafety.NeedsALook, FigureEdits.Rewrite(time, "5 min"))]);
    }
}
