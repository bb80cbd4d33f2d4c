using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One step of a cure schedule: <see cref="HoldStep"/>, <see cref="RampStep"/> or <see cref="CoolStep"/>.</summary>
public abstract record ScheduleStep
{
    private protected ScheduleStep()
    {
    }
}

/// <summary>Stay at a temperature. When it differs from the last one, the part is taken to be moved into that heat at once.</summary>
/// <param name="At">Temperature.</param>
/// <param name="For">Time; zero or more.</param>
public sealed record HoldStep(Temperature At, Duration For) : ScheduleStep;

/// <summary>Change evenly to a temperature, up or down.</summary>
/// <param name="To">Temperature to reach.</param>
/// <param name="Rate">Change per time; greater than zero whichever way it goes.</param>
public sealed record RampStep(Temperature To, TemperatureChangeRate Rate) : ScheduleStep;

/// <summary>Cool evenly to a temperature that is not above the last one.</summary>
/// <param name="To">Temperature to reach.</param>
/// <param name="Rate">Change per time; greater than zero.</param>
public sealed record CoolStep(Temperature To, TemperatureChangeRate Rate) : ScheduleStep;
