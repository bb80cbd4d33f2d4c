using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Far more resin is mixed than the part takes.</summary>
public sealed class MixedTooMuch : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4207",
        Name = "mixed-too-much",
        Severity = Severity.Advice,
        Title = "Far too much resin mixed",
        Reason = "The rest heats up in its pot, is paid for and thrown away, and tempts to lay the part too wet.",
        Remedy = "Mix about a tenth more than the part needs.",
        Source = "common practice (1.35 times the need)",
        Exceptions = """
            Silent where less than 350 g is left over, which is a matter of thrift, and for infusion, whose feed pot must not run dry.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 800 mm x 600 mm
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
              wet-out {
                pot 150 g
                pot 150 g
                pot 150 g
                pot 150 g
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 800 mm x 600 mm
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
              wet-out {
                pot 140 g
                pot 140 g
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double Most = 1.35;
    private const double Wanted = 1.1;
    private static readonly Mass Little = Mass.FromGrams(350);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (part.Process.Value == Process.Infused || plan.Resin is not { Need.Value.Kilograms: > 0 } resin
            || (!resin.PotsStated && part.WetOut?.Spare is null))
        {
            return;
        }

        var (need, mixed) = (resin.Need.Value, resin.ToMix.Value);
        if (mixed <= need * Most || mixed - need < Little)
        {
            return;
        }

        context.Report(
            resin.PotsStated ? WetOutWords.PotWhere(part, 1) : part.WetOut?.Spare?.Where ?? part.Where,
            $"{Say.About(mixed)} are mixed and the part needs about {Say.About(need)}, so that {Say.About(mixed - need)} are left over",
            Grounds.Sure.And<Mass>(resin.Need),
            part.ResinNamed(),
            [Less(part, resin.PotsStated, need)]);
    }

    private static Fix? Less(Part part, bool isPots, Mass need)
    {
        if (!isPots)
        {
            return Edits.Fix("Mix a tenth more than needed", FixSafety.NeedsALook, part.Rewrite(part.WetOut?.Spare, "10 %"));
        }

        if (part.WetOut is not { PotMasses: { Length: > 0 } pots })
        {
            return null;
        }

        var each = FormattableString.Invariant($"{Math.Ceiling(need.Grams * Wanted / pots.Length)} g");
        var edits = pots.Select(p => part.Rewrite(p, each)).OfType<TextEdit>().ToArray();
        return edits.Length == pots.Length ? new Fix($"Mix {each} a pot", FixSafety.NeedsALook, [.. edits]) : null;
    }
}
