using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The part is heated faster than it can follow.</summary>
public sealed class HeatedTooFast : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7113",
        Name = "heated-too-fast",
        Severity = Severity.Warning,
        Title = "Heated too fast",
        Reason = "The skin and the thin edges are hot while the middle and the mould are cold: the resin runs out of the hot places, gels at different times, and the part sets under strain.",
        Remedy = "Heat at 0.2 to 2 degC/min, and by the part and not by the air of the oven.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0134): no more than 10 degF a minute; 1 to 3 degC/min is common practice, 10 degC/h off the mould",
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
                ramp 30 degC/min to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC at 2 degC/min
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
                ramp 0.5 degC/min to 50 degC
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
        if (Rates.TooFast(context.Plan, s => s.To - s.From) is not var (fast, stated, inFahrenheit))
        {
            return;
        }

        context.Report(
            stated.Where ?? fast.Step.Where,
            $"heated by {Say.Of(stated)} from {Say.Of(fast.From, inFahrenheit ? "degF" : null)}; a part follows {Rates.Most(inFahrenheit)} at the most",
            Grounds.Sure.And("heating rate", stated),
            fixes: [Edits.Fix("Heat it slowly", FixSafety.NeedsALook, FigureEdits.Rewrite(stated, inFahrenheit ? "1 degF/min" : "0.5 degC/min"))]);
    }
}
