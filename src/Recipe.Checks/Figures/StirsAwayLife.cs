using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A good part of the pot life passes while the pot is stirred.</summary>
public sealed class StirsAwayLife : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4208",
        Name = "stirs-away-life",
        Severity = Severity.Warning,
        Title = "Pot life stirred away",
        Reason = "The clock starts when hardener meets resin; what is stirred away is missing when the last ply is wetted.",
        Remedy = "Stir small pots for two to three minutes, or take a slower hardener.",
        Source = "common practice (a fifth of the pot life)",
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
              resin fast-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                mixing 7 min
                pace 4 min/m2
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
              resin fast-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                mixing 2 min
                pace 4 min/m2
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double Share = 0.2;
    private const double ShortestStir = 2;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.WetOut?.Mixing is not { } mixing || context.Plan.Pots.Where(p => p.PotLife is { Value.Seconds: > 0 }).MinBy(p => p.PotLife!.Value.Value.Seconds) is not { } pot)
        {
            return;
        }

        var life = pot.PotLife!.Value;
        if (mixing.Value.Seconds <= Share * life.Value.Seconds * 1.001)
        {
            return;
        }

        context.Report(
            mixing.Where ?? part.WetOut.Where,
            $"a pot is stirred for {Say.Of(mixing)} and can be used for {Say.Of(life.Value)} in all; a fifth of it may go in stirring",
            Grounds.Sure.And<Duration>(life).And("mixing time", mixing),
            part.ResinNamed(),
            [Shorter(part, mixing, life.Value)]);
    }

    private static Fix? Shorter(Part part, Figure<Duration> mixing, Duration life)
    {
        var minutes = Math.Min(3, Math.Floor(life.Minutes * Share * 10) / 10);
        var text = $"{Say.Number(minutes)} min";
        return minutes >= ShortestStir ? Edits.Fix($"Stir for {text}", FixSafety.NeedsALook, part.Rewrite(mixing, text)) : null;
    }
}
