using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The finish on the fibres is for another resin.</summary>
public sealed class WrongSizing : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3123",
        Name = "wrong-sizing",
        Severity = Severity.Warning,
        Title = "Cloth with the finish for another resin",
        Reason = "A finish couples fibre and resin of one kind; under another the cloth wets badly and the bond is weak, above all when wet.",
        Remedy = "Order the cloth with the finish for this resin, or with one for all of them.",
        Source = "common practice",
        Exceptions = """
            Speaks only of cloth whose `sizing` is given. Silent for cloth with a finish for any resin.
            """,
        BadExample = """
            fabric shop-twill {
              fibre e-glass
              weave twill
              sizing polyester
              areal-weight 200 g/m2
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
              source "weighed"
            }

            fabric shop-twill-for-all like shop-twill {
              sizing any
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
                outer shop-twill 0/90
                inner shop-twill 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            fabric shop-twill {
              fibre e-glass
              weave twill
              sizing any
              areal-weight 200 g/m2
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
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
                outer shop-twill 0/90
                inner shop-twill 0/90
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
        if (part.Resin is not { Chemistry: Chemistry.Epoxy or Chemistry.Polyester or Chemistry.Vinylester } resin)
        {
            return;
        }

        var suits = resin.IsStyrenated() ? "polyester" : "epoxy";
        var wrong = part.Plies().Where(p => p.Material.Sizing is { } sizing && sizing != "any" && sizing != suits).DistinctBy(p => p.Material.Name).ToList();
        if (wrong is not [var ply, ..])
        {
            return;
        }

        context.Report(
            ply.MaterialWhere,
            $"{ply.Material.Name} has a finish for {ply.Material.Sizing} and {resin.Name} is {(resin.IsStyrenated() ? "a styrenated resin" : "an epoxy")}{Say.More(wrong.Count - 1)}",
            labels: part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            fixes: [Other(context, wrong, suits)]);
    }

    // The same cloth with the right finish, where the shop has one.
    private static Fix? Other(CheckContext context, List<PlyItem> wrong, string suits)
    {
        var ply = wrong[0];
        var all = context.Part.Plies().Where(p => p.Material.Name == ply.Material.Name).ToList();
        var other = wrong.Count > 1 ? null : context.Model.Materials.Values.OfType<Reinforcement>()
            .Where(m => m.Form == ply.Material.Form && m.Fibre?.Name == ply.Material.Fibre?.Name && m.PrepregContent is null && m.Weave == ply.Material.Weave
                && (m.Sizing == "any" || m.Sizing == suits) && Math.Abs(m.Grams() - ply.Material.Grams()) <= 0.1 * ply.Material.Grams())
            .OrderBy(m => Math.Abs(m.Grams() - ply.Material.Grams()))
            .ThenBy(m => m.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return other is null || all.Exists(p => !ReferenceEquals(p.MaterialWhere.Source, context.Part.Where.Source))
            ? null
            : new Fix($"Take {other.Name}", FixSafety.NeedsALook, [.. all.Select(p => Edits.Replace(p.MaterialWhere, other.Name))]);
    }
}
