using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The laminate is laid on a coat whose wax has risen to the surface.</summary>
public sealed class LaminateOnWax : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4304",
        Name = "laminate-on-wax",
        Severity = Severity.Error,
        Title = "Laminate on a waxed coat",
        Reason = "The wax that lets a topcoat dry hard also releases the laminate from it.",
        Remedy = "Take the unwaxed coat in the mould; a waxed one goes on last, or is sanded dull first.",
        Source = "common practice",
        Exceptions = """
            Speaks only of a coat that says `waxed yes`.
            """,
        BadExample = """
            gel-coat own-gel-coat {
              chemistry polyester
              waxed yes
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g
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
              coat own-gel-coat 600 g/m2 wait 90 min
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
            gel-coat own-gel-coat {
              chemistry polyester
              waxed no
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g
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
              coat own-gel-coat 600 g/m2 wait 90 min
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
    public override void Examine(CheckContext context)
    {
        if (!context.Part.HasPlies() || context.Part.Coats.FirstOrDefault(c => c.Material.Waxed == true) is not { } coat)
        {
            return;
        }

        context.Report(
            coat.Where,
            $"{coat.Material.Name} is waxed, and the laminate is to bond to it",
            labels: context.Part.StackWhere is { } plies ? [new FindingLabel(plies, "laid on it here")] : [],
            fixes: [Edits.Fix("Leave the waxed coat out", FixSafety.NeedsALook, Edits.Remove(coat.Where))]);
    }
}
