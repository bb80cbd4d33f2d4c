using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A pot life that no laminating resin has.</summary>
public sealed class OddPotLife : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4201",
        Name = "odd-pot-life",
        Severity = Severity.Warning,
        Title = "Pot life of the wrong size",
        Reason = "Hours and minutes were mixed up, and all clocks of the plan follow.",
        Remedy = "Read the pot life off the sheet again, with its unit, temperature and mass.",
        Source = "common practice (2 minutes to 24 hours)",
        Exceptions = """
            Silent for prepreg, and for a resin that cures only when heated.
            """,
        BadExample = """
            resin shop-epoxy like slow-laminating-epoxy {
              pot-life 60 h at 20 degC in 100 g
              film-life 150 h at 20 degC
              gel-time 300 h at 20 degC
              demould 30 d at 20 degC
              source "data sheet"
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
              resin shop-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 32 d
                demould
              }
            }
            """,
        GoodExample = """
            resin shop-epoxy like slow-laminating-epoxy {
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              source "data sheet"
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
              resin shop-epoxy
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

    private static readonly Duration Longest = Duration.FromHours(24);
    private static readonly Duration Shortest = Duration.FromMinutes(2);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value == Process.Prepreg || part.Resin is not { Chemistry: not Chemistry.Phenolic, PotLife: { } life, FromBook: false } resin
            || resin.CuresWith == "heat")
        {
            return;
        }

        var time = life.Value.Time;
        if (time >= Shortest && time <= Longest)
        {
            return;
        }

        context.Report(
            part.FigureWhere(life),
            time > Longest
                ? $"pot life of {resin.Name} is {Say.Of(time)}; {Say.Of(Longest)} is the longest that is usual"
                : $"pot life of {resin.Name} is {Say.Of(time)}; nothing is laid up in less than {Say.Of(Shortest)}",
            Grounds.Sure.And($"pot life of {resin.Name}", life),
            part.ResinNamed(),
            [Other(part, life, time > Longest)]);
    }

    private static Fix? Other(Part part, Figure<TimeAt> life, bool isLong)
    {
        var text = isLong ? SheetFigures.Exchanged(life.Written, "h", "min") : SheetFigures.Exchanged(life.Written, "min", "h") ?? SheetFigures.Exchanged(life.Written, "s", "min");
        var minutes = isLong ? life.Value.Time.Hours : life.Value.Time.Minutes * 60;
        return text is null || minutes > Longest.Minutes || minutes < Shortest.Minutes
            ? null
            : Edits.Fix($"Write {text}", FixSafety.NeedsALook, part.Rewrite(life, text));
    }
}
