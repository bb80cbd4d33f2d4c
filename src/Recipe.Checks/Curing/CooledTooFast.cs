using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The part is cooled faster than it can follow.</summary>
public sealed class CooledTooFast : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7104",
        Name = "cooled-too-fast",
        Severity = Severity.Warning,
        Title = "Cooled too fast",
        Reason = "The skin shrinks before the middle does, and part and mould pull at each other: it warps, or the mould crazes.",
        Remedy = "Cool at 1 to 3 degC/min, in the mould and under vacuum, to below 50 degC.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0134): no more than 10 degF a minute down; 1 to 3 degC/min is common practice",
        Exceptions = """
            Silent where no rate is given, and for a step of less than 10 degC.
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
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC at 20 degC/min
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
                cool to 30 degC at 2 degC/min
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (Rates.TooFast(context.Plan, s => s.From - s.To) is not var (fast, stated, inFahrenheit))
        {
            return;
        }

        context.Report(
            stated.Where ?? fast.Step.Where,
            $"cooled by {Say.Of(stated)} from {Say.Of(fast.From, inFahrenheit ? "degF" : null)}; a part follows {Rates.Most(inFahrenheit)} at the most",
            Grounds.Sure.And("cooling rate", stated),
            fixes: [Edits.Fix("Cool it slowly", FixSafety.NeedsALook, FigureEdits.Rewrite(stated, inFahrenheit ? "4 degF/min" : "2 degC/min"))]);
    }
}
