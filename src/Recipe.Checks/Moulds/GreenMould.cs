using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A polyester mould is used within a week of being made.</summary>
public sealed class GreenMould : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2114",
        Name = "green-mould",
        Severity = Severity.Warning,
        Title = "Mould still green",
        Reason = "A mould that still cures sticks to the part, shrinks and prints.",
        Remedy = "Leave it a week at room temperature, or post-cure it on its pattern.",
        Source = "common practice (seven days at 20 degC)",
        Exceptions = """
            Silent for moulds that say `post-cured yes`, for epoxy moulds, and where `made-on` is not given.
            """,
        BadExample = """
            mould-material own-tooling {
              chemistry polyester
              heat-limit 70 degC
              porous no
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of own-tooling
              made-on 2099-01-01
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
            }
            """,
        GoodExample = """
            mould-material own-tooling {
              chemistry polyester
              heat-limit 70 degC
              porous no
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of own-tooling
              made-on 2020-01-01
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
            }
            """,
    };

    private const int Days = 7;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.MouldLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { MadeOf.Chemistry: Chemistry.Polyester or Chemistry.Vinylester, MadeOn: { } made } mould
            || mould.PostCured is { Value: true } || !context.Part.IsWetted())
        {
            return;
        }

        if (context.Today is not { } today)
        {
            context.NotChecked("the day of the run is not given", mould.Where);
            return;
        }

        // There is no day after the last of the year 9999.
        var ready = DateOnly.FromDayNumber(Math.Min(made.DayNumber + Days, DateOnly.MaxValue.DayNumber));
        if (ready <= today)
        {
            return;
        }

        context.Report(
            mould.Where,
            $"{mould.Name} was made on {Say.Of(made)} of {mould.MadeOf.Name}; without a post-cure it is ready on {Say.Of(ready)}",
            labels: mould.MadeOfWhere is { } named ? [new FindingLabel(named, "made of this")] : []);
    }
}
