using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The front of an infusion needs longer than the resin stays thin.</summary>
public sealed class FillSlowerThanGel : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4009",
        Name = "fill-slower-than-gel",
        Severity = Severity.Error,
        Title = "Resin gels before the part is full",
        Reason = "The front slows, stops short of the vent and leaves a dry end that nothing fills any more.",
        Remedy = "Lay a flow medium, put a feed line nearer, warm resin and mould, or take a slower resin.",
        Source = "common practice: full within 0.7 of the gel time; Darcy's law, e.g. Rudd, Long, Kendall and Mangin, Liquid Moulding Technologies 1997",
        Exceptions = """
            A warning where the part is full after the viscosity has doubled and before the gel. The fill time is worked out for layers that fill together, with permeabilities that are seldom measured: time your own strip of the stack.
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
                bag-film
              }
              infuse {
                path 2 m
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

    private const double ShareOfGel = 0.7;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (part.Process.Value != Process.Infused || part.Infusion is not { } infusion || part.Resin is not { } resin)
        {
            return;
        }

        if (plan.Flow is not { } flow)
        {
            context.NotChecked(plan.Missing("fill the part", "the way of the resin is not known"), infusion.Where);
            return;
        }

        var where = infusion.Path?.Where ?? infusion.Where;
        var most = flow.Gel is { } gel ? gel.Value * ShareOfGel : flow.Thickens.Value;
        var (words, clock) = flow.Gel is null ? ("its viscosity has doubled", flow.Thickens) : ("0.7 of its gel time is over", flow.Gel.Value);
        if (flow.Fill is not { } fill)
        {
            context.Report(
                where,
                $"{resin.Name} gets too thick to fill {Say.Of(flow.Path.Value)}; it comes {Say.About(flow.Reach.Value)} before its viscosity has doubled",
                Grounds.Sure.And<Length>(flow.Reach),
                Story(part),
                [Nearer(infusion, flow)]);
            return;
        }

        if (fill.Value > most)
        {
            context.Report(
                where,
                $"the resin needs {Say.Of(Rough(fill.Value))} for {Say.Of(flow.Path.Value)}; {words} after {Say.Of(Rough(most))}",
                Grounds.Sure.And<Duration>(fill).And<Duration>(clock),
                Story(part),
                [Nearer(infusion, flow)]);
        }
        else if (fill.Value > flow.Thickens.Value)
        {
            context.Report(
                where,
                $"the resin needs {Say.Of(Rough(fill.Value))} for {Say.Of(flow.Path.Value)}; its viscosity has doubled after {Say.Of(Rough(flow.Thickens.Value))}",
                Grounds.Sure.And<Duration>(fill).And<Duration>(flow.Thickens),
                Story(part),
                [Nearer(infusion, flow)],
                Severity.Warning);
        }
    }

    private static IEnumerable<FindingLabel> Story(Part part)
    {
        if (part.ResinWhere is { } resin)
        {
            yield return new FindingLabel(resin, "resin mixed for this");
        }
    }

    // A time that rests on a permeability is not known to the minute.
    private static Duration Rough(Duration time) => time.Minutes < 10 ? time : Duration.FromMinutes(Math.Round(time.Minutes));

    private static Fix? Nearer(Infusion infusion, InfusionFlow flow)
    {
        if (infusion.Path is not { } path)
        {
            return null;
        }

        var unit = Say.UnitLike(path.Written, "mm");
        var number = unit.FromSi(flow.LongestPath.Value.Meters * 0.9);
        if (!(number > 0))
        {
            return null;
        }

        var step = Math.Pow(10, Math.Floor(Math.Log10(number)) - 1);
        var text = $"{Say.Number(Math.Floor(number / step) * step)} {unit.Symbol}";
        return Edits.Fix($"Feed it no further than {text}", FixSafety.NeedsALook, FigureEdits.Rewrite(path, text));
    }
}
