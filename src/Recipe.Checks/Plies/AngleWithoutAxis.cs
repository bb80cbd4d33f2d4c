using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Fibre has a direction and the part does not say what it is measured from.</summary>
public sealed class AngleWithoutAxis : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3103",
        Name = "angle-without-axis",
        Severity = Severity.Warning,
        Title = "Angles measured from nothing",
        Reason = "Whoever lays it next takes another edge for 0 degrees, and all strength then lies across the load.",
        Remedy = "Say in `axis` which way 0 degrees runs, and mark it on the mould.",
        Source = "common practice; angles count counter-clockwise looking at the tool face, US Army TM 1-1500-204-23-11 (page file 0108)",
        Exceptions = """
            Silent where the stack is the same along and across (woven cloth, equal plies at 0 and 90, plus and minus 45), for round shapes,
            and for tubes and cones, where 0 degrees is their length.
            """,
        BadExample = """
            ud shop-ud {
              fibre e-glass
              areal-weight 200 g/m2
              width 60 cm
              resin-content hand 50 % by weight
              pace 5 min/m2
              source "weighed"
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
                strip shop-ud 0
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            ud shop-ud {
              fibre e-glass
              areal-weight 200 g/m2
              width 60 cm
              resin-content hand 50 % by weight
              pace 5 min/m2
              source "weighed"
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
              axis "0 degrees runs along the long side"
              plies {
                outer glass-twill-163 0/90
                strip shop-ud 0
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double Share = 0.1;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => new LinesRead(part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Axis is not null || (part.Surface ?? part.Mould?.Surface)?.Value is DiscShape or SphericalCapShape or ParaboloidShape or CylinderShape or ConeShape)
        {
            return;
        }

        var runs = part.FullPlies().SelectMany(p => p.Directions().Select(d => (Ply: p, d.Angle, d.Weight))).ToList();
        var all = runs.Sum(r => r.Weight);
        var askew = runs.Find(r => Math.Abs((r.Angle / 45) - Math.Round(r.Angle / 45)) > 1.0 / 45);
        var uneven = runs.Find(r => r.Ply.Material.Form == ReinforcementForm.Unidirectional && Math.Abs(At(r.Angle) - At(r.Angle + 90)) > Share * all);
        if ((askew.Ply ?? uneven.Ply) is not { } ply)
        {
            return;
        }

        // The ply that could not be read may make the stack the same along and across.
        if (askew.Ply is null && context.MissesAPly())
        {
            return;
        }

        context.Report(
            ply.Orientation?.Where ?? ply.Where,
            $"{ply.Name} lies at {ply.Orientation?.Written}, and no axis says which way 0 degrees runs in {part.Name}",
            fixes: [Named(part)]);

        double At(double angle) => runs.Where(r => Math.Abs(PlyFacts.Turned(r.Angle - angle)) < 1).Sum(r => r.Weight);
    }

    private static Fix? Named(Part part) => part.StackWhere is { } plies && ReferenceEquals(plies.Source, part.Where.Source)
        ? Edits.Fix("Say that 0 degrees runs along the part", FixSafety.NeedsALook, Edits.Before(plies, "axis \"0 degrees runs along the part\""))
        : null;
}
