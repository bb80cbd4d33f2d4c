using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Styrene meets polystyrene.</summary>
public sealed class StyreneEatsFoam : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2112",
        Name = "styrene-eats-foam",
        Severity = Severity.Error,
        Title = "Styrene on polystyrene",
        Reason = "Styrene dissolves polystyrene foam and print within minutes, and the shape is gone.",
        Remedy = "Take epoxy, or seal the foam with two coats of it first.",
        Source = "common practice",
        Exceptions = """
            Silent for sealed moulds (`seal-coats`), and for foams of PVC, SAN, PET and polyurethane.
            """,
        BadExample = """
            mould-material own-block {
              family polystyrene-foam
              heat-limit 70 degC
              porous no
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
              made-of own-block
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
            mould-material own-block {
              family polystyrene-foam
              heat-limit 70 degC
              porous no
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
              made-of own-block
              seal-coats 2
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

    private static readonly string[] Dissolves = ["polystyrene", "eps", "xps", "abs"];

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.MouldLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.LaidStyrene() is not { } resin)
        {
            return;
        }

        if (part.Mould is { MadeOf: { } stuff } mould && IsPolystyrene(stuff.Family ?? stuff.Name) && mould.SealCoats is not { Value: > 0 })
        {
            context.Report(
                mould.MadeOfWhere ?? mould.Where,
                $"{resin.Name} holds styrene and dissolves {stuff.Name}",
                labels: part.StyreneNamed(),
                fixes: [Edits.Fix("Seal the mould with 2 coats of epoxy", FixSafety.NeedsALook, Edits.Last(mould.Where, "seal-coats 2"))]);
            return;
        }

        // A coat has set before a core comes near it.
        if (part.LaysStyrene() && part.Stack.OfType<CoreItem>().FirstOrDefault(c => IsPolystyrene(c.Material.Family ?? c.Material.Name)) is { } core)
        {
            context.Report(
                core.MaterialWhere,
                $"{resin.Name} holds styrene and dissolves {core.Material.Name}",
                labels: part.StyreneNamed());
        }
    }

    private static bool IsPolystyrene(string name) => name.Split('-').Any(word => Dissolves.Contains(word, StringComparer.OrdinalIgnoreCase));
}
