using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A bag and no level to draw.</summary>
public sealed class NoVacuumLevel : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6001",
        Name = "no-vacuum-level",
        Severity = Severity.Warning,
        Title = "No vacuum level",
        Reason = "The level decides how much resin stays, what the core has to carry and whether a reading is good or bad.",
        Remedy = "Write the level with its convention: `draw 25 inHg below ambient` or `draw 150 mbar absolute`.",
        Source = "common practice",
        Exceptions = """
            Silent for a hand lay-up without a bag.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
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
    public override LinesRead? Reads(Part part) => new LinesRead(part.Vacuum?.Where ?? part.Where, AllOfTheLine: part.Vacuum is not null);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value == Process.Hand || !part.HasPlies() || part.Vacuum?.Draw is not null)
        {
            return;
        }

        var under = part.Vacuum is null ? "no vacuum block" : "no draw line";
        context.Report(
            part.Vacuum?.Where ?? part.Bag?.Where ?? part.Where,
            $"{part.Name} is {Say.Of(part.Process.Value)} and has {under}",
            labels: part.Bag is { } bag && part.Vacuum is not null ? [new FindingLabel(bag.Where, "bag here")] : [],
            fixes: [Draw(part, context.Plan.Conditions.Ambient.Value)]);
    }

    // What is usual, where the air outside gives it and a core stands it; nearly all there is for a prepreg.
    private static Fix? Draw(Part part, Pressure ambient)
    {
        const double usualBar = 0.8;
        const double shareOfTheAir = 0.9;
        var carried = part.Stack.OfType<CoreItem>().Select(VacuumCrushesCore.Carries).Min() ?? ambient;
        var level = part.Process.Value == Process.Prepreg && carried >= ambient
            ? WeakOvenVacuum.Usual
            : VacuumWords.Below(UnitMath.Min(carried, UnitMath.Min(Pressure.FromBars(usualBar), ambient * shareOfTheAir)), "0.8 bar");
        var draw = $"draw {level} within 10 min";
        const string check = "leak-check 5 min rise at-most 30 mbar isolated";
        var edit = part.Vacuum is { } vacuum ? Edits.Last(vacuum.Where, draw)
            : part.Process.Value == Process.Infused ? Edits.Last(part.Where, "vacuum {", "  " + draw, "}")
            : Edits.Last(part.Where, "vacuum {", "  " + draw, "  " + check, "}");
        return Edits.Fix($"Draw {level}", FixSafety.NeedsALook, edit);
    }
}
