using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Peroxide is kept where it can decompose.</summary>
public sealed class PeroxideBesideAccelerator : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8404",
        Name = "peroxide-beside-accelerator",
        Severity = Severity.Error,
        Title = "Peroxide kept in a dangerous place",
        Reason = "Peroxide that meets accelerator, metal or heat decomposes by itself, and the bottle bursts.",
        Remedy = "Keep it cool, in its own vented bottle, in a cupboard of its own.",
        Source = "common practice; from memory; the data sheet and local codes come first",
        Exceptions = """
            No reason accepts it. Silent where the shop does not say where it is kept.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                ventilation "extraction at the bench"
                peroxide with-accelerator
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
                peroxide apart
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
    public override bool CanBeAccepted => false;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop?.Safety is not { Peroxide: { Value: PeroxidePlace.WithAccelerator or PeroxidePlace.Warm } said } safety || !context.Part.IsWetted())
        {
            return;
        }

        context.Report(
            said.Where ?? safety.Where,
            said.Value == PeroxidePlace.Warm ? "peroxide is kept warm, where it decomposes by itself" : "peroxide stands on one shelf with the accelerator",
            Grounds.Sure.And("peroxide", said),
            [new FindingLabel(context.Part.ResinWhere ?? context.Part.Where, "for this part")],
            [Edits.Fix("Keep it apart", FixSafety.NeedsALook, FigureEdits.Rewrite(said, "apart"))]);
    }
}
