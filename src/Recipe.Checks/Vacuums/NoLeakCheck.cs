using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A bag that nobody proves to be tight.</summary>
public sealed class NoLeakCheck : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6004",
        Name = "no-leak-check",
        Severity = Severity.Warning,
        Title = "No leak check",
        Reason = "A leak that is not looked for is found in the cured part.",
        Remedy = "Shut the bag off, wait five minutes, read, and write down the rise that is still accepted.",
        Source = "US Army TM 1-1500-204-23-11 (page files 0171, 0184)",
        Exceptions = """
            Silent for a hand lay-up, and for an infusion, which has a drop test instead.
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
    public override LinesRead? Reads(Part part) => part.Vacuum is { } vacuum ? new LinesRead(vacuum.Where) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value is not (Process.Bagged or Process.Prepreg) || part.Vacuum is not { LeakCheck: null } vacuum)
        {
            return;
        }

        // The same limit as a gauge in inches shows it: 30 mbar would be 0.886 inHg.
        var most = Say.UnitLike(vacuum.Draw?.Written, "mbar").Symbol == "inHg" ? "1 inHg" : "30 mbar";
        context.Report(
            vacuum.Where,
            $"nothing shows that the bag of {part.Name} is tight",
            labels: part.Bag is { } bag ? [new FindingLabel(bag.Where, "bag here")] : [],
            fixes:
            [
                Edits.Fix(
                    $"Add a leak check: {most} at most in 5 min",
                    FixSafety.NeedsALook,
                    Edits.Last(vacuum.Where, $"leak-check 5 min rise at-most {most} isolated")),
            ]);
    }
}
