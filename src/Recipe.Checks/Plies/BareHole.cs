using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A thin laminate is bolted or riveted through without a pad.</summary>
public sealed class BareHole : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3115",
        Name = "bare-hole",
        Severity = Severity.Warning,
        Title = "Bolt through a thin laminate",
        Reason = "In a thin laminate the bolt bears on the edge of the hole until it is long, and the plies peel round it.",
        Remedy = "Lay a pad under each hole, three times as wide as the hole at the least, or bond in an insert.",
        Source = "common practice",
        Exceptions = """
            Speaks of laminates thinner than 1.5 mm without patch or insert, and only where a `drill` line names bolt, rivet, screw, hinge,
            cleat or fastener.
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                drill "4 mm for the hinge bolts"
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
                pad patch glass-twill-163 0/90 size 60 mm x 60 mm x2 at "under the hinge bolts"
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                drill "4 mm for the hinge bolts"
              }
            }
            """,
    };

    private static readonly Length Thin = Length.FromMillimeters(1.5);

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Finish.FirstOrDefault(Fasteners.Named) is not { } hole || !part.HasPlies() || part.Stack.Any(s => s is InsertItem or CoreItem || !s.CoversAll()))
        {
            return;
        }

        if (context.Plan.Laminate?.Thickness is not { } thickness)
        {
            context.NotChecked("the thickness of the laminate is not known", hole.Where);
            return;
        }

        if (thickness.Value >= Thin)
        {
            return;
        }

        context.Report(
            hole.Where,
            $"the laminate is about {Say.About(thickness.Value)} thick where it is drilled for a fastener; without a pad {Say.Of(Thin)} is wanted",
            labels: part.StackWhere is { } plies ? [new FindingLabel(plies, "plies here")] : [],
            fixes: [Pad(part)]);
    }

    private static Fix? Pad(Part part)
    {
        if (part.FullPlies().LastOrDefault() is not { } last || part.VariantOf is not null)
        {
            return null;
        }

        var lies = last.Orientation is { } orientation ? " " + orientation.Written : "";
        return Edits.Fix(
            $"Lay two pads of {last.Material.Name} under each hole",
            FixSafety.NeedsALook,
            Edits.After(last.Where, $"{part.FreeName("pad")} patch {last.Material.Name}{lies} size 50 mm x 50 mm x2 at \"under each hole\""));
    }
}
