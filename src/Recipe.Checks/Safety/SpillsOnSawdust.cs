using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Spilled hardener or peroxide is taken up with something that burns.</summary>
public sealed class SpillsOnSawdust : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8406",
        Name = "spills-on-sawdust",
        Severity = Severity.Error,
        Title = "Spills taken up with sawdust or rags",
        Reason = "Hardener and peroxide heat up in sawdust and rags until they burn, hours later.",
        Remedy = "Take spills up with sand or clay granules, and put them outdoors.",
        Source = "common practice",
        Exceptions = """
            Silent where the shop does not say.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                spills sawdust
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
                spills mineral
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
        if (context.Plan.Shop?.Safety is not { Spills: { Value: SpillBinder.Sawdust or SpillBinder.Rags } said } safety || !context.Part.IsWetted())
        {
            return;
        }

        context.Report(
            said.Where ?? safety.Where,
            $"spills are taken up with {(said.Value == SpillBinder.Rags ? "rags, which heat up by themselves" : "sawdust, which heats up by itself")}",
            Grounds.Sure.And("spills", said),
            [new FindingLabel(context.Part.ResinWhere ?? context.Part.Where, "for this part")],
            [Edits.Fix("Take sand or clay", FixSafety.NeedsALook, FigureEdits.Rewrite(said, "mineral"))]);
    }
}
