using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A bag with wet resin in it has no pot before the pump.</summary>
public sealed class NoCatchPot : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6212",
        Name = "no-catch-pot",
        Severity = Severity.Warning,
        Title = "No catch pot before the pump",
        Reason = "In an infusion resin always comes out at the vent, and out of a wet bag it may: without a pot it runs into the hose and the pump and cures there.",
        Remedy = "Put a catch pot between the bag and the pump.",
        Source = "common practice",
        Exceptions = """
            Speaks of a bag that lists a port or a hose and no catch pot: a warning for an infusion, advice for wet lay-up. Silent for prepreg.
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
                hose
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
                hose
                catch-pot
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused or Process.Bagged, Bag: { CatchPot: null } bag } || (bag.Hose?.Where ?? bag.Ports.FirstOrDefault()?.Where) is not { } fitting
            || NamesAPot(bag))
        {
            return;
        }

        context.Report(
            fitting,
            $"the bag of {part.Name} is {(part.Infusion is null ? "wet" : "infused")}, and no catch pot stands between it and the pump",
            labels: part.Infusion is { } infusion ? [new FindingLabel(infusion.Where, "infused here")] : [],
            severity: part.Process.Value == Process.Infused ? null : Severity.Advice,
            fixes: [Edits.Fix("Put a catch pot between them", FixSafety.Safe, Edits.After(fitting, "catch-pot"))]);
    }

    // A pot whose name is not known is another finding.
    private static bool NamesAPot(Bag bag) => BlockText.BlockAfter(bag.Where.Source, bag.Where.Span.End) is { } block
        && bag.Where.Source.Slice(block) is var lines
        && (lines.Contains("catch-pot", StringComparison.Ordinal) || lines.Contains("resin-trap", StringComparison.Ordinal) || lines.Contains("resin-pot", StringComparison.Ordinal));
}
