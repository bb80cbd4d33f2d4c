using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A ply ends too close to the edge of the ply below it.</summary>
public sealed class SteepDrop : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3108",
        Name = "steep-drop",
        Severity = Severity.Warning,
        Title = "Plies end on one line",
        Reason = "Where plies end together the load jumps and the next ply bridges the step, so the edge peels first.",
        Remedy = "Let each ply end 12 to 25 mm inside the one below, and more in thick cloth.",
        Source = "common practice (6 mm in light parts, 20 times the thickness of the ply in loaded ones)",
        Exceptions = """
            Silent for a step of nothing, which says that the plies end at the trim line. Advice for a part that is only looked at.
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
                middle glass-twill-163 0/90 step 3 mm
                inner glass-twill-163 0/90 step 3 mm
              }
              cure {
                hold 20 degC for 48 h
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                middle glass-twill-163 0/90 step 15 mm
                inner glass-twill-163 0/90 step 15 mm
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Length Light = Length.FromMillimeters(6);
    private const double Thicknesses = 20;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        var isLoaded = part.Use?.Value is PartUse.Structural or PartUse.Flying;
        var steep = part.Plies()
            .Where(p => p.Step is { Value.Meters: > 0 })
            .Select(p => (Ply: p, Wanted: Wanted(plan, p, isLoaded)))
            .Where(s => s.Ply.Step!.Value.Meters < s.Wanted.Meters - 1e-6)
            .OrderBy(s => s.Ply.Step!.Value / s.Wanted)
            .ToList();
        if (steep is not [var (ply, wanted), ..])
        {
            return;
        }

        var rounded = FormattableString.Invariant($"{Math.Max(15, Math.Ceiling(steep.Max(s => s.Wanted.Millimeters)))} mm");
        var edits = steep.Select(s => part.Rewrite(s.Ply.Step, rounded)).OfType<TextEdit>().DistinctBy(e => e.Where.Span.Start).ToArray();
        context.Report(
            ply.Step!.Where ?? ply.Where,
            $"{ply.Name} ends {Say.Of(ply.Step)} inside the ply below; {Say.Of(wanted, ply.Step.Written)} is wanted{Say.More(steep.Count - 1)}",
            Grounds.Sure.And("step", ply.Step),
            fixes: [edits.Length == steep.Count ? new Fix($"Step them by {rounded}", FixSafety.NeedsALook, [.. edits]) : null],
            severity: part.Use?.Value == PartUse.Cosmetic ? Severity.Advice : Severity.Warning);
    }

    private static Length Wanted(Plan plan, PlyItem ply, bool isLoaded)
    {
        var thickness = plan.Stack.FirstOrDefault(s => ReferenceEquals(s.Item, ply))?.Thickness?.Value.Meters ?? 0;
        return isLoaded ? Length.FromMillimeters(Math.Ceiling(Math.Max(Light.Millimeters, Thicknesses * thickness * 1000))) : Light;
    }
}
