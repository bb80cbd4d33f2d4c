using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The gloves named let resin or hardener through.</summary>
public sealed class LatexGloves : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8402",
        Name = "latex-gloves",
        Severity = Severity.Warning,
        Title = "Gloves that resin goes through",
        Reason = "Amine hardener is through latex within minutes, and the hand is wet inside a dry-looking glove.",
        Remedy = "Take nitrile or butyl, and change them on every splash.",
        Source = "common practice; the data sheet says which",
        Exceptions = """
            Silent where nitrile or butyl is named beside it.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "thin latex"
              }
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
              }
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
        if (context.Plan.Shop?.Safety is not { Gloves: { } gloves } safety || !context.Part.IsWetted()
            || Names(gloves, "nitrile", "butyl"))
        {
            return;
        }

        var bare = TradeWords.Says(gloves, "none", "no gloves", "bare hands", "without gloves");
        if (!bare && !Names(gloves, "latex", "vinyl", "cotton", "leather"))
        {
            return;
        }

        var where = safety.GlovesWhere ?? safety.Where;
        context.Report(
            where,
            bare ? "resin is handled with bare hands" : $"gloves are {gloves.Trim('"')}; nitrile or butyl keeps resin out",
            labels: context.Part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            fixes: [safety.GlovesWhere is null ? null : Edits.Fix("Take nitrile gloves", FixSafety.NeedsALook, Edits.Replace(where, "gloves \"nitrile, changed on every splash\""))]);
    }

    private static bool Names(string gloves, params ReadOnlySpan<string> stuffs)
    {
        foreach (var stuff in stuffs)
        {
            if (gloves.Contains(stuff, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
