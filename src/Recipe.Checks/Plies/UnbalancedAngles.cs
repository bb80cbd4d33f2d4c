using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>More fibre runs one way of an angle than the other.</summary>
public sealed class UnbalancedAngles : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3102",
        Name = "unbalanced-angles",
        Severity = Severity.Advice,
        Title = "Fibre at an angle without its mirror image",
        Reason = "A stack with more fibre at plus than at minus an angle shears when it is pulled, so the part twists under load.",
        Remedy = "Give each ply at an angle a partner at the opposite angle.",
        Source = "common practice",
        Exceptions = """
            Silent for cloth along, across and at equal weights both ways, for patches, and for halves, of which one is the mirror image of
            the other. A part that is meant to twist is accepted with a written reason.
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
              axis "0 degrees runs along the long side"
              plies {
                outer shop-ud 30
                inner shop-ud 30
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
                outer shop-ud 30
                inner shop-ud -30
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
    public override LinesRead? Reads(Part part) => part.StackWhere is { } plies ? new LinesRead(plies, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Mould is { Halves.Length: > 1 } || context.Model.Parts.Any(p => p.Join is { } join && join.Parts.Contains(part.Name)))
        {
            return;
        }

        var runs = part.FullPlies().SelectMany(p => p.Directions().Select(d => (Ply: p, d.Angle, d.Weight))).ToList();
        foreach (var way in runs.GroupBy(r => Math.Round(Math.Abs(r.Angle))).Where(g => g.Key is > 0 and < 90).OrderBy(g => g.Key))
        {
            var plus = way.Where(r => r.Angle > 0).Sum(r => r.Weight);
            var minus = way.Where(r => r.Angle < 0).Sum(r => r.Weight);
            if (Math.Abs(plus - minus) <= Share * (plus + minus))
            {
                continue;
            }

            var sign = plus > minus ? 1 : -1;
            var last = way.Last(r => Math.Sign(r.Angle) == sign).Ply;
            var like = last.Material.ArealWeight?.Written;
            context.Report(
                last.Orientation?.Where ?? last.Where,
                $"{PlyFacts.Weight(Math.Max(plus, minus), like)} of fibre runs at {Say.Number(sign * way.Key)} deg, and {(Math.Min(plus, minus) is > 0 and var less ? PlyFacts.Weight(less, like) : "none")} at {Say.Number(-sign * way.Key)} deg",
                fixes: [Partner(part, last, Math.Abs(plus - minus))]);
            return;
        }
    }

    // A ply of half the difference is turned over; one of all of it gets a partner.
    private static Fix? Partner(Part part, PlyItem ply, double difference)
    {
        if (ply is not { Material.Form: ReinforcementForm.Unidirectional, Orientation: { Value.Kind: OrientationKind.Single } lies })
        {
            return null;
        }

        var other = Say.Number(-lies.Value.First);
        var weight = ply.Material.Grams() * ply.Count;
        if (Math.Abs((2 * weight) - difference) < 1)
        {
            return Edits.Fix($"Lay {ply.Name} at {other}", FixSafety.NeedsALook, part.Rewrite(lies, other));
        }

        return Math.Abs(weight - difference) < 1 && ply.Count == 1 && part.VariantOf is null
            ? Edits.Fix(
                $"Lay a partner of {ply.Name} at {other}",
                FixSafety.NeedsALook,
                Edits.After(ply.Where, $"{part.FreeName(ply.Name + "-partner")} {ply.Material.Name} {other}"))
            : null;
    }
}
