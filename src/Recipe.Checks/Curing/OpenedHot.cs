using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The vacuum goes or the bag comes off while the part is hot.</summary>
public sealed class OpenedHot : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7105",
        Name = "opened-hot",
        Severity = Severity.Warning,
        Title = "Bag opened hot",
        Reason = "A hot laminate is still soft enough to spring off the mould when the bag lets go, and it keeps the new shape as it cools.",
        Remedy = "Keep the vacuum on until the part is below 50 degC.",
        Source = "common practice: cool under vacuum to below 50 degC, prepreg to below 60 degC",
        Exceptions = """
            Silent where the part is pulled at that very heat, which is a finding of its own.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                silicone-hose
                catch-pot
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                ramp 10 degC/h to 60 degC under vacuum
                hold 60 degC for 10 h under vacuum
                vent
                cool to 30 degC
                debag
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                silicone-hose
                catch-pot
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 24 h under vacuum
                ramp 10 degC/h to 60 degC under vacuum
                hold 60 degC for 10 h under vacuum
                cool to 30 degC
                vent
                debag
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Process.Value == Process.Hand || !context.Part.IsWetted() || context.Plan.Cure is not { } cure)
        {
            return;
        }

        var at = cure.Steps.ToList().FindIndex(s => s.Step.LetsVacuumGo);
        if (at < 0 || cure.Steps[at] is not { Step.Action: not CureAction.Demould } open || !Cooling.IsHot(context.Part, open))
        {
            return;
        }

        var next = cure.Steps.Skip(at).FirstOrDefault(s => s.Step.Action is not (CureAction.Vent or CureAction.Debag));
        if (next is { Step.Action: CureAction.Demould })
        {
            return;
        }

        var written = Before(cure, at);
        context.Report(
            open.Step.Where,
            $"the bag is opened at {Say.Of(open.From, written)}; below {Say.Of(Cooling.Wanted(context.Part), written)} the part keeps its shape",
            fixes: [Cooling.First(cure.Steps, at, "Cool it under vacuum first", "40 degC", " under vacuum")]);
    }

    private static string? Before(Planning.CurePlan cure, int at) => cure.Steps.Take(at).LastOrDefault(s => s.Step.Temperature is not null)?.Step.Temperature?.Written;
}
