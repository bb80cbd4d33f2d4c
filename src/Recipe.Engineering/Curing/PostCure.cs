using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Post-cure: whether the oven outruns the part's rising glass transition, and how fast it may warm.</summary>
/// <remarks>
/// Common practice: unsupported parts 10 K/h from room temperature; supported or in the mould 20 to 30 K/h. The result here is as good
/// as the kinetics and the glass transition curve, which are mostly assumed: support the part all the same.
/// </remarks>
public static class PostCure
{
    private const double SlowestPerHour = 0.5;
    private const double FastestPerHour = 600;

    /// <summary>Lead of the glass transition over the temperature along a cure.</summary>
    /// <param name="cure">A curve with a known glass transition, which starts with the degree that the part has by then.</param>
    /// <exception cref="ArgumentException">The curve knows no glass transition.</exception>
    public static PostCureLead LeadOf(CureCurve cure)
    {
        ArgumentNullException.ThrowIfNull(cure);
        DiBenedetto curve = cure.Curve ?? throw new ArgumentException("The cure must know its glass transition.", nameof(cure));
        (double least, double at) = cure.Least((a, kelvin) => curve.KelvinAt(a) - kelvin);
        return new PostCureLead(
            TemperatureDelta.FromKelvins(least),
            Duration.FromSeconds(at),
            CureCurve.Time(cure.FirstWhen((a, kelvin) => kelvin > curve.KelvinAt(a))),
            curve.At(cure.FinalDegree));
    }

    /// <summary>The fastest even ramp at whose end, and all along, the glass transition keeps a lead; between 0.5 and 600 K/h.</summary>
    /// <param name="kinetics">How fast the resin cures.</param>
    /// <param name="from">Temperature of the part before.</param>
    /// <param name="to">Temperature of the post-cure; above the first.</param>
    /// <param name="lead">Lead to keep; 0 to 200 K.</param>
    /// <param name="options">The part's degree of cure so far, its glass transition (required) and the brake.</param>
    /// <returns>The ramp, good to a thousandth of itself; null when not even 0.5 K/h keeps the lead.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ArgumentException">The glass transition is missing.</exception>
    public static TemperatureChangeRate? FastestRamp(
        CureKinetics kinetics, Temperature from, Temperature to, TemperatureDelta lead, CureOptions options)
    {
        double keep = Guard.Between(lead.Kelvins, 0, 200, "K", nameof(lead));
        if (to <= from)
        {
            throw Guard.Refuse(to.DegreesCelsius, "degC", nameof(to), "must be above the temperature before");
        }

        bool Keeps(double perHour)
        {
            RampStep ramp = new(to, TemperatureChangeRate.FromDegreesCelsiusPerHour(perHour));
            return LeadOf(CureSimulation.Along(kinetics, CureSchedule.Create(from, [ramp]), options)).Least.Kelvins >= keep;
        }

        if (!Keeps(SlowestPerHour))
        {
            return null;
        }

        double low = SlowestPerHour;
        double high = FastestPerHour;
        if (Keeps(high))
        {
            return TemperatureChangeRate.FromDegreesCelsiusPerHour(high);
        }

        while (high > low * 1.001)
        {
            double middle = Math.Sqrt(low * high);
            (low, high) = Keeps(middle) ? (middle, high) : (low, middle);
        }

        return TemperatureChangeRate.FromDegreesCelsiusPerHour(low);
    }
}
