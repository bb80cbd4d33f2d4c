using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A step says "as usual".</summary>
public sealed class UndocumentedStep : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8218",
        Name = "undocumented-step",
        Severity = Severity.Advice,
        Title = "Step that says \"as usual\"",
        Reason = "The unwritten part is what drifts, and what the next pair of hands does otherwise.",
        Remedy = "Write the number: the grit, the minutes, the grams.",
        Source = "a lessons-learned entry of a space agency on undocumented steps; common practice",
        Exceptions = """
            The lines of the finish are looked at.
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                step "round the rim as usual"
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                step "round the rim to 2 mm"
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var step in context.Part.Finish)
        {
            if (TradeWords.Says(step.Words(), "as usual", "as before", "as always", "the usual way", "like last time", "as normal"))
            {
                context.Report(step.Where, "a step is done as usual, and what is usual is written nowhere");
            }
        }
    }
}
