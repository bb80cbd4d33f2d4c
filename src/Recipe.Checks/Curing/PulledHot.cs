using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The part is pulled off its mould while it is hot.</summary>
public sealed class PulledHot : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7106",
        Name = "pulled-hot",
        Severity = Severity.Warning,
        Title = "Pulled hot",
        Reason = "Above 50 degC most room-cured laminates still bend, and a part bent in the pull keeps the bend.",
        Remedy = "Let it cool in the mould to below 50 degC, under its vacuum where there is one.",
        Source = "common practice: demould below 50 degC",
        Exceptions = """
            Silent where the finish says that it is pulled warm on purpose, and for prepreg up to 60 degC.
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 24 h
                ramp 10 degC/h to 55 degC
                hold 55 degC for 16 h
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (!context.Part.IsWetted()
            || context.Plan.Cure is not { } cure
            || cure.Steps.FirstOrDefault(s => s.Step.Action == CureAction.Demould) is not { } pull
            || !Cooling.IsHot(context.Part, pull)
            || context.Part.Finish.Any(SaysOnPurpose))
        {
            return;
        }

        var written = context.Part.Cure?.Steps.TakeWhile(s => s != pull.Step).LastOrDefault(s => s.Temperature is not null)?.Temperature?.Written;
        context.Report(
            pull.Step.Where,
            $"the part is pulled at {Say.Of(pull.From, written)}; it wants to be below {Say.Of(Cooling.Wanted(context.Part), written)}",
            fixes: [Cooling.First(cure.Steps, cure.Steps.IndexOf(pull), "Let it cool first", "30 degC")]);
    }

    private static bool SaysOnPurpose(FinishStep step) =>
        step.Verb is "demould" or "step" or "note"
        && TradeWords.Says(step.Words(), "warm", "hot")
        && !TradeWords.Says(step.Words(), "not warm", "not hot", "no longer", "too warm", "too hot", "never");
}
