using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A hold of minutes where hours are meant.</summary>
public sealed class ShortDwell : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7102",
        Name = "short-dwell",
        Severity = Severity.Warning,
        Title = "Hold of minutes",
        Reason = "At such a temperature nothing happens in minutes; hours were meant, and the clock of the whole cure is wrong.",
        Remedy = "Write hours.",
        Source = "common practice: below 60 degC a dwell is counted in hours",
        Exceptions = """
            Speaks of holds below 60 degC that last less than 10 minutes.
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
                hold 20 degC for 24 h
                hold 40 degC for 6 min
                hold 20 degC for 12 h
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 24 h
                hold 40 degC for 6 h
                hold 20 degC for 12 h
                demould
              }
            }
            """,
    };

    private static readonly Duration Short = Duration.FromMinutes(10);
    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(60);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (!context.Part.IsWetted() || context.Plan.Cure is not { } cure)
        {
            return;
        }

        var slips = cure.Steps.Where(s => s.Step is { Action: CureAction.Hold, Duration.Value: var time } && time < Short && s.To < Warm).ToList();
        if (slips is not [{ Step.Duration: { } first } step, ..])
        {
            return;
        }

        context.Report(
            first.Where ?? step.Step.Where,
            $"the hold at {Say.Of(step.To, step.Step.Temperature?.Written)} lasts {Say.Of(first)}; below {Say.Of(Warm)} less than {Say.Of(Short)} does nothing{Say.More(slips.Count - 1)}",
            Grounds.Sure.And("time of the hold", first),
            fixes: [InHours(slips)]);
    }

    private static Fix? InHours(List<Planning.CureStepPlan> slips)
    {
        const string minutes = " min";
        var edits = slips
            .Select(s => s.Step.Duration!)
            .Select(d => d.Value.Minutes >= 1 && d.Written.EndsWith(minutes, StringComparison.Ordinal) ? FigureEdits.Rewrite(d, d.Written[..^minutes.Length] + " h") : null)
            .ToList();
        return edits.Contains(null) ? null : new Fix("Hold it for as many hours", FixSafety.NeedsALook, [.. edits.OfType<TextEdit>()]);
    }
}
