using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Cloth that does not go round the radius of the mould.</summary>
public sealed class ClothTooStiff : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3112",
        Name = "cloth-too-stiff",
        Severity = Severity.Warning,
        Title = "Cloth too stiff for the radius",
        Reason = "Heavy cloth and straight fibre span a tight radius instead of lying in it, and leave wrinkles and a hollow that fills with resin or air.",
        Remedy = "Take lighter cloth in more plies, lay it on the bias, or cut darts.",
        Source = "common practice",
        Exceptions = """
            Speaks of woven cloth of more than 300 g/m2 (twill and satin: 400 g/m2) and of unidirectional cloth on moulds that curve two ways
            with a radius under 30 mm. Silent for stitched cloth, patches and tapes up to 100 mm.
            """,
        BadExample = """
            fabric shop-heavy-twill {
              fibre e-glass
              weave twill
              areal-weight 450 g/m2
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
              source "weighed"
            }

            mould tray-mould {
              surface spherical-cap diameter 300 mm rise 60 mm
              made-of epoxy-glass-tooling
              radius 8 mm
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
                inner shop-heavy-twill 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            fabric shop-heavy-twill {
              fibre e-glass
              weave twill
              areal-weight 450 g/m2
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
              source "weighed"
            }

            mould tray-mould {
              surface spherical-cap diameter 300 mm rise 60 mm
              made-of epoxy-glass-tooling
              radius 60 mm
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
                inner shop-heavy-twill 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Length Tight = Length.FromMillimeters(30);
    private static readonly Length Tape = Length.FromMillimeters(100);
    private const double Heavy = 300;

    // A twill or satin goes down where a plain weave of the same weight stands up.
    private const double HeavySupple = 400;
    private static readonly string[] Supple = ["twill", "satin"];

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (context.Plan.Geometry is not { DoublyCurved: true } || part.Mould is not { } mould
            || part.FullPlies().Where(IsStiff).OrderByDescending(p => p.Material.Grams()).ToList() is not [var ply, ..] stiff)
        {
            return;
        }

        if (mould.InsideRadius is not { } radius)
        {
            context.NotChecked($"no smallest radius is given for {mould.Name}", part.MouldWhere);
            return;
        }

        if (radius.Value >= Tight)
        {
            return;
        }

        var weight = PlyFacts.Weight(ply.Material.Grams(), ply.Material.ArealWeight?.Written);
        context.Report(
            ply.MaterialWhere,
            $"{ply.Name} of {weight}{(ply.Material.Form == ReinforcementForm.Unidirectional ? ", all one way," : "")} goes into a radius of {Say.Of(radius)}; {Say.Of(Tight, radius.Written)} or more is wanted{Say.More(stiff.Count - 1)}",
            Grounds.Sure.And("radius", radius),
            [new FindingLabel(part.MouldWhere ?? mould.Where, "mould here")],
            [Lighter(context, stiff)]);
    }

    private static bool IsStiff(PlyItem ply) =>
        (ply.Material.IsWoven() && ply.Material.Grams() > (Supple.Contains(ply.Material.Weave) ? HeavySupple : Heavy))
        || (ply.Material.Form == ReinforcementForm.Unidirectional && (ply.Material.Width is not { } width || width.Value > Tape));

    private static Fix? Lighter(CheckContext context, List<PlyItem> stiff)
    {
        if (stiff is not [{ Material: { Form: ReinforcementForm.Fabric } heavy } ply])
        {
            return null;
        }

        var light = context.Model.Materials.Values.OfType<Reinforcement>()
            .Where(m => m.IsWoven() && m.Fibre?.Name == heavy.Fibre?.Name && m.PrepregContent is null && m.Grams() is > 100 and <= Heavy
                && !(m.Width is { } width && width.Value <= Tape))
            .OrderByDescending(m => m.Grams())
            .ThenBy(m => m.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return light is null || !ReferenceEquals(ply.MaterialWhere.Source, context.Part.Where.Source)
            ? null
            : new Fix($"Take {light.Name}, in as many plies as the weight asks", FixSafety.NeedsALook, Edits.Replace(ply.MaterialWhere, light.Name));
    }
}
