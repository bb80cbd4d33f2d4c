using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Two halves that are joined have the same angles where they should be mirror images.</summary>
public sealed class CopiedNotMirrored : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3106",
        Name = "copied-not-mirrored",
        Severity = Severity.Warning,
        Title = "Second half copied, not mirrored",
        Reason = "Put together face to face, the fibres of one half then run against those of the other, and the part twists one way under load.",
        Remedy = "Change the sign of every angle in the second half.",
        Source = "common practice",
        Exceptions = """
            Speaks only of two parts with moulds of their own that a third part joins. Silent for cloth along, across and both ways alike.
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

            mould cheek-left-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            mould cheek-right-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part cheek-left {
              mould cheek-left-mould
              process hand
              resin slow-laminating-epoxy
              axis "0 degrees runs along the long side"
              plies {
                outer glass-twill-163 0/90
                bias shop-ud 30
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            part cheek-right {
              mould cheek-right-mould
              process hand
              resin slow-laminating-epoxy
              axis "0 degrees runs along the long side"
              plies {
                outer glass-twill-163 0/90
                bias shop-ud 30
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            part blade {
              join {
                manner cured-then-taped
                parts cheek-left cheek-right
                seam 1 m
                tape glass-tape-200 width 50 mm
                abrade 80 grit
                align dowels
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

            mould cheek-left-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            mould cheek-right-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part cheek-left {
              mould cheek-left-mould
              process hand
              resin slow-laminating-epoxy
              axis "0 degrees runs along the long side"
              plies {
                outer glass-twill-163 0/90
                bias shop-ud 30
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            part cheek-right {
              mould cheek-right-mould
              process hand
              resin slow-laminating-epoxy
              axis "0 degrees runs along the long side"
              plies {
                outer glass-twill-163 0/90
                bias shop-ud -30
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }

            part blade {
              join {
                manner cured-then-taped
                parts cheek-left cheek-right
                seam 1 m
                tape glass-tape-200 width 50 mm
                abrade 80 grit
                align dowels
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Join is not { Parts: [var one, var other, ..] } join || Find(context.Model, one) is not { } left || Find(context.Model, other) is not { } right
            || left.Mould is null || right.Mould is null || left.Mould.Name == right.Mould.Name)
        {
            return;
        }

        var first = left.FullPlies().ToList();
        var second = right.FullPlies().ToList();
        if (first.Count != second.Count || !first.Zip(second).All(p => Same(p.First, p.Second)) || first.FindIndex(Leans) is not (>= 0 and var at))
        {
            return;
        }

        context.Report(
            join.Where,
            $"{second[at].Name} lies at {second[at].Orientation!.Written} in {right.Name} as in {left.Name}, and the two are joined as mirror images",
            labels: [new FindingLabel(first[at].Where, $"in {left.Name}"), new FindingLabel(second[at].Where, $"in {right.Name}")],
            fixes: [Flipped(context.Part, right, second)]);
    }

    private static Part? Find(RecipeModel model, string name) =>
        model.Parts.FirstOrDefault(p => p.Name == name) ?? (model.UsedParts.TryGetValue(name, out var used) ? used : null);

    private static bool Same(PlyItem one, PlyItem other) =>
        one.Material.Name == other.Material.Name && one.Count == other.Count && Nullable.Equals(one.Orientation?.Value, other.Orientation?.Value);

    // Whether its mirror image is another ply.
    private static bool Leans(PlyItem ply)
    {
        var runs = ply.Directions().ToList();
        return runs.Exists(r => !runs.Exists(m => Math.Abs(PlyFacts.Turned(m.Angle + r.Angle)) < 1 && Math.Abs(m.Weight - r.Weight) <= 0.1 * r.Weight));
    }

    private static Fix? Flipped(Part joining, Part part, List<PlyItem> plies)
    {
        var leaning = plies.Where(Leans).ToList();
        var edits = leaning
            .Where(p => p.Orientation!.Value.Kind == OrientationKind.Single)
            .Select(p => joining.Rewrite(p.Orientation, Say.Number(-p.Orientation!.Value.First)))
            .OfType<TextEdit>()
            .ToArray();
        return edits.Length == leaning.Count && part.VariantOf is null ? new Fix($"Mirror the angles of {part.Name}", FixSafety.NeedsALook, [.. edits]) : null;
    }
}
