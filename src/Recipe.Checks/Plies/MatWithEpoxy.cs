using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A bound mat is wetted with epoxy.</summary>
public sealed class MatWithEpoxy : Check
{
    private const string Stitched = "stitched";

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3003",
        Name = "mat-with-epoxy",
        Severity = Severity.Warning,
        Title = "Bound mat with epoxy",
        Reason = "The binder of most mats wants styrene to let go: with epoxy the mat stays stiff, cloudy and heavy.",
        Remedy = "Take a stitched mat, or cloth.",
        Source = "common practice",
        Exceptions = """
            Silent for a stitched mat and for a veil.
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
                middle glass-mat-300 random
                inner glass-twill-163 0/90
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
                middle glass-stitched-mat-300 random
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var mats = part.Stack.OfType<PlyItem>().Where(p => p.Material.Form == ReinforcementForm.Mat).ToList();
        if (mats.Count == 0 || part.Resin is not { } resin)
        {
            return;
        }

        if (resin.Chemistry == Chemistry.Unknown)
        {
            context.NotChecked($"no chemistry is given for {resin.Name}", part.ResinWhere);
            return;
        }

        if (resin.Chemistry != Chemistry.Epoxy)
        {
            return;
        }

        var bound = mats.Where(m => m.Material.Binder is { } binder && binder != Stitched).ToList();
        if (bound is [var first, ..])
        {
            context.Report(
                first.MaterialWhere,
                $"the {first.Material.Binder} binder of {first.Material.Name} does not dissolve in {resin.Name}, an epoxy{Say.More(bound.Count - 1)}",
                labels: part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
                fixes: [Stitch(context.Model, bound)]);
        }
        else if (mats.Find(m => m.Material.Binder is null) is { } unknown)
        {
            context.NotChecked($"no binder is given for {unknown.Material.Name}", unknown.MaterialWhere);
        }
    }

    private static Fix? Stitch(RecipeModel model, List<PlyItem> bound)
    {
        var wanted = bound[0].Material.ArealWeight?.Value.KilogramsPerSquareMeter ?? 0;
        var mat = model.Materials.Values
            .OfType<Reinforcement>()
            .Where(r => r is { Form: ReinforcementForm.Mat, Binder: Stitched, ArealWeight: not null })
            .OrderBy(r => Math.Abs(r.ArealWeight!.Value.KilogramsPerSquareMeter - wanted))
            .ThenBy(r => r.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return mat is null
            ? null
            : new Fix($"Take {mat.Name}", FixSafety.NeedsALook, [.. bound.Select(b => Edits.Replace(b.MaterialWhere, mat.Name))]);
    }
}
