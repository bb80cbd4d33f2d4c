using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A woven cloth is sheared on the surface until it wrinkles.</summary>
public sealed class ClothLocks : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3007",
        Name = "cloth-locks",
        Severity = Severity.Warning,
        Title = "Cloth sheared until it wrinkles",
        Reason = "Woven cloth follows a hollow by shearing. Beyond its locking angle it cannot, and stands in wrinkles or bridges.",
        Remedy = "Cut darts from the rim where it locks, take the cloth in pieces, begin in the deepest place, or take a cloth that shears more.",
        Source = "common practice; computed as a pin-jointed net of threads (Mack and Taylor, J. Textile Inst. 47 (1956) T477)",
        Exceptions = """
            Silent where the ply has its `darts` cut and they suffice, where less than 5 % of the ply is sheared that much, which is snipped at the rim, for mat and veil, and for unidirectional cloth, which opens instead.
            """,
        BadExample = """
            mould lid-mould {
              surface spherical-cap diameter 300 mm rise 145 mm
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part lid {
              mould lid-mould
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
            }
            """,
        GoodExample = """
            mould lid-mould {
              surface spherical-cap diameter 300 mm rise 60 mm
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part lid {
              mould lid-mould
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
            }
            """,
    };

    private const double Little = 0.05;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shape is not { } shape)
        {
            return;
        }

        ClothShear? worst = null;
        var (share, others) = (0.0, 0);
        foreach (var cloth in shape.Cloths.Where(cloth => cloth.StackLine < context.Plan.Stack.Length && !HasDarts(context.Plan, cloth)))
        {
            if (cloth.Net.Value is not { } net)
            {
                var ply = context.Plan.Stack[cloth.StackLine].Item;
                context.NotChecked($"the cloth of {ply.Name} cannot be laid down from where it begins", context.Part.Drape?.Where ?? ply.Where);
                continue;
            }

            var beyond = net.ShearBeyond(cloth.Locking.Value).Share.DecimalFractions;
            others += beyond >= Little ? 1 : 0;
            if (beyond >= Little && beyond > share)
            {
                (worst, share) = (cloth, beyond);
            }
        }

        if (worst is { Net.Value: { } sheared })
        {
            Tell(context, shape, worst, sheared, share, others - 1);
        }
    }

    // With them the shear stays within what the cloth stands, or the sheet of the shape says that it does not.
    private static bool HasDarts(Plan plan, ClothShear cloth) =>
        plan.Stack[cloth.StackLine].Item is PlyItem { CutsDarts: true } && cloth.Net.Value?.Darts(cloth.Locking.Value) is { StaysWithin: true };

    private static void Tell(CheckContext context, ShapePlan shape, ClothShear cloth, DrapeNet net, double share, int others)
    {
        var ply = context.Plan.Stack[cloth.StackLine].Item;
        var locking = cloth.Locking.Value;
        var darts = net.Darts(locking) is { StaysWithin: true, Darts: { Length: > 0 } cuts }
            ? $"; {cuts.Length} darts of at most {Say.About(cuts.MaxBy(cut => cut.Depth)!.Depth)} would help"
            : "";
        context.Report(
            ply.Where,
            $"{ply.Name} is sheared by up to {Say.Number(Math.Round(net.GreatestShear.Degrees))} deg, {Say.Percent(Math.Round(share, 2))} of it past the "
            + $"{Say.Number(locking.Degrees)} deg at which {cloth.Cloth.Name} wrinkles{darts}{Say.More(others)}",
            Grounds.Sure.And<Angle>(cloth.Locking),
            shape.Surface.Where is { } surface ? [new FindingLabel(surface, "on this surface")] : [],
            darts.Length > 0 ? [new Fix("Cut the darts", FixSafety.NeedsALook, Edits.Append(ply.Where, "darts"))] : []);
    }
}
