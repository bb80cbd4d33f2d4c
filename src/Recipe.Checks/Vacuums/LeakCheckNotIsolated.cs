using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Nobody says that the pump is shut off while the bag is tested.</summary>
public sealed class LeakCheckNotIsolated : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6006",
        Name = "leak-check-not-isolated",
        Severity = Severity.Advice,
        Title = "Leak check without shutting the pump off",
        Reason = "A running pump hides any leak.",
        Remedy = "Shut the bag off from the pump, read at the bag, and write `isolated`.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0184)",
        Exceptions = """
            Speaks of a line that does not say `isolated`. It is no more than advice: a rise is by definition that of a bag that is shut off.
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
                leak-check 5 min rise at-most 30 mbar
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        Examine(context, "leak check", context.Part.Vacuum?.LeakCheck);
        Examine(context, "drop test", context.Part.Infusion?.DropTest);
    }

    private static void Examine(CheckContext context, string name, LeakCheck? check)
    {
        if (check is null or { Isolated: true })
        {
            return;
        }

        var time = check.Duration is { } duration ? Say.Of(duration) + " " : "";
        context.Report(
            check.Where,
            $"the {time}{name} does not say that the pump is shut off",
            fixes: [Edits.Fix("Shut the bag off from the pump", FixSafety.NeedsALook, Edits.Append(check.Where, "isolated"))]);
    }
}
