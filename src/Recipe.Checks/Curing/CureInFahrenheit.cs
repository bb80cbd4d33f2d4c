using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A cure step reads as degrees of the other scale.</summary>
public sealed class CureInFahrenheit : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7101",
        Name = "cure-in-fahrenheit",
        Severity = Severity.Warning,
        Title = "Degrees of the other scale",
        Reason = "A data sheet in the other scale, copied with the wrong word behind it, cooks the part or leaves it raw.",
        Remedy = "Look at the sheet once more and write the scale that it means.",
        Source = "common practice: a post-cure of 150 degF is 66 degC",
        Exceptions = """
            Speaks of a step in degC that lies more than 30 degC above everything the data sheet of the resin names and fits when it is read
            in degF; and of a step in degF that is near freezing and fits as degC: below freezing nothing cures, and it is an error. Silent where mould, release or bag do not stand the heat:
            that is the finding then.
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
                ramp 0.5 degC/min to 150 degC
                hold 150 degC for 6 h
                cool to 30 degC
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
                ramp 0.3 degC/min to 150 degF
                hold 150 degF for 6 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly TemperatureDelta FarAbove = TemperatureDelta.FromKelvins(30);
    private static readonly Temperature Coolest = Temperature.FromDegreesCelsius(15);
    private static readonly Temperature Freezing = Temperature.FromDegreesCelsius(0);
    private static readonly Temperature ColdShop = Temperature.FromDegreesCelsius(5);
    private static readonly Temperature WarmShop = Temperature.FromDegreesCelsius(60);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        // Where something in the heat does not stand it, that is the finding.
        if (context.Part.Resin is not { } resin
            || context.Part.Cure is not { } cure
            || Hottest(resin) is not { } hottest
            || context.Plan.Cure?.Limits.Any(l => l.Limit is { } limit && l.Hottest > limit.Value + Heat.Rounding) == true)
        {
            return;
        }

        var slips = cure.Steps.Where(s => s.Temperature is { } t && (IsTooHotInCelsius(t, hottest) || IsTooColdInFahrenheit(t, resin))).ToList();
        if (slips is not [{ Temperature: { } worst } first, ..])
        {
            return;
        }

        var toFahrenheit = IsCelsius(worst.Written);
        var number = toFahrenheit ? worst.Value.DegreesCelsius : worst.Value.DegreesFahrenheit;
        var read = toFahrenheit ? Temperature.FromDegreesFahrenheit(number) : Temperature.FromDegreesCelsius(number);
        var sheet = toFahrenheit ? $"; the hottest that {resin.Name} is known for is {Say.Of(hottest)}" : $", which is {Say.Of(worst.Value)}";
        context.Report(
            worst.Where ?? first.Where,
            $"a step at {Say.Of(worst)}{sheet}; read in {Other(toFahrenheit)} it would be {Say.Of(Temperature.FromDegreesCelsius(Math.Round(read.DegreesCelsius)))}{Say.More(slips.Count - 1)}",
            labels: context.Part.ResinWhere is { } mixed ? [new FindingLabel(mixed, "resin here")] : [],
            fixes: [OtherScale(slips, toFahrenheit)],
            severity: worst.Value < Freezing ? Severity.Error : null);
    }

    private static string Other(bool toFahrenheit) => toFahrenheit ? "degF" : "degC";

    // The hottest that the record names for it; the glass transition after a room cure alone says nothing of that.
    private static Temperature? Hottest(ResinSystem resin)
    {
        if (resin is { PostCure: null, GlassTransitionLimit: null, HeatLimit: null })
        {
            return null;
        }

        Temperature?[] named = [resin.PostCure?.Value.At, resin.GlassTransitionLimit?.Value, resin.GlassTransition?.Value.Tg, resin.GlassTransition?.Value.After?.At, resin.HeatLimit?.Value];
        return named.Max();
    }

    private static bool IsTooHotInCelsius(Figure<Temperature> step, Temperature hottest) =>
        IsCelsius(step.Written)
        && step.Value > hottest + FarAbove
        && Temperature.FromDegreesFahrenheit(step.Value.DegreesCelsius) is var read
        && read >= Coolest
        && read <= hottest;

    private static bool IsTooColdInFahrenheit(Figure<Temperature> step, ResinSystem resin) =>
        step.Written.EndsWith("degF", StringComparison.Ordinal)
        && resin.MinimumTemperature is null
        && step.Value < ColdShop
        && Temperature.FromDegreesCelsius(step.Value.DegreesFahrenheit) is var read
        && read >= Coolest
        && read <= WarmShop;

    private static bool IsCelsius(string written) => written.EndsWith("degC", StringComparison.Ordinal);

    private static Fix? OtherScale(List<CureStep> slips, bool toFahrenheit)
    {
        var edits = slips
            .Where(s => IsCelsius(s.Temperature!.Written) == toFahrenheit)
            .Select(s => FigureEdits.Rewrite(s.Temperature, s.Temperature!.Written[..^4] + Other(toFahrenheit)))
            .ToList();
        return edits.Contains(null) ? null : new Fix($"Read it in {Other(toFahrenheit)}", FixSafety.NeedsALook, [.. edits.OfType<TextEdit>()]);
    }
}
