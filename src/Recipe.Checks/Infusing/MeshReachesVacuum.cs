using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The flow medium runs to the vacuum line.</summary>
public sealed class MeshReachesVacuum : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6211",
        Name = "mesh-reaches-vacuum",
        Severity = Severity.Warning,
        Title = "Flow medium reaches the vacuum",
        Reason = "The resin takes the short way through the mesh into the vent, and the plies below stay dry.",
        Remedy = "Let the mesh end 25 to 50 mm before the edge of the plies on the vent side.",
        Source = "common practice (25 to 50 mm)",
        Exceptions = """
            Advice where neither `smaller` nor `beyond` says where the mesh ends.
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
                flow-medium smaller 5 mm
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

    private static readonly Length Least = Length.FromMillimeters(25);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Bag: { } bag } || bag.Layers.FirstOrDefault(l => l.Class == LayerClass.FlowMedium) is not { } mesh)
        {
            return;
        }

        if (mesh is { Smaller: null, Beyond: null })
        {
            context.Report(
                mesh.Where,
                $"nothing says where {mesh.Material.Name} ends, and it is cut as large as the plies; {Say.Of(Least)} or more inside keeps it off the vacuum",
                labels: [new FindingLabel(part.Infusion?.Where ?? bag.Where, "infused here")],
                fixes: [new Fix("Let it end 40 mm inside", FixSafety.NeedsALook, Edits.Append(mesh.Where, "smaller 40 mm"))],
                severity: Severity.Advice);
            return;
        }

        if (mesh.Beyond is null && mesh.Smaller is { } inside && inside.Value.Meters >= Least.Meters - 1e-6)
        {
            return;
        }

        var figure = mesh.Beyond ?? mesh.Smaller!;
        context.Report(
            figure.Where ?? mesh.Where,
            mesh.Beyond is null
                ? $"{mesh.Material.Name} ends {Say.Of(figure)} inside the plies; {Say.Of(Least, figure.Written)} or more keeps it off the vacuum"
                : $"{mesh.Material.Name} runs {Say.Of(figure)} past the plies, to the vacuum; it should end {Say.Of(Least, figure.Written)} inside",
            Grounds.Sure.And("edge of the flow medium", figure),
            [new FindingLabel(part.Infusion?.Where ?? bag.Where, "infused here")],
            [mesh.Beyond is null ? Edits.Fix("Let it end 40 mm inside", FixSafety.NeedsALook, part.Rewrite(figure, "40 mm")) : null]);
    }
}
