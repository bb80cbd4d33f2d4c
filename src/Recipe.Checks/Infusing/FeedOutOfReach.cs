using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The feed and the way of the resin do not cover the part.</summary>
public sealed class FeedOutOfReach : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6213",
        Name = "feed-out-of-reach",
        Severity = Severity.Warning,
        Title = "Feed that does not reach the part",
        Reason = "What lies further from the feed than the resin runs stays dry, and a short line feeds like a point: the front spreads in a circle and takes longer than planned.",
        Remedy = "Measure the longest way from the feed to the vent, and lay the feed line along the part.",
        Source = "geometry: what lies within the path of a line; a line at least half as long as its path is common practice",
        Exceptions = """
            Where no feed line is given, that of the plan is looked at: one as long as the part. A path over 600 mm is judged by `long-flow-path`. Silent where the part has no known size.
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
              }
              infuse {
                path 16 mm
                feed-line length 160 mm diameter 8 mm
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

    private const double Slack = 1.1;
    private const double ShareOfPath = 0.5;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { Path: { } path } infusion } || context.Plan.Geometry is not { } shape
            || context.Plan.Feed?.Length is not { } planned)
        {
            return;
        }

        // All that lies no further than the path from a straight line: a strip on either side of it, and half a circle at each end.
        var count = Math.Max(1, infusion.FeedLines?.Value ?? 1);
        var line = planned.Value;
        var reached = count * ((2 * line.Meters * path.Value.Meters) + (Math.PI * path.Value.Meters * path.Value.Meters));
        if (shape.Area.SquareMeters > reached * Slack)
        {
            var feed = $"{(count == 1 ? "a feed line" : FormattableString.Invariant($"{count} feed lines"))} of {(infusion.FeedLine is { } stated ? Say.Of(stated) : Say.About(line, path.Written))}";
            context.Report(
                path.Where ?? infusion.Where,
                $"{feed} and a path of {Say.Of(path)} reach {Area(reached, shape)}; the part has {Area(shape.Area.SquareMeters, shape)}",
                Grounds.Sure.And("path", path).And<Length>(planned),
                infusion.FeedLine?.Where is { } where && where != path.Where ? [new FindingLabel(where, "feed line here")] : []);
            return;
        }

        // A longer way is too long by itself, and that is another finding.
        if (infusion.FeedLine is { } shortLine && path.Value <= LongFlowPath.Most && shortLine.Value.Meters < path.Value.Meters * ShareOfPath)
        {
            context.Report(
                shortLine.Where ?? infusion.Where,
                $"the feed line is {Say.Of(shortLine)} long and the resin runs {Say.Of(path)} from it; a line feeds like one when it is at least half as long",
                Grounds.Sure.And("path", path).And("length of the feed line", shortLine),
                path.Where is { } way && way != shortLine.Where ? [new FindingLabel(way, "path here")] : []);
        }
    }

    private static string Area(double squareMetres, GeometryPlan shape) =>
        shape.Area.SquareMeters >= 0.01 ? $"{Say.Number(Math.Round(squareMetres, 4))} m2" : $"{Say.Number(Math.Round(squareMetres * 1e4, 1))} cm2";
}
