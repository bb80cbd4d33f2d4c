using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The shop plans its safety and forgets the hands.</summary>
public sealed class NoGloves : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8401",
        Name = "no-gloves",
        Severity = Severity.Error,
        Title = "No gloves named",
        Reason = "Skin that meets epoxy or styrene often enough becomes allergic for life.",
        Remedy = "Name nitrile or butyl gloves and when they are changed; the data sheet says which.",
        Source = "common practice (European occupational-safety advice on epoxy resins); the data sheet and local codes come first",
        Exceptions = """
            Speaks only where the shop has a `safety` block: the papers print gloves in any case.
            """,
        BadExample = """
            shop ours {
              safety {
                dust wet
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
                dust wet
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
        if (context.Plan.Shop?.Safety is not { Gloves: null } safety || !context.Part.IsWetted())
        {
            return;
        }

        context.Report(
            safety.Where,
            $"resin is handled for {context.Part.Name}, and no gloves are named",
            labels: context.Part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            fixes: [Edits.Fix("Name nitrile gloves", FixSafety.NeedsALook, Edits.Last(safety.Where, "gloves \"nitrile, changed on every splash\""))]);
    }
}
