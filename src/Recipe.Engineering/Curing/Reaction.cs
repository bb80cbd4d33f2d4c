namespace Recipe.Engineering;

/// <summary>The rate that a resin really cures at: its kinetics, slowed by the brake where there is one. Doubles in SI.</summary>
internal readonly struct Reaction
{
    private readonly CureKinetics _kinetics;
    private readonly DiBenedetto? _curve;
    private readonly DiffusionBrake? _brake;

    internal Reaction(CureKinetics kinetics, CureOptions options)
    {
        ArgumentNullException.ThrowIfNull(kinetics);
        ArgumentNullException.ThrowIfNull(options);
        if (options.Brake is not null && options.GlassTransition is null)
        {
            throw new ArgumentException("A brake needs the glass transition over the degree of cure.", nameof(options));
        }

        _kinetics = kinetics;
        _curve = options.GlassTransition;
        _brake = options.Brake;
        Start = CureGuard.Degree(options.Start, nameof(options.Start));
    }

    /// <summary>Degree of cure at the start.</summary>
    internal double Start { get; }

    internal IReadOnlyList<double> Jumps => _kinetics.JumpDegrees;

    /// <summary>How many jumps lie behind a degree from which the cure goes on.</summary>
    internal int StretchAt(double degree)
    {
        int stretch = 0;
        while (stretch < Jumps.Count && degree >= Jumps[stretch])
        {
            stretch++;
        }

        return stretch;
    }

    /// <summary>Rate in 1/s.</summary>
    internal double Rate(double degree, double kelvin, int stretch)
    {
        double chemical = _kinetics.Rate(degree, kelvin, stretch);
        return _brake is null || chemical <= 0
            ? chemical
            : _brake.Slow(chemical, kelvin, _curve!.KelvinAt(Math.Clamp(degree, 0, 1)));
    }
}
