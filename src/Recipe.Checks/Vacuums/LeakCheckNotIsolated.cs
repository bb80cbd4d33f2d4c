using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The bag is tested while the pump runs, or nobody says that it is not.</summary>
public sealed class LeakCheckNotIsolated : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6006",
        Name = "leak-check-not-isolated",
        Severity = Severity.Warning,
        Title = "Leak check without shutting the pump off",
        Reason = "A running pump hides any leak.",
        Remedy = "Shut the bag off from the pump, read at the bag, and write `isolated`.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0184)",
        Exceptions = """
            Advice only when the line does not say how it is done: the rise is by definition that of a bag that is shut off.
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
            $"the {time}{name} {(check.Isolated is null ? "does not say that the pump is shut off" : "is read with the pump running")}",
            fixes: [Edits.Fix("Shut the bag off from the pump", FixSafety.NeedsALook, Edits.Append(check.Where, "isolated"))],
            severity: check.Isolated is null ? Severity.Advice : Severity.Warning);
    }
}
