using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Resin is mixed in a cup that gives something off into it.</summary>
public sealed class UncleanCup : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4108",
        Name = "unclean-cup",
        Severity = Severity.Warning,
        Title = "Cup that spoils the resin",
        Reason = "Wax from a paper cup ends up between the plies, and styrene eats a foam cup.",
        Remedy = "Take a clean plastic cup, or one of unwaxed paper.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0169)",
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
              mix {
                add resin
                add hardener
                stir 3 min
                scrape
                cup waxed
              }
              cure {
                hold 20 degC for 48 h
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add hardener
                stir 3 min
                scrape
                cup clean
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mixing is not { Cup: { Value: MixingCup.Waxed or MixingCup.Foam } cup } mixing)
        {
            return;
        }

        context.Report(
            cup.Where ?? mixing.Where,
            $"{context.Part.Resin?.Name ?? "the resin"} is mixed in a cup of {(cup.Value == MixingCup.Foam ? "plastic foam" : "waxed paper")}",
            Grounds.Sure.And("cup", cup),
            fixes: [Edits.Fix("Take a clean cup", FixSafety.Safe, FigureEdits.Rewrite(cup, "clean"))]);
    }
}
