using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The leak check begins before the bag has settled.</summary>
public sealed class NoSettling : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6102",
        Name = "no-settling",
        Severity = Severity.Advice,
        Title = "No time for the bag to settle before the leak check",
        Reason = "Felt and pleats still give off air, and a good bag fails.",
        Remedy = "Let it settle for three to five minutes at the level, then close the valve.",
        Source = "common practice",
        Exceptions = """
            Silent where no `settle` is given.
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
                settle 1 min
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
                settle 3 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private static readonly Duration Enough = Duration.FromMinutes(3);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum is not { Settle: { } settle } vacuum || (vacuum.LeakCheck ?? context.Part.Infusion?.DropTest) is not { } check || settle.Value >= Enough)
        {
            return;
        }

        context.Report(
            settle.Where ?? check.Where,
            $"the bag settles for {Say.Of(settle)} before the leak check; {Say.Of(Enough)} or more are wanted",
            Grounds.Sure.And("settling", settle),
            [new FindingLabel(check.Where, "checked here")],
            [Edits.Fix("Let it settle 3 min", FixSafety.Safe, FigureEdits.Rewrite(settle, "3 min"))]);
    }
}
