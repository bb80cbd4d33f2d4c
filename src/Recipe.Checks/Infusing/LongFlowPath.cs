using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>One feed line feeds the part the long way.</summary>
public sealed class LongFlowPath : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6203",
        Name = "long-flow-path",
        Severity = Severity.Advice,
        Title = "Fed the long way",
        Reason = "The time to fill grows with the square of the way: half the way takes a quarter of the time.",
        Remedy = "Feed it across the short way, or from a line in the middle.",
        Source = "common practice (0.6 m from one line); Darcy's law",
        Exceptions = """
            Silent with two feed lines or more, and under a double flow medium.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 900 mm x 300 mm
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
              }
              infuse {
                path 800 mm
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
              surface flat 900 mm x 300 mm
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

    /// <summary>The longest way that one line feeds.</summary>
    internal static readonly Length Most = Length.FromMeters(0.6);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { Path: { } path } infusion } || path.Value.Meters <= Most.Meters + 1e-6
            || infusion.FeedLines is { Value: > 1 }
            || part.Bag?.Layers.Where(l => l.Class == LayerClass.FlowMedium).Sum(l => l.Count) > 1)
        {
            return;
        }

        context.Report(
            path.Where ?? infusion.Where,
            $"one feed line feeds {Say.Of(path)}; over {Say.Of(Most, path.Written)} a line across the middle fills it in a quarter of the time",
            Grounds.Sure.And("path", path),
            part.MouldWhere is { } mould ? [new FindingLabel(mould, "mould here")] : [],
            [Halved(part, path)]);
    }

    private static Fix? Halved(Part part, Figure<Length> path)
    {
        var half = Say.About(path.Value / 2, path.Written);
        return path.Value.Meters / 2 > Most.Meters ? null : Edits.Fix($"Feed it from the middle, {half} each way", FixSafety.NeedsALook, part.Rewrite(path, half));
    }
}
