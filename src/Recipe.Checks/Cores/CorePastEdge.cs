using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A core is larger than the part it lies in.</summary>
public sealed class CorePastEdge : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3210",
        Name = "core-past-edge",
        Severity = Severity.Warning,
        Title = "Core larger than the part",
        Reason = "A core that reaches the edge cannot be closed in by the skins: it is trimmed open, drinks water, and holds the bag off the flange.",
        Remedy = "Measure it again: a core ends inside the trim line, with a bevel down to the skins.",
        Source = "common practice",
        Exceptions = """
            Speaks of a core that says its size or area. A core as large as the part is let pass.
            """,
        BadExample = """
            core our-foam like pvc-foam-75 {
              cut slit
              source "data sheet"
            }

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
                middle core our-foam size 450 mm x 300 mm at "centred"
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            core our-foam like pvc-foam-75 {
              cut slit
              source "data sheet"
            }

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
                middle core our-foam size 350 mm x 250 mm at "centred"
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    // What a tape measure and a string over a curve disagree by.
    private const double Slack = 1.02;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Geometry is not { } shape)
        {
            return;
        }

        foreach (var core in context.Part.Stack.OfType<CoreItem>())
        {
            if (Larger(core, shape, context.Part) is not { } larger)
            {
                continue;
            }

            context.Report(
                larger.Where ?? core.Where,
                $"{core.Name} {larger.Words}",
                larger.Grounds,
                context.Part.MouldWhere is { } mould ? [new FindingLabel(mould, "mould here")] : []);
            return;
        }
    }

    /// <summary>The size or the area that is too large: where it stands, what is said of it and of the part, and what that rests on.</summary>
    private static (SourceSpan? Where, string Words, Grounds Grounds)? Larger(CoreItem core, GeometryPlan shape, Part part)
    {
        if (core.CoversArea is { } covers)
        {
            return covers.Value > shape.Area * Slack
                ? (covers.Where, $"covers {covers.Written}; {part.Name} has {Say.Of(shape.Area, covers.Written)}", Grounds.Sure.And("area", covers))
                : null;
        }

        var (along, across) = (shape.DevelopedLength, shape.DevelopedWidth);
        if (core is not { SizeLength: { } length, SizeWidth: { } width } || along <= Length.Zero || across <= Length.Zero)
        {
            return null;
        }

        // The sheet may lie either way.
        var (longer, shorter) = length.Value >= width.Value ? (length, width) : (width, length);
        var (most, least) = along >= across ? (along, across) : (across, along);
        return longer.Value > most * Slack ? Over(longer, most, "long")
            : shorter.Value > least * Slack ? Over(shorter, least, "wide")
            : null;

        (SourceSpan?, string, Grounds) Over(Figure<Length> size, Length has, string what) => (
            size.Where,
            $"is {size.Written} {what}; {part.Name} is {Say.Of(has, size.Written)} {what} over its surface",
            Grounds.Sure.And("size", size));
    }
}
