using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>How fast a cure goes up and down.</summary>
internal static class Rates
{
    /// <summary>10 degF a minute in degC: the most that US Army TM 1-1500-204-23-11 (page file 0134) lets a part take.</summary>
    public const double MostAMinute = 10 / 1.8;

    /// <summary>The same in words, in the scale of a rate.</summary>
    public static string Most(bool inFahrenheit) => inFahrenheit ? "10 degF/min" : $"{Say.Number(Math.Round(MostAMinute, 1))} degC/min";

    private static readonly TemperatureDelta Least = TemperatureDelta.FromKelvins(10);

    /// <summary>The fastest step that goes beyond the most, its rate as stated, and whether that is in degF; null when none does. Steps of less than 10 degC and those without a rate are let pass.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="change">How far a step goes in the direction that is looked at.</param>
    public static (CureStepPlan Step, Figure<TemperatureChangeRate> Stated, bool InFahrenheit)? TooFast(Plan plan, Func<CureStepPlan, TemperatureDelta> change)
    {
        var fast = plan.Cure?.Steps
            .Where(s => s.Step.Rate is { } rate && change(s) >= Least && AMinute(rate) > MostAMinute + 1e-6)
            .MaxBy(s => AMinute(s.Step.Rate!));
        return fast?.Step.Rate is { } stated ? (fast, stated, stated.Written.Contains("degF", StringComparison.Ordinal)) : null;
    }

    private static double AMinute(Figure<TemperatureChangeRate> rate) => rate.Value.DegreesCelsiusPerSecond * 60;
}
