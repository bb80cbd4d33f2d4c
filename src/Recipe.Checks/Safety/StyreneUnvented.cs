using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Styrene is worked with, and nothing takes the vapour away.</summary>
public sealed class StyreneUnvented : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8403",
        Name = "styrene-unvented",
        Severity = Severity.Error,
        Title = "Styrene without extraction or mask",
        Reason = "Styrene vapour dulls the head within minutes and harms nerves over years.",
        Remedy = "Extract at the bench, or wear a mask for organic vapour; local limits come first.",
        Source = "common practice; NIOSH recommends 50 ppm (time-weighted) and 100 ppm (short term) for styrene; local limits come first",
        Exceptions = """
            Speaks only where the shop has a `safety` block: the papers print the caution in any case. A mask that is named for dust alone does not count.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
              }
            }

            resin own-polyester {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
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
              resin own-polyester
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
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                ventilation "extraction at the bench"
              }
            }

            resin own-polyester {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
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
              resin own-polyester
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

    /// <inheritdoc/>
    public override bool IsSafety => true;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (context.Plan.Shop?.Safety is not { Ventilation: null } safety
            || (safety.Respirator is { } mask && !IsForDustOnly(mask))
            || part.LaidStyrene() is not { } styrene)
        {
            return;
        }

        var worn = safety.Respirator is { } dust ? $"{Say.Quoted(dust.Trim('"'))} holds dust and no vapour" : "neither extraction nor a mask is named";
        context.Report(
            safety.Where,
            $"{styrene.Name} gives off styrene, and {worn}",
            labels: part.StyreneNamed(),
            fixes: [Edits.Fix("Name extraction at the bench", FixSafety.NeedsALook, Edits.Last(safety.Where, "ventilation \"extraction at the bench\""))]);
    }

    // A filter against particles lets vapour through; any word that may mean a filter against vapour is taken to mean it.
    private static bool IsForDustOnly(string mask) =>
        TradeWords.Says(mask, "dust", "particle", "particulate", "ffp1", "ffp2", "ffp3", "p1", "p2", "p3", "p100", "n95")
        && !TradeWords.Says(mask, "styrene", "organic", "vapour", "vapor", "solvent", "fume", "gas", "gase", "carbon", "charcoal", "cartridge", "air-fed", "air fed", "supplied", "fresh")
        && !mask.Contains("A1", StringComparison.OrdinalIgnoreCase)
        && !mask.Contains("A2", StringComparison.OrdinalIgnoreCase)
        && !mask.Contains("ABE", StringComparison.OrdinalIgnoreCase)
        && !mask.Contains("OV", StringComparison.Ordinal);
}
