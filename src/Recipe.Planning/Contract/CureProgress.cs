using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// What a cure model makes of the schedule. Times count from the start of the cure; what the resin has cured by then, while it was laid, is
/// left out, so that each moment is late rather than early. The part is taken to be as warm as the schedule says. The maker's data sheet
/// and the witness cup win over every figure here.
/// </summary>
public sealed record CureProgress
{
    /// <summary>When the resin gels; null when it does not within the cure.</summary>
    public Computed<Duration>? Gel { get; init; }

    /// <summary>From when on the vacuum may go; null when not within the cure.</summary>
    public Computed<Duration>? VacuumOff { get; init; }

    /// <summary>The earliest that the part is firm enough to be pulled; null when not within the cure.</summary>
    public Computed<Duration>? Demould { get; init; }

    /// <summary>When the recipe pulls it: its `demould` line, else the end of the cure.</summary>
    public required Computed<Duration> PlannedDemould { get; init; }

    /// <summary>Degree of cure then, 0 to 1.</summary>
    public required Computed<double> DegreeAtDemould { get; init; }

    /// <summary>Glass transition then; null when none is known of the resin.</summary>
    public Computed<Temperature>? TransitionAtDemould { get; init; }

    /// <summary>Degree of cure at the end, 0 to 1.</summary>
    public required Computed<double> Degree { get; init; }

    /// <summary>Glass transition at the end, with the band that the part's temperature and the scatter of the method give it; null when none is known.</summary>
    public Computed<Banded<Temperature>>? Transition { get; init; }

    /// <summary>
    /// Least lead of the glass transition over the temperature once the part is off the mould; negative where it sags. Null where it is not heated
    /// after that, or no glass transition is known.
    /// </summary>
    public Computed<TemperatureDelta>? LeadOffMould { get; init; }

    /// <summary>When that lead is least; null with it.</summary>
    public Computed<Duration>? LeadOffMouldAt { get; init; }

    /// <summary>The fastest even ramp that keeps a little lead off the mould; null where it is not asked for, or no ramp does.</summary>
    public Computed<TemperatureChangeRate>? FastestRamp { get; init; }

    /// <summary>Degree of cure at the end of each step of the cure, 0 to 1, in the order of the steps.</summary>
    public required ImmutableArray<Computed<double>> StepDegrees { get; init; }

    /// <summary>The way there, evenly spaced from the start of the cure to its end.</summary>
    public ImmutableArray<CureMoment> Curve { get; init; } = [];

    /// <summary>Whether the kinetics are the resin's own; else a usual shape, scaled to its gel time.</summary>
    public required bool OwnKinetics { get; init; }
}

/// <summary>How far the resin is at one moment.</summary>
/// <param name="At">From the start of the cure.</param>
/// <param name="Degree">Degree of cure, 0 to 1.</param>
/// <param name="Transition">Glass transition; null when none is known of the resin.</param>
public readonly record struct CureMoment(Duration At, double Degree, Temperature? Transition);
