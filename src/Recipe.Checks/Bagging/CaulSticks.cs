using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A caul lies on the laminate with nothing between that lets go.</summary>
public sealed class CaulSticks : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5105",
        Name = "caul-sticks",
        Severity = Severity.Error,
        Title = "Nothing releases the caul",
        Reason = "The plate is glued on with the same resin as the part, and comes off in pieces or takes the face with it.",
        Remedy = "Put a peel ply or a release film between laminate and caul.",
        Source = "common practice; FAA-H-8083-31 chapter 7 (from memory): a caul carries release agent or a parting film",
        Exceptions = """
            Silent for a caul of silicone, polypropylene, polyethylene or fluoropolymer, and for one whose name or `stuff` says that it is
            released.
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
                caul
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
                caul
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
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { Layers: [{ Class: LayerClass.Caul } caul, ..] } || !context.Part.IsWetted() || LetsGo(caul.Material))
        {
            return;
        }

        context.Report(
            caul.Where,
            $"{caul.Material.Name} lies on the laminate with no peel ply and no release film between",
            fixes: [new Fix("Put a peel ply under it", FixSafety.NeedsALook, Edits.Before(caul.Where, "peel-ply"))]);
    }

    private static bool LetsGo(Consumable caul)
    {
        var words = $"{caul.Name} {caul.Stuff}".Replace('-', ' ');
        return caul.Coated == true || TradeWords.Says(
            words, "silicone", "rubber", "polypropylene", "polyethylene", "polythene", "ptfe", "fep", "fluoropolymer", "wax", "releas", "film", "coat", "acetal");
    }
}
