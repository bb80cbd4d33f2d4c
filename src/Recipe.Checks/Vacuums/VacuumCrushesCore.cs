using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The bag presses harder than the core stands.</summary>
public sealed class VacuumCrushesCore : Check
{
    private const double Half = 0.5;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6009",
        Name = "vacuum-crushes-core",
        Severity = Severity.Error,
        Title = "Vacuum crushes the core",
        Reason = "Foam under more than half its crushing strength creeps and keeps the marks, sooner when it is warm.",
        Remedy = "Draw no more than half the compressive strength of the core, or take a denser core.",
        Source = "common practice (boards marked above about half of their strength)",
        Exceptions = """
            A plate over the core spreads the load at its edges but takes none of it away.
            """,
        BadExample = """
            core light-board {
              family xps-foam
              density 30 kg/m3
              thickness 20 mm
              heat-limit 70 degC
              compressive-strength 100 kPa
              resin-uptake 300 g/m2
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                middle core light-board
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
            core light-board {
              family xps-foam
              density 30 kg/m3
              thickness 20 mm
              heat-limit 70 degC
              compressive-strength 100 kPa
              resin-uptake 300 g/m2
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                middle core light-board
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 12 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <summary>The pressure that a core carries for hours; null where its strength is not given.</summary>
    internal static Pressure? Carries(CoreItem core) => core.Material.CompressiveStrength?.Value * Half;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var cores = context.Part.Stack.OfType<CoreItem>().DistinctBy(c => c.Material.Name).ToList();
        if (cores.Count == 0 || context.Part.Vacuum?.Draw is not { } draw || context.Plan.Vacuum is not { } levels)
        {
            return;
        }

        var level = levels.BelowAmbient.Value;
        var crushed = cores
            .Where(c => level > Carries(c))
            .OrderBy(c => c.Material.CompressiveStrength!.Value)
            .ToList();
        if (crushed is not [var weakest, ..])
        {
            if (cores.Find(c => c.Material.CompressiveStrength is null) is { } unknown)
            {
                context.NotChecked($"no compressive strength is given for {unknown.Material.Name}", unknown.MaterialWhere);
            }

            return;
        }

        var most = Carries(weakest)!.Value;
        var carried = VacuumWords.Below(most, draw.Written);
        context.Report(
            draw.Where ?? context.Part.Vacuum.Where,
            $"{Say.Of(level, draw.Written)} presses on {weakest.Material.Name}, which carries {Say.Of(most, draw.Written)} "
            + $"(half of {Say.Of(weakest.Material.CompressiveStrength!)}){Say.More(crushed.Count - 1)}",
            Grounds.Sure
                .And($"compressive strength of {weakest.Material.Name}", weakest.Material.CompressiveStrength)
                .And<Pressure>(draw.Value.Convention == VacuumConvention.Absolute ? levels.BelowAmbient : null),
            crushed.Select(c => new FindingLabel(c.MaterialWhere, "core here")),
            [Edits.Fix($"Draw {carried}", FixSafety.NeedsALook, FigureEdits.Rewrite(draw, carried))]);
    }
}
