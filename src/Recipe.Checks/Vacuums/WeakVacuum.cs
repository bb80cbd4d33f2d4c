using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The bag presses too little to drive the voids out.</summary>
public sealed class WeakVacuum : Check
{
    private const double GoodPump = 0.95;
    private const double Rounding = 0.999;
    private static readonly Pressure ForLooks = Pressure.FromInchesOfMercury(15);
    private static readonly Pressure ForLoad = Pressure.FromInchesOfMercury(20);

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6003",
        Name = "weak-vacuum",
        Severity = Severity.Warning,
        Title = "Weak vacuum",
        Reason = "Below half an atmosphere air stays in the laminate and so does the resin: voids and weight.",
        Remedy = "Find the leak, draw more, or write down why less is wanted.",
        Source =
            "US Army TM 1-1500-204-23-11 (page file 0172): 20 inHg at least where nothing else is stated; FAA AC 43.13-1B "
            + "(1998) p. 3-8: 22 inHg; the limit of 15 inHg for parts that carry no load, and that of 20 for an infusion, are common practice",
        Exceptions = """
            Silent with a core in a stack that is laid wet, since the core decides, with polyester or vinylester, whose styrene boils, and for
            prepreg, which has a finding of its own. A part that is `structural` or `flying`, and one that is infused, is held to 20 inHg, any other to 15. Where the shop stands so high that there is no more, 95 % of the
            air is enough.
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
              vacuum {
                draw 10 inHg below ambient within 10 min
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
        var part = context.Part;
        var isInfused = part.Process.Value == Process.Infused;
        if (part.Vacuum?.Draw is not { } draw
            || context.Plan.Vacuum is not { } levels
            || (!isInfused && part.Stack.OfType<CoreItem>().Any())
            || part.Resin.IsStyrenated()
            || part.Process.Value == Process.Prepreg)
        {
            return;
        }

        var loaded = part.CarriesLoad();
        var wanted = loaded || isInfused ? ForLoad : ForLooks;
        var all = levels.Ceiling.Value * GoodPump;
        var enough = wanted < all ? wanted : all;
        var level = levels.BelowAmbient.Value;
        if (level >= enough * Rounding || context.MissesAPly())
        {
            return;
        }

        var use = isInfused ? "an infusion, which nothing else drives," : loaded ? $"a part that is {Say.Of(part.Use!.Value)}" : "a bagged laminate";
        context.Report(
            draw.Where ?? part.Vacuum.Where,
            $"{Say.Of(level, draw.Written)} below ambient is drawn; {use} wants {Say.Of(enough, draw.Written)} or more",
            Grounds.Sure.And("level", draw).And<Pressure>(draw.Value.Convention == VacuumConvention.Absolute ? levels.BelowAmbient : null),
            loaded && part.Use!.Where is { } said ? [new FindingLabel(said, "use here")] : [],
            [More(draw, levels.Ceiling.Value)]);
    }

    private static Fix? More(Figure<VacuumLevel> draw, Pressure ceiling)
    {
        var usual = Pressure.FromInchesOfMercury(25);
        var most = ceiling * GoodPump;
        var level = usual < most ? VacuumWords.Below(usual, draw.Written) : VacuumWords.NoLess(most, draw.Written);
        return Edits.Fix($"Draw {level}", FixSafety.NeedsALook, FigureEdits.Rewrite(draw, level));
    }
}
