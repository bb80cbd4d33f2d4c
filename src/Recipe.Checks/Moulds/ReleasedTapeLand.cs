using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Release lies where the sealant tape has to stick.</summary>
public sealed class ReleasedTapeLand : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2105",
        Name = "released-tape-land",
        Severity = Severity.Warning,
        Title = "Release on the land of the sealant tape",
        Reason = "The tape lets go of a waxed flange under vacuum, and the leak opens when nobody can reach it.",
        Remedy = "Mask a land of 40 mm before the release goes on, or wipe it bare before the tape.",
        Source = "common practice",
        Exceptions = """
            Silent for an envelope bag, which needs no land.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              tape-land released
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              tape-land bare
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { TapeLand: { Value: TapeLand.Released } land } mould || context.Part.Bag is not { IsEnvelope: false } bag)
        {
            return;
        }

        context.Report(
            land.Where ?? mould.Where,
            $"the sealant tape sits on a flange of {mould.Name} that is released like the face; it wants a bare land of 40 mm",
            labels: [new FindingLabel(bag.SealantTape?.Where ?? bag.Where, "sealed here")],
            fixes: [Edits.Fix("Keep the land bare", FixSafety.NeedsALook, FigureEdits.Rewrite(land, "bare"))]);
    }
}
