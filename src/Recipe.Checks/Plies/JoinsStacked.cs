using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The joins of neighbouring plies lie over each other.</summary>
public sealed class JoinsStacked : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3122",
        Name = "joins-stacked",
        Severity = Severity.Warning,
        Title = "Join lines over each other",
        Reason = "Overlaps that lie over each other make a ridge, and one weak line through the whole laminate.",
        Remedy = "Stagger the join lines of neighbouring plies by 25 to 40 mm.",
        Source = "common practice (25 to 40 mm, or 4 plies between)",
        Exceptions = """
            Speaks of parts with join lines in two plies that have fewer than 4 plies between them, repeats of one line among them. Silent for
            mat and veil.
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
              stagger 5 mm
              plies {
                outer glass-twill-163 0/90 join-lines 1 overlap 20 mm
                inner glass-twill-163 0/90 join-lines 1 overlap 20 mm
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
              stagger 40 mm
              plies {
                outer glass-twill-163 0/90 join-lines 1 overlap 20 mm
                inner glass-twill-163 0/90 join-lines 1 overlap 20 mm
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const int Apart = 4;
    private static readonly Length Least = Length.FromMillimeters(25);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var cut = context.Plan.Stack.Where(s => s.Pieces.Any(p => p.Joins > 0)).Select(s => s.Item.Name).ToHashSet();
        var plies = part.FullPlies().SelectMany(ply => Enumerable.Repeat(ply, Math.Clamp(ply.Count, 1, Apart)));
        var joined = plies
            .Select((ply, at) => (Ply: ply, At: at))
            .Where(p => p.Ply.Material.Form is ReinforcementForm.Fabric or ReinforcementForm.Unidirectional && (p.Ply.JoinLines > 0 || cut.Contains(p.Ply.Name)))
            .ToList();
        var close = joined.Zip(joined.Skip(1)).FirstOrDefault(p => p.Second.At - p.First.At <= Apart);
        if (close is not { First.Ply: { } first, Second.Ply: { } second })
        {
            return;
        }

        if (part.Stagger is not { } stagger)
        {
            context.NotChecked("no `stagger` says how far apart the join lines lie", first.Where);
            return;
        }

        if (stagger.Value.Meters >= Least.Meters - 1e-6)
        {
            return;
        }

        context.Report(
            stagger.Where ?? first.Where,
            $"the join lines of {(ReferenceEquals(first, second) ? FormattableString.Invariant($"the {first.Count} plies of {first.Name}") : $"{first.Name} and {second.Name}")} lie {Say.Of(stagger)} apart; {Say.Of(Least, stagger.Written)} or more is wanted",
            Grounds.Sure.And("stagger", stagger),
            new[] { first, second }.Distinct().Select(ply => new FindingLabel(ply.Where, "joined")),
            [Edits.Fix("Stagger them by 40 mm", FixSafety.NeedsALook, part.Rewrite(stagger, "40 mm"))]);
    }
}
