using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The cure is hotter than something in the bag stands.</summary>
public sealed class BagTooHot : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7004",
        Name = "bag-too-hot",
        Severity = Severity.Error,
        Title = "Cure hotter than something in the bag stands",
        Reason =
            "The weakest film, felt, tape or hose decides: it melts, leaks or bonds, and the vacuum is gone while the part is"
            + " soft.",
        Remedy = "Cure cooler while the bag is on, or change the weakest item for one that stands the heat.",
        Source = "FAA AC 43.13-1B (1998) paragraph 3-4, for scale: PVC film 82 degC, nylon film 204 degC; the data sheet decides",
        Exceptions = """
            What follows `debag` does not heat the bag. An item that the recipe does not name has the limit of the generic one of the
            book: a finding that rests on it is a warning.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
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
                hose pvc-hose
                catch-pot
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 12 h under vacuum
                ramp 0.5 degC/min to 80 degC under vacuum
                hold 80 degC for 6 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
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
                hose pvc-hose
                catch-pot
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 12 h under vacuum
                ramp 0.5 degC/min to 50 degC under vacuum
                hold 50 degC for 6 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        Heat.Examine(context, limit => part.Bag is { } bag && limit.IsOf(bag), step => step.Bagged);
    }
}
