namespace Recipe.Engineering;

/// <summary>Temperature over time as straight pieces, for the solver: seconds and kelvin.</summary>
internal sealed class ThermalPath
{
    private readonly List<Piece> _pieces = [];

    private ThermalPath(double start) => Last = start;

    /// <summary>The pieces, each longer than nothing.</summary>
    internal IReadOnlyList<Piece> Pieces => _pieces;

    /// <summary>Temperature at the end, K.</summary>
    internal double Last { get; private set; }

    /// <summary>End of the path, s.</summary>
    internal double End => _pieces.Count == 0 ? 0 : _pieces[^1].End;

    /// <summary>Temperature at a time in K; at a jump the one before it, after the end the last.</summary>
    internal double At(double time)
    {
        foreach (Piece piece in _pieces)
        {
            if (time <= piece.End)
            {
                return piece.At(time);
            }
        }

        return Last;
    }

    internal static ThermalPath Of(CureSchedule schedule, CureKinetics kinetics, bool idleBelowRange)
    {
        ThermalPath path = new(schedule.Start.Kelvins);
        foreach (ScheduleSegment segment in schedule.Segments)
        {
            path.Add(segment.Lasts.Seconds, segment.From.Kelvins, segment.To.Kelvins, kinetics, idleBelowRange, nameof(schedule));
        }

        return path;
    }

    private void Add(double lasts, double from, double to, CureKinetics kinetics, bool idleBelowRange, string parameter)
    {
        Last = to;
        if (lasts <= 0)
        {
            return;
        }

        double least = kinetics.LowestKelvin - 1e-6;
        bool coldFrom = idleBelowRange && from < least;
        bool coldTo = idleBelowRange && to < least;
        if (coldFrom != coldTo)
        {
            // Land where the model starts to answer.
            double share = (kinetics.LowestKelvin - from) / (to - from);
            Append(lasts * share, from, kinetics.LowestKelvin, coldFrom, kinetics, parameter);
            Append(lasts * (1 - share), kinetics.LowestKelvin, to, coldTo, kinetics, parameter);
            return;
        }

        Append(lasts, from, to, coldFrom, kinetics, parameter);
    }

    private void Append(double lasts, double from, double to, bool idle, CureKinetics kinetics, string parameter)
    {
        if (!idle)
        {
            kinetics.Inside(from, parameter);
            kinetics.Inside(to, parameter);
        }

        double start = End;
        if (start + lasts > start)
        {
            _pieces.Add(new Piece(start, start + lasts, from, (to - from) / lasts, idle));
        }
    }

    /// <summary>One straight piece.</summary>
    /// <param name="Start">Its start, s.</param>
    /// <param name="End">Its end, s.</param>
    /// <param name="From">Temperature at its start, K.</param>
    /// <param name="Slope">Change, K/s.</param>
    /// <param name="Idle">Whether nothing cures in it.</param>
    internal readonly record struct Piece(double Start, double End, double From, double Slope, bool Idle)
    {
        internal double At(double time) => From + (Slope * (time - Start));
    }
}
